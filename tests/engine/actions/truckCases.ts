/** A truck with boom and bucket: rows of refusals.test.ts and applies.test.ts. Its measures are usual ones (common practice, no source). */
import type { Site } from '../../../src/engine'
import { bondTruck } from '../../../src/engine/actions/truck/bondTruck'
import type { TruckState } from '../../../src/engine/site/truckState'
import { before, done } from '../../support/cleanStages'
import { withItem } from '../../support/placedItem'
import { changed, inScenario, person, standsAt, type Change } from '../hazard/sites'
import type { Applied, Refused } from './rows'

const truck = {
  tyres: 1e6,
  outriggers: [-1, 1].flatMap((x) => [-1, 1].map((y) => ({ x: 1.5 * x, y: 1.2 * y, radius: 0.3 }))),
  boom: { leakage: 1e9, liner: 1e9 },
}

export const stands =
  (state: Partial<TruckState>): Change =>
  (site) => ({
    ...site,
    truckState: { outriggers: 'down', bucket: null, ...state },
  })

/** South-east of the pole, five metres off; the ground worker beside it, everything else as before the work starts. */
export function withTruck(...changes: readonly Change[]): Site {
  const there: Change = (site) => ({ ...site, truck: { x: -5, y: 2.5 } })
  const site = changed(
    before('untie'),
    inScenario(() => ({ truck })),
    there,
    standsAt('gw', -5, 1),
    stands({}),
  )
  return changed(site, ...changes)
}

const emptyHands: Change = person('gw', { holds: [] })
export const inBucket: Change = person('pw', { place: { kind: 'bucket' }, strapped: false, holds: [] })
/** Two metres under the arm's height, west of the pole: the arm and the conductor on that side are in reach. */
export const besidePole = { at: { x: -0.9, y: 0 }, height: 7.2 }
const up: Change = stands({ bucket: besidePole })

const plain = (): Site => withTruck(emptyHands)
const raised = (): Site => withTruck(emptyHands, inBucket, up)
const atRest = (): Site => withTruck(emptyHands, inBucket)
const onWheels = (): Site => withTruck(emptyHands, inBucket, stands({ outriggers: 'up' }))
const withLead = (): Site => {
  const site = withTruck(emptyHands, standsAt('gw', 2.6, -2.35), (it) => ({ ...it, truck: { x: 2, y: 2 } }))
  return withItem(site, 'V-1', 'truck-bond-lead', { kind: 'tarp' })
}
const bond = { with: 'V-1', on: 'rod/R-1', values: { turns: 6 } }
const bonded = (): Site => done(withLead(), 'gw', bondTruck.id, bond)
const onTruck = { on: 'truck' }
const onBucket = { on: 'bucket' }

const last = (site: Site): string => site.evidence.at(-1)?.says ?? ''
const place = (who: string) => (site: Site) => site.persons[who]?.place

export const truckRefusals: readonly Refused[] = [
  ['set-outriggers', 'unknown-thing', () => before('untie'), 'gw', onTruck],
  ['set-outriggers', 'already-so', plain, 'gw', onTruck],
  ['set-outriggers', 'not-at-truck', () => changed(plain(), standsAt('gw', 5, 5)), 'gw', onTruck],
  ['lift-outriggers', 'bucket-up', raised, 'gw', onTruck],
  ['park-truck', 'outriggers-down', plain, 'gw', { values: { at: { x: -12, y: 9 } } }],
  ['bond-truck', 'lead-too-short', () => changed(withLead(), (it) => ({ ...it, truck: { x: -9, y: 9 } })), 'gw', bond],
  ['bond-truck', 'not-at-rod', () => changed(withLead(), standsAt('gw', -5, 1)), 'gw', bond],
  ['unbond-truck', 'not-bonded-there', withLead, 'gw', { with: 'V-1', on: 'rod/R-1' }],
  ['try-lower-controls', 'bucket-up', raised, 'gw', onBucket],
  ['enter-bucket', 'bucket-up', raised, 'gw', onBucket],
  ['enter-bucket', 'not-at-truck', () => changed(plain(), standsAt('gw', 5, 5)), 'gw', onBucket],
  ['leave-bucket', 'bucket-up', raised, 'pw', onBucket],
  ['leave-bucket', 'not-in-bucket', plain, 'gw', onBucket],
  ['move-bucket', 'outriggers-up', onWheels, 'pw', { ...onBucket, values: besidePole }],
  ['move-bucket', 'boom-too-short', atRest, 'pw', { ...onBucket, values: { at: { x: 9, y: 0 }, height: 8 } }],
  ['move-bucket', 'in-the-way', atRest, 'pw', { ...onBucket, values: { at: { x: 0.1, y: 0 }, height: 6 } }],
  ['move-bucket', 'not-in-bucket', plain, 'gw', { ...onBucket, values: besidePole }],
  ['stow-bucket', 'already-so', plain, 'gw', onBucket],
  ['climb', 'in-bucket', raised, 'pw', { values: { to: 'foot' } }],
  ['tug', 'bucket-down', atRest, 'pw', { on: 'conductor-b' }],
]

export const truckCases: readonly Applied[] = [
  [
    'set-outriggers',
    () => changed(plain(), stands({ outriggers: 'up' })),
    'gw',
    onTruck,
    (s) => s.truckState?.outriggers,
    'down',
  ],
  ['lift-outriggers', plain, 'gw', onTruck, (s) => s.truckState?.outriggers, 'up'],
  [
    'bond-truck',
    withLead,
    'gw',
    bond,
    (s) => s.clamps.filter((it) => it.lead === 'V-1').map((it) => `${it.end}>${it.on}`),
    ['truck>truck', 'earth>rod/R-1'],
  ],
  ['unbond-truck', bonded, 'gw', { with: 'V-1', on: 'rod/R-1' }, (s) => s.items['V-1']?.where.kind, 'tarp'],
  ['try-lower-controls', plain, 'gw', onBucket, last, 'feel.controls-answer'],
  [
    'try-lower-controls',
    () => withItem(plain(), 'U-1', 'bucket-boom', { kind: 'truck' }, { defects: ['lower-controls-dead'] }),
    'gw',
    onBucket,
    last,
    'feel.controls-dead',
  ],
  ['enter-bucket', plain, 'gw', onBucket, place('gw'), { kind: 'bucket' }],
  ['leave-bucket', atRest, 'pw', onBucket, place('pw'), { kind: 'ground', at: { x: -5, y: 1 } }],
  ['move-bucket', atRest, 'pw', { ...onBucket, values: besidePole }, (s) => s.truckState?.bucket, besidePole],
  ['stow-bucket', raised, 'gw', onBucket, (s) => s.truckState?.bucket, null],
  ['strap-on', raised, 'pw', {}, (s) => [s.persons['pw']?.strapped, place('pw')(s)], [true, { kind: 'bucket' }]],
  ['tug', raised, 'pw', { on: 'conductor-b' }, last, 'feel.clamp-still'],
]
