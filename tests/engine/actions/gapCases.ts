/** A conductor that goes past the pole in a jumper: rows of refusals.test.ts and applies.test.ts. */
import type { Site } from '../../../src/engine'
import { before, done } from '../../support/cleanStages'
import { withItem } from '../../support/placedItem'
import { changed, inScenario } from '../hazard/sites'
import type { Applied, Refused } from './rows'

const on = 'conductor-b'
const lead = { with: 'Y-1', on }
const turns = { values: { turns: 6 } }
const byHand = { on, values: { how: 'by-hand' } }

/** Earthed, covered and declared safe; a by-pass lead hangs at the pole top. */
export const withJumper = (): Site =>
  withItem(
    changed(
      before('untie'),
      inScenario(() => ({ jumpers: [on] })),
    ),
    'Y-1',
    'bypass-lead',
    { kind: 'aloft' },
  )

export const bridged = (): Site => done(withJumper(), 'pw', 'bridge-gap', { ...lead, ...turns })
export const opened = (site: Site = withJumper()): Site => done(site, 'pw', 'open-jumper', byHand)

const last = (site: Site): string => site.evidence.at(-1)?.says ?? ''
const ends = (site: Site): readonly string[] =>
  site.clamps.filter((it) => it.lead === 'Y-1').map((it) => `${it.end}>${it.on}`)

export const gapRefusals: readonly Refused[] = [
  ['open-jumper', 'unknown-thing', () => before('untie'), 'pw', byHand],
  ['open-jumper', 'not-on-pole', withJumper, 'gw', byHand],
  ['open-jumper', 'already-so', opened, 'pw', byHand],
  ['close-jumper', 'already-so', withJumper, 'pw', byHand],
  ['bridge-gap', 'already-so', bridged, 'pw', { ...lead, ...turns }],
  ['unbridge-gap', 'not-bonded-there', withJumper, 'pw', lead],
]

export const gapCases: readonly Applied[] = [
  ['open-jumper', withJumper, 'pw', byHand, (s) => [s.opened, last(s)], [[on], 'did.open-jumper']],
  ['open-jumper', withJumper, 'pw', { on, values: { how: 'with-stick' } }, (s) => s.opened, [on]],
  ['close-jumper', opened, 'pw', byHand, (s) => s.opened, []],
  [
    'bridge-gap',
    withJumper,
    'pw',
    { ...lead, ...turns },
    (s) => [ends(s), s.items['Y-1']?.where.kind],
    [['near>conductor-b', 'far>conductor-b/far'], 'fitted'],
  ],
  ['unbridge-gap', bridged, 'pw', lead, (s) => [ends(s), s.items['Y-1']?.where.kind], [[], 'aloft']],
  ['look', opened, 'pw', { on: 'conductor-b/far' }, last, 'see.jumper-open'],
  ['look', withJumper, 'pw', { on: 'conductor-b/far' }, last, 'see.jumper-closed'],
]
