/** Isolating below the line and bonding its wires: rows of refusals.test.ts and applies.test.ts. */
import { startSite } from '../../../src/engine/site/startSite'
import type { Premises } from '../../../src/engine/site/scenario'
import type { Site } from '../../../src/engine'
import { after, before, done, type Said } from '../../support/cleanStages'
import { withItem } from '../../support/placedItem'
import { backFed, besideTransformer } from '../hazard/backFeedSites'
import { changed, inScenario, person, type Change } from '../hazard/sites'
import type { Applied, Refused } from './rows'

const last = (site: Site): string => site.evidence.at(-1)?.says ?? ''
const lastTwo = (site: Site): readonly string[] => site.evidence.slice(-2).map((it) => it.says)
const inHandsOf = (who: string) => ({ kind: 'person', person: who }) as const

/** Beside the transformer with the stick, a bag on the belt. */
const withBag = (carriers: 'in' | 'hung' | 'out'): Site =>
  withItem(
    { ...besideTransformer(backFed()(before('open-switch')), 'S-12'), carriers: { t1: carriers } },
    'CB-1',
    'carrier-bag',
    inHandsOf('so'),
  )
const bagged = (): Site => done(withBag('hung'), 'so', 'bag-carriers', { with: 'CB-1', on: 't1' })
const byAnother = (): Site => ({ ...bagged(), carrierBags: { t1: { item: 'CB-1', by: 'pic' } } })
const at = { on: 't1' }

/** A shed with a set in it, and its owner. */
const atShed = (answer: Partial<Premises> = {}): Site => {
  const shed: Premises = { id: 'set-1', at: { x: -120, y: 20 }, answers: 'has-own', consents: true, ...answer }
  const site = changed(
    backFed()(before('open-switch')),
    inScenario(() => ({ premises: [shed] })),
  )
  const there = person('so', { holds: ['K-71'], place: { kind: 'ground', at: { x: -119, y: 19 } } })
  return changed({ ...site, mains: startSite(site.scenario).mains }, there)
}
const shed = { on: 'set-1' }
const letIn = (): Site => done(atShed(), 'so', 'ask-owner', shed)
const running = (): Site => ({ ...atShed(), livening: { id: 'set-on', at: 0, cleared: false, provedOff: false } })

/** A lamp wire and a telecom feed, each with its cabinet and key at the truck. */
export const withCabinets: Change = (site) => {
  const { lv } = site.scenario
  const wires = [
    ...lv.wires,
    {
      id: 'lv-s',
      phase: 'A',
      x: 0.5,
      height: 6.6,
      lamps: { resistance: 50, cabinet: { x: 30, y: 9 }, key: 'Q-1' },
    } as const,
    { id: 'lv-t', phase: 'B', x: 0.9, height: 6.6, isolator: { at: { x: 30, y: 12 }, key: 'Q-1' } } as const,
  ]
  const scenario = { ...site.scenario, lv: { ...lv, wires } }
  const mains = startSite(scenario).mains
  return withItem({ ...site, scenario, mains }, 'Q-1', 'cabinet-key', { kind: 'truck' })
}
const beside = (y: number, key: boolean): Site => {
  const there = { kind: 'ground', at: { x: 29, y } } as const
  const site = changed(before('open-switch'), withCabinets, person('so', { holds: [], place: there }))
  return key ? changed(site, person('so', { holds: ['Q-1'] })) : site
}

/** On the pole below the wires, gloved, the bond set in the hands. */
const withSet = (): Site => {
  const site = after('climb')
  return withItem(changed(site, person('pw', { holds: [] })), 'LB-1', 'lv-bond-set', inHandsOf('pw'))
}
const tail = (on: string): Said => ({ with: 'LB-1', on, values: { turns: 6 } })
const bondedOne = (): Site => done(withSet(), 'pw', 'bond-lv', tail('lv-n'))
const full = (): Site => {
  const clamps = ['n', '1', '2', '3', '4'].map((end) => {
    return { lead: 'LB-1', end, on: 'lv-n', turns: 6, brushed: false, tugged: false }
  })
  return { ...withSet(), clamps: [...withSet().clamps, ...clamps] }
}
const ends = (site: Site): readonly string[] =>
  site.clamps.filter((it) => it.lead === 'LB-1').map((it) => `${it.end}>${it.on}`)

