/** What is measured on the ground, and by what light: rows of refusals.test.ts and applies.test.ts. */
import type { Site } from '../../../src/engine'
import type { Scenario } from '../../../src/engine/site/scenario'
import { after, before, done } from '../../support/cleanStages'
import { withItem } from '../../support/placedItem'
import { changed, inScenario, person, type Change } from '../hazard/sites'
import type { Applied, Refused } from './rows'

/** An earth conductor cast into the pole, its terminal of so many ohm. */
const castIn = (terminal: number): Change =>
  inScenario(({ pole }) => ({ pole: { ...pole, integralEarth: { terminal, height: 1.6 } } as Scenario['pole'] }))

/** The ground worker at the foot of the pole with the instrument, nothing fitted yet. */
export function withTester(terminal: number, ...defects: readonly string[]): Site {
  const at = person('gw', { place: { kind: 'pole', station: 'foot' }, holds: [] })
  const site = changed(before('drive-rod'), castIn(terminal), at)
  return withItem(site, 'ET-1', 'earth-tester', { kind: 'person', person: 'gw' }, { defects })
}

const far = { with: 'ET-1', on: 'terminal', values: { against: 'far-earth' } }
export const readingOf = (site: Site): unknown => {
  const { says, values } = done(site, 'gw', 'measure-earth', far).evidence.at(-1)!
  return says === 'test.reads-ohm' ? values['ohm'] : says
}

/** From three in the afternoon on it is dark: the job is at its blades then. */
const night: Change = inScenario(() => ({ dark: { from: 0, to: 86_400 } }))
const atBlades = (): Site => changed(after('open-switch'), night)
const withLamp = (...defects: readonly string[]): Site =>
  withItem(atBlades(), 'LP-1', 'lamp', { kind: 'person', person: 'so' }, { defects })

const blade = { on: 'switch-27/B' }
const last = (site: Site): string => site.evidence.at(-1)?.says ?? ''
const seen = (site: Site): unknown => [last(site), site.evidence.at(-1)?.values['metres']]

/** At the foot of a pole without step bolts; on wood with irons on, or without. */
const stepless = (kind: 'wood' | 'steel', isOnIrons = false): Site => {
  const bare = changed(
    before('climb'),
    inScenario(({ pole }) => ({
      pole: {
        ...pole,
        ...(kind === 'wood' ? { kind, moisture: 'dry', treatment: 'oil', surface: 'dry', arm: 'wood' } : { kind }),
        steps: 'none',
      } as Scenario['pole'],
    })),
  )
  const { wears } = bare.persons['pw']!
  const site = withItem(bare, 'CI-1', 'climbing-irons', { kind: 'tarp' })
  return isOnIrons ? changed(site, person('pw', { wears: [...wears, 'CI-1'] })) : site
}
const up = { values: { to: 'below-lv' } }

export const fieldRefusals: readonly Refused[] = [
  ['climb', 'irons-missing', () => stepless('wood'), 'pw', up],
  ['climb', 'no-way-up', () => stepless('steel', true), 'pw', up],
  ['measure-earth', 'unknown-item', () => changed(before('drive-rod'), castIn(1)), 'gw', far],
  [
    'measure-earth',
    'not-near-pole',
    () => changed(withTester(1), person('gw', { place: { kind: 'ground', at: { x: 9, y: 9 } } })),
    'gw',
    far,
  ],
  ['measure-to-earths', 'not-on-ground', () => before('untie'), 'pw', { on: 'pole' }],
  ['look', 'too-dark', atBlades, 'so', blade],
  ['look', 'too-dark', () => withLamp('dim'), 'so', blade],
]

export const fieldCases: readonly Applied[] = [
  [
    'climb',
    () => stepless('wood', true),
    'pw',
    up,
    (s) => s.persons['pw']?.place,
    { kind: 'pole', station: 'below-lv' },
  ],
  [
    'inspect-pole',
    () => stepless('wood'),
    'pw',
    { on: 'pole' },
    (s) => [last(s), s.evidence.at(-1)?.values['steps']],
    ['pole.inspected-wood', 'no-step-bolts'],
  ],
  ['measure-earth', () => withTester(1), 'gw', far, last, 'test.reads-ohm'],
  ['measure-to-earths', () => before('untie'), 'pic', { on: 'pole' }, seen, ['see.earths-away', 0]],
  ['measure-to-earths', () => before('drive-rod'), 'pic', { on: 'pole' }, seen, ['see.no-earths', undefined]],
  ['look', withLamp, 'so', blade, last, 'see.blade-open'],
]
