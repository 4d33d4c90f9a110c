/** Cases of what is worn over other things and of the platform: refused, each by a plain fact (common practice, no source). */
import type { GroundPoint } from '../../../src/engine/site/place'
import { before, done } from '../../support/cleanStages'
import type { Item, Site } from '../../../src/engine/site/site'
import type { Applied, Refused } from './rows'

/** More items on the tarp, sound and booked out. */
export function withItems(site: Site, items: Readonly<Record<string, string>>): Site {
  const made = Object.entries(items).map(([id, type]): [string, Item] => [
    id,
    {
      id,
      type,
      label: {},
      defects: [],
      faulted: false,
      failed: false,
      where: { kind: 'tarp' },
      bookedOut: true,
      bookedIn: false,
      verdict: 'pass',
    },
  ])
  return { ...site, items: { ...site.items, ...Object.fromEntries(made) } }
}

const dressing = (): Site =>
  withItems(before('set-barrier'), {
    'IP-1': 'insulating-platform',
    'OS-1': 'overshoes',
    'OS-2': 'overshoes',
    'LP-1': 'leather-protectors',
  })

/** The pole worker has overshoes over the boots. */
const overBoots = (): Site => {
  const site = dressing()
  const pw = { ...site.persons.pw!, wears: ['BT-42', 'OS-1'] }
  const worn = { ...site.items['OS-1']!, where: { kind: 'person', person: 'pw' } as const }
  return { ...site, items: { ...site.items, 'OS-1': worn }, persons: { ...site.persons, pw } }
}

export const gearRefusals: readonly Refused[] = [
  ['lay-platform', 'unknown-item', dressing, 'gw', { with: 'M-1' }],
  ['lay-platform', 'not-on-ground', () => aloft(dressing()), 'pw', { with: 'IP-1' }],
  ['lay-platform', 'hands-full', () => holding(dressing(), 'R-1'), 'gw', { with: 'IP-1' }],
  ['take-up-platform', 'already-so', dressing, 'gw', { on: 'IP-1' }],
  ['take-up-platform', 'out-of-reach', () => laidAt({ x: 9, y: 9 }), 'gw', { on: 'IP-1' }],
  ['take-off', 'under-another', overBoots, 'pw', { on: 'BT-42' }],
  ['wear', 'taken-already', overBoots, 'pw', { on: 'OS-2' }],
  ['take-off', 'not-on-ground', () => aloft(overBoots()), 'pw', { on: 'OS-1' }],
]

function aloft(site: Site): Site {
  const pw = { ...site.persons.pw!, place: { kind: 'pole', station: 'below-lv' } as const }
  return { ...site, persons: { ...site.persons, pw } }
}

const laidAt = (at: GroundPoint): Site => {
  const site = dressing()
  const item = { ...site.items['IP-1']!, where: { kind: 'fitted' } as const }
  return { ...site, items: { ...site.items, 'IP-1': item }, platforms: [{ item: 'IP-1', at }] }
}

export const gearCases: readonly Applied[] = [
  [
    'lay-platform',
    dressing,
    'gw',
    { with: 'IP-1' },
    (s) => [s.platforms?.map((it) => it.item), s.items['IP-1']?.where.kind],
    [['IP-1'], 'fitted'],
  ],
  [
    'take-up-platform',
    () => done(dressing(), 'gw', 'lay-platform', { with: 'IP-1' }),
    'gw',
    { on: 'IP-1' },
    (s) => [s.platforms, s.persons.gw?.holds],
    [[], ['IP-1']],
  ],
  ['wear', dressing, 'pw', { on: 'OS-1' }, (s) => s.persons.pw?.wears.includes('OS-1'), true],
  ['take-off', overBoots, 'pw', { on: 'OS-1' }, (s) => s.persons.pw?.wears, ['BT-42']],
]

function holding(site: Site, item: string): Site {
  const gw = { ...site.persons.gw!, holds: [item] }
  const items = { ...site.items, [item]: { ...site.items[item]!, where: { kind: 'person', person: 'gw' } as const } }
  return { ...site, items, persons: { ...site.persons, gw } }
}
