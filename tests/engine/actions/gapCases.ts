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

/** The pole between here and the crossing has jumpers, and the control room has people for them, or none. */
export const withPoint = (takesJumpersOut: boolean, site: Site = before('read-order')): Site =>
  changed(
    site,
    inScenario(({ control }) => ({
      sectionJumpers: [{ id: 'jumpers-118', number: 'P118', along: 20 }],
      control: { ...control, takesJumpersOut },
    })),
  )

const at = { on: 'jumpers-118' }
const asked = (message: string, site: Site = withPoint(true)): Site =>
  done(site, 'pic', 'ask-jumpers-out', { ...at, values: { message } })
export const hanging = (site?: Site): Site => asked('jumpers-out', site)
export const tiedBack = (site?: Site): Site => asked('jumpers-out-tied-back', site)

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
  ['ask-jumpers-out', 'unknown-thing', () => before('read-order'), 'pic', at],
  ['ask-jumpers-out', 'already-so', hanging, 'pic', { ...at, values: { message: 'jumpers-out' } }],
  ['ask-jumpers-out', 'already-so', tiedBack, 'pic', { ...at, values: { message: 'jumpers-out-tied-back' } }],
  ['ask-jumpers-in', 'already-so', () => withPoint(true), 'pic', at],
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
  [
    'ask-jumpers-out',
    () => withPoint(true),
    'pic',
    { ...at, values: { message: 'jumpers-out' } },
    (s) => [s.jumpersOut, last(s)],
    [[{ at: 'jumpers-118', tails: 'hanging' }], 'control.jumpers-hanging'],
  ],
  [
    'ask-jumpers-out',
    hanging,
    'pic',
    { ...at, values: { message: 'jumpers-out-tied-back' } },
    (s) => [s.jumpersOut, last(s)],
    [[{ at: 'jumpers-118', tails: 'tied-back' }], 'control.jumpers-tied-back'],
  ],
  [
    'ask-jumpers-out',
    () => withPoint(false),
    'pic',
    { ...at, values: { message: 'jumpers-out' } },
    (s) => [s.jumpersOut, last(s)],
    [undefined, 'control.jumpers-stay'],
  ],
  ['ask-jumpers-in', tiedBack, 'pic', at, (s) => [s.jumpersOut, last(s)], [[], 'control.jumpers-on']],
  ['look', () => withPoint(true), 'pic', at, last, 'see.jumpers-on'],
  ['look', hanging, 'pic', at, last, 'see.jumpers-hanging'],
  ['look', tiedBack, 'pic', at, last, 'see.jumpers-tied-back'],
]
