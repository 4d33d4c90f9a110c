/** A second person in charge, who comes for the next shift: rows of refusals.test.ts and applies.test.ts. */
import type { Site } from '../../../src/engine'
import { before, done, type Said } from '../../support/cleanStages'
import { changed, standsAt, type Change } from '../hazard/sites'
import type { Applied, Refused } from './rows'

const on = 'charge'

/** Comes at that second, beside the person in charge. */
export function withRelief(arrivesAt: number, stage: () => Site = () => before('untie')): Site {
  const site = stage()
  const at = { x: -9, y: 7 }
  const member = {
    ...site.scenario.crew.find((it) => it.role === 'person-in-charge')!,
    id: 'pic-2',
    startsAt: at,
    arrivesAt,
  }
  const joined: Change = (it) => ({
    ...it,
    scenario: { ...it.scenario, crew: [...it.scenario.crew, member] },
    persons: {
      ...it.persons,
      'pic-2': { ...it.persons['pic']!, id: 'pic-2', holds: [], wears: [], signedOn: false, briefed: false },
    },
  })
  return changed(site, joined, standsAt('pic', -9, 8), standsAt('pic-2', at.x, at.y))
}

const together = (): Site => withRelief(0)
const notYet = (): Site => withRelief(90_000)
const apart = (): Site => changed(together(), standsAt('pic-2', 30, 30))
const hand = (...papers: readonly string[]): Said => ({ on, values: { next: 'pic-2', papers } })
const handed = (): Site => done(together(), 'pic', 'hand-over-charge', hand('permit', 'register', 'keys'))

const last = (site: Site): string => site.evidence.at(-1)?.says ?? ''
const names = (site: Site, is: 'signedOn' | 'briefed'): readonly string[] =>
  Object.values(site.persons).flatMap((it) => (it[is] ? [it.id] : []))

export const shiftRefusals: readonly Refused[] = [
  ['walk-job', 'unknown-thing', () => before('untie'), 'pic', { on }],
  ['walk-job', 'not-here-yet', notYet, 'pic-2', { on }],
  ['walk-job', 'not-together', apart, 'pic-2', { on }],
  ['hand-over-charge', 'not-in-charge', together, 'pic-2', { on, values: { next: 'pic', papers: [] } }],
  ['hand-over-charge', 'not-here-yet', notYet, 'pic', hand()],
  ['hand-over-charge', 'not-together', apart, 'pic', hand()],
  ['report-charge', 'not-in-charge', together, 'pic', { on }],
  ['walk', 'not-here-yet', notYet, 'pic-2', { on: 'truck' }],
]

export const shiftCases: readonly Applied[] = [
  ['walk-job', together, 'pic-2', { on }, (s) => s.evidence.slice(-2).map((it) => it.says), ['see.job', 'see.signed']],
  [
    'hand-over-charge',
    together,
    'pic',
    hand('register', 'permit'),
    (s) => [s.paper.inCharge, s.written['handed-over'], s.paper.safeToWork, names(s, 'signedOn'), names(s, 'briefed')],
    ['pic-2', ['permit', 'register'], false, [], []],
  ],
  ['report-charge', handed, 'pic-2', { on }, last, 'control.charge-noted'],
  ['sign-on', handed, 'gw', {}, (s) => names(s, 'signedOn'), ['gw']],
]
