/** Instants of netlistInstants.ts with a transformer: each connection, each kind of source behind it, and its low side. */
import { type LiveMoment } from '../../src/engine'
import { complex } from '../../src/engine/math/complex'
import { startSite } from '../../src/engine/site/startSite'
import { backFed } from '../engine/hazard/backFeedSites'
import {
  clampOn,
  earthedSite,
  inScenario,
  isolatedSite,
  leftHandOnB,
  momentOf,
  person,
  touching,
  withRod,
  without,
  workerAloft,
  type Change,
} from '../engine/hazard/sites'

const rightHandOn = (id: string) => touching('pw', 'right-hand', { kind: 'conductor', id })
const atRod = [withRod, clampOn('E-07', 'earth', 'rod/R-1'), clampOn('E-07', '2', 'conductor-b')]
const houses = [
  { distance: 20, resistance: 40, wire: complex(0.0006, 0.0003), at: { x: -9, y: 5 } },
  { distance: 60, resistance: 20, wire: complex(0.0006, 0.0003) },
]
const ownInverter = inScenario(() => ({
  embedded: [
    {
      id: 'set-1',
      kind: 'inverter',
      transformer: 't1',
      at: { x: -120, y: 20 },
      phases: ['A', 'B', 'C'],
      rating: 10_000,
      limit: 1.2,
      trips: 'never',
    },
  ],
}))
const lamps: Change = (site) => {
  const { lv, livenings } = site.scenario
  const wire = {
    id: 'lv-s',
    phase: 'C',
    x: 0.5,
    height: 6.6,
    lamps: { resistance: 60, cabinet: { x: 30, y: 9 } },
  } as const
  const scenario = {
    ...site.scenario,
    lv: { ...lv, wires: [...lv.wires, wire] },
    livenings: [...livenings, { id: 'dusk', kind: 'street-lamps-on', wire: 'lv-s' } as const],
  }
  return { ...site, scenario, mains: startSite(scenario).mains }
}
const leadTouches = inScenario(({ livenings }) => ({
  livenings: [...livenings, { id: 'touch', kind: 'lead-on-low-voltage', wire: 'lv-b', impedance: 0.01 }],
}))
const hoisted: Change = (site) => ({
  ...site,
  items: { ...site.items, 'E-07': { ...site.items['E-07']!, where: { kind: 'handline' } } },
})

interface Case {
  readonly id: string
  readonly moment: () => LiveMoment
  readonly livening: string
}

export const lowVoltageInstants: readonly Case[] = [
  {
    id: 'back-fed-no-earths-hand-on-b',
    moment: () => momentOf(isolatedSite(backFed(), workerAloft), leftHandOnB, rightHandOn('conductor-c')),
    livening: 'set-on',
  },
  {
    id: 'back-fed-one-phase-left-off',
    moment: () =>
      momentOf(
        earthedSite(backFed({ transformer: { clock: 1 } }), without('E-07', '3')),
        leftHandOnB,
        rightHandOn('conductor-c'),
      ),
    livening: 'set-on',
  },
  {
    id: 'back-fed-yyn-one-clamp',
    moment: () =>
      momentOf(
        isolatedSite(backFed({ transformer: { connection: 'Yyn' } }), ...atRod, workerAloft),
        leftHandOnB,
        rightHandOn('conductor-a'),
      ),
    livening: 'set-on',
  },
  {
    id: 'back-fed-between-two-conductors',
    moment: () =>
      momentOf(
        isolatedSite(
          backFed({ transformer: { connection: 'single-phase', phases: ['A', 'B'] }, source: { phases: ['A'] } }),
          workerAloft,
        ),
        leftHandOnB,
      ),
    livening: 'set-on',
  },
  {
    id: 'back-fed-single-wire-earthed',
    moment: () =>
      momentOf(
        isolatedSite(
          backFed({
            transformer: {
              connection: 'single-wire',
              phases: ['B'],
              highVoltage: 12_700,
              highEarth: { resistance: 20 },
            },
            source: { phases: ['B'] },
          }),
          ...atRod,
          workerAloft,
        ),
        leftHandOnB,
      ),
    livening: 'set-on',
  },
  {
    id: 'back-fed-by-an-inverter-at-its-limit',
    moment: () =>
      momentOf(earthedSite(backFed(), ownInverter, without('E-07', '3')), leftHandOnB, rightHandOn('conductor-c')),
    livening: 'set-on',
  },
  {
    id: 'low-voltage-of-its-own-transformer-back-fed',
    moment: () =>
      momentOf(
        isolatedSite(
          backFed({ transformer: { neutralEarth: { resistance: 5 } }, lv: { fedBy: 't1', houseEarths: houses } }),
          person('pw', { place: { kind: 'pole', station: 'below-lv' }, wears: ['BT-42', 'G-21'] }),
        ),
        touching('pw', 'left-hand', { kind: 'lv-wire', id: 'lv-b' }),
      ),
    livening: 'set-on',
  },
  {
    id: 'clash-lifts-the-neutral-of-houses',
    moment: () =>
      momentOf(
        isolatedSite(
          backFed({
            transformer: { neutralEarth: { resistance: 15, at: { x: -7, y: -4 } } },
            lv: { houseEarths: houses },
          }),
          ...atRod,
          workerAloft,
        ),
        leftHandOnB,
      ),
    livening: 'clash-b',
  },
  {
    id: 'street-lamps-on',
    moment: () =>
      momentOf(
        isolatedSite(lamps, person('pw', { place: { kind: 'pole', station: 'below-lv' }, wears: ['BT-42'] })),
        touching('pw', 'left-hand', { kind: 'lv-wire', id: 'lv-s' }),
      ),
    livening: 'dusk',
  },
  {
    id: 'hoisted-lead-on-low-voltage',
    moment: () =>
      momentOf(
        isolatedSite(leadTouches, hoisted, person('gw', { place: { kind: 'ground', at: { x: -3.5, y: 0.6 } } })),
        touching('gw', 'right-hand', { kind: 'lead', item: 'E-07', end: 'earth' }),
      ),
    livening: 'touch',
  },
]
