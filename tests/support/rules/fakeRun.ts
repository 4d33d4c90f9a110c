/** A run written by hand for tests of rules: acts one after the other, the site before and after each as given. */
import { startSite, type Order, type Site } from '../../../src/engine'
import type { Entry, Moment, Timeline } from '../../../src/engine/timeline/timeline'
import { marrowBend } from '../marrowBend'

export interface FakeAct {
  readonly who: string
  readonly do: string
  readonly on?: string
  readonly with?: string
  readonly values?: Order['values']
  /** Second of the start; left out: ten seconds after the last. */
  readonly at?: number
  readonly takes?: number
  /** What the site is like from the end of this act on. */
  readonly leaves?: Partial<Site>
  readonly outcome?: Entry['outcome']
}

const scenario = { ...marrowBend(1), visible: null }

export function fakeRun(acts: readonly FakeAct[], more: Partial<Timeline> = {}): Timeline {
  const entries: Entry[] = []
  const moments: Moment[] = []
  let site: Site = startSite(scenario)
  let clock = 0
  acts.forEach((act, index) => {
    const { at = clock, takes = 10, leaves = {}, outcome = 'done', values = {}, ...rest } = act
    const { who, do: verb, on, with: held } = rest
    const order: Order = {
      at,
      who,
      do: verb,
      ...(on !== undefined && { on }),
      ...(held !== undefined && { with: held }),
      values,
    }
    const before = { ...site, time: at }
    const end = at + takes
    site = { ...site, ...leaves, time: end }
    entries.push({ index, order, outcome, start: at, end, before, after: site })
    moments.push({ from: at, to: end, site: before, busy: [index], bodies: [] })
    clock = Math.max(clock, end)
  })
  return { scenario, entries, moments, end: { ...site, time: clock }, struck: null, prevented: null, ...more }
}