export const isolationRefusals: readonly Refused[] = [
  ['bag-carriers', 'carriers-in', () => withBag('in'), 'so', { with: 'CB-1', ...at }],
  [
    'bag-carriers',
    'unknown-thing',
    () => withItem(before('open-switch'), 'CB-1', 'carrier-bag', inHandsOf('so')),
    'so',
    { with: 'CB-1', ...at },
  ],
  ['put-carriers-in', 'carriers-bagged', bagged, 'so', at],
  ['take-carriers-out', 'carriers-bagged', bagged, 'so', { ...at, values: { leave: 'bagged' } }],
  ['unbag-carriers', 'already-so', () => withBag('hung'), 'so', at],
  ['unbag-carriers', 'key-not-here', byAnother, 'so', at],
  ['tag', 'not-at-switch', () => backFed()(before('open-switch')), 'so', { with: 'T-81', ...at }],
  [
    'ask-owner',
    'not-at-switch',
    () => changed(atShed(), person('so', { place: { kind: 'ground', at: { x: 0, y: 9 } } })),
    'so',
    shed,
  ],
  ['ask-owner', 'unknown-thing', () => before('open-switch'), 'so', shed],
  [
    'search-premises',
    'not-at-switch',
    () => changed(atShed(), person('so', { place: { kind: 'ground', at: { x: 0, y: 9 } } })),
    'so',
    shed,
  ],
  ['open-main', 'no-consent', atShed, 'so', shed],
  ['open-main', 'no-consent', () => done(atShed({ consents: false }), 'so', 'ask-owner', shed), 'so', shed],
  ['lock', 'no-consent', atShed, 'so', { with: 'K-71', ...shed }],
  ['open-main', 'cabinet-shut', () => beside(12, false), 'so', { on: 'lv-t' }],
  ['bond-lv', 'unknown-item', () => after('climb'), 'pw', { on: 'lv-n', values: { turns: 6 }, with: 'LB-1' }],
  ['bond-lv', 'not-on-pole', withSet, 'gw', tail('lv-n')],
  ['bond-lv', 'already-so', bondedOne, 'pw', tail('lv-n')],
  ['bond-lv', 'end-free-none', full, 'pw', tail('lv-a')],
  [
    'bond-lv',
    'hands-full',
    () => changed(withSet(), person('pw', { holds: ['LB-1', 'C-15', 'E-07'] })),
    'pw',
    tail('lv-a'),
  ],
  ['unbond-lv', 'not-bonded-there', bondedOne, 'pw', { with: 'LB-1', on: 'lv-a' }],
]

export const isolationCases: readonly Applied[] = [
  [
    'bag-carriers',
    () => withBag('hung'),
    'so',
    { with: 'CB-1', ...at },
    (s) => [s.carrierBags?.['t1'], s.items['CB-1']?.where.kind, last(s)],
    [{ item: 'CB-1', by: 'so' }, 'fitted', 'did.bag-carriers'],
  ],
  ['unbag-carriers', bagged, 'so', at, (s) => [s.carrierBags, s.persons['so']?.holds.includes('CB-1')], [{}, true]],
  [
    'tag',
    () => besideTransformer(backFed()(before('open-switch')), 'T-81'),
    'so',
    { with: 'T-81', ...at },
    (s) => [s.mains['t1']?.tag, s.items['T-81']?.where.kind],
    ['T-81', 'fitted'],
  ],
  [
    'untag',
    () => done(besideTransformer(backFed()(before('open-switch')), 'T-81'), 'so', 'tag', { with: 'T-81', ...at }),
    'so',
    at,
    (s) => [s.mains['t1']?.tag, s.persons['so']?.holds],
    [null, ['T-81']],
  ],
  ['ask-owner', atShed, 'so', shed, lastTwo, ['owner.has-own', 'owner.consents']],
  ['ask-owner', () => atShed({ answers: 'nobody-home' }), 'so', shed, last, 'owner.nobody-home'],
  [
    'ask-owner',
    () => atShed({ answers: 'does-not-know', consents: false }),
    'so',
    shed,
    lastTwo,
    ['owner.does-not-know', 'owner.refuses'],
  ],
  ['search-premises', atShed, 'so', shed, lastTwo, ['owner.seen-generator', 'owner.quiet']],
  ['search-premises', running, 'so', shed, lastTwo, ['owner.seen-generator', 'owner.set-runs']],
  ['open-main', letIn, 'so', shed, (s) => s.mains['set-1']?.position, 'open'],
  ['open-main', () => beside(12, true), 'so', { on: 'lv-t' }, (s) => s.mains['lv-t']?.position, 'open'],
  ['bond-lv', withSet, 'pw', tail('lv-n'), (s) => [ends(s), s.items['LB-1']?.where.kind], [['n>lv-n'], 'fitted']],
  ['bond-lv', withSet, 'pw', tail('lv-a'), ends, ['1>lv-a']],
  ['bond-lv', bondedOne, 'pw', tail('lv-b'), ends, ['n>lv-n', '1>lv-b']],
  [
    'unbond-lv',
    bondedOne,
    'pw',
    { with: 'LB-1', on: 'lv-n' },
    (s) => [ends(s), s.items['LB-1']?.where.kind],
    [[], 'aloft'],
  ],
]
