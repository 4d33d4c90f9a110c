/** Sites at any point of the recorded clean job, for tests that need one just so. */
import { readFileSync } from 'node:fs'
import {
  actions,
  checkOrder,
  runTimeline,
  type Entry,
  type OpenTimeline,
  type Order,
  type Site,
  type Value,
} from '../../src/engine'
import { readRun } from '../../src/files/run/read'
import { marrowBend } from './marrowBend'

const played = new Map<string, OpenTimeline>()

/** The timeline of a recorded run, played once. */
export function recorded(name: string): OpenTimeline {
  const known = played.get(name)
  if (known) return known
  const file = new URL(`../../scenarios/marrow-bend/runs/${name}.json`, import.meta.url)
  const run = readRun(readFileSync(file, 'utf8'), actions)
  if (!run.ok) throw new Error(`no recorded run ${name}`)
  const timeline = runTimeline(marrowBend(run.value.seed, run.value.purpose), run.value.orders)
  played.set(name, timeline)
  return timeline
}

/** The n-th entry of the run that does this act, on this thing if one is given. */
function entryOf(act: string, { run = 'clean', on, nth = 0 }: { run?: string; on?: string; nth?: number } = {}): Entry {
  const found = recorded(run).entries.filter((it) => it.order.do === act && (on === undefined || it.order.on === on))[
    nth
  ]
  if (!found) throw new Error(`${run} has no ${act} ${on ?? ''}`)
  return found
}

export const before = (act: string, which = {}): Site => entryOf(act, which).before
export const after = (act: string, which = {}): Site => entryOf(act, which).after

export interface Said {
  readonly with?: string
  readonly on?: string
  readonly values?: Readonly<Record<string, Value>>
}

function orderAt(site: Site, who: string, act: string, { values = {}, ...rest }: Said = {}): Order {
  return { at: site.time, who, do: act, ...rest, values }
}

/** The site after the act. Throws when the world refuses. */
export function done(site: Site, who: string, act: string, said: Said = {}): Site {
  const order = orderAt(site, who, act, said)
  const refusal = checkOrder(site, order)
  if (refusal) throw new Error(`${act}: ${refusal.code}`)
  return actions.get(act)!.apply(site, order)
}

export function refused(site: Site, who: string, act: string, said: Said = {}): string | undefined {
  return checkOrder(site, orderAt(site, who, act, said))?.code
}
