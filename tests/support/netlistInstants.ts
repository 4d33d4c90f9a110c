/**
 * Instants that another simulator has solved (tests/reference/netlist): sites put together by hand, so that a change of a
 * recorded run changes nothing here. Every mechanism, every kind of layer and every state that the circuit tells apart.
 */
import { cornersOf, declaredCorner, isUnsolvable, stampInstant, type StampedInstant } from '../../src/engine'
import type { LiveMoment } from '../../src/engine'
import { instantNetlist, type Netlist } from '../../src/reports/netlist'
import {
  allOf,
  alsoLivened,
  besides,
  coilEarthed,
  multiEarthed,
  neutralOf,
  singleWire,
  spur,
  unearthed,
} from './networks'
import {
  bladesClosed,
  bondOn,
  clampOn,
  coverOn,
  defect,
  earthedSite,
  earthsOn,
  inScenario,
  isolatedSite,
  labelled,
  leftHandOnB,
  momentOf,
  person,
  sharedCache,
  standsAt,
  touching,
  unlocked,
  without,
  withRod,
  workerAloft,
} from '../engine/hazard/sites'
import { lowVoltageInstants } from './lowVoltageInstants'

interface InstantCase {
  /** File name of its reference. */
  readonly id: string
  readonly moment: () => LiveMoment
  readonly livening: string
  readonly corner?: string
  readonly second?: number
}

const onB = { kind: 'conductor', id: 'conductor-b' } as const
const onLvB = { kind: 'lv-wire', id: 'lv-b' } as const
const bootedAtRod = person('gw', { wears: ['BT-43'], place: { kind: 'ground', at: { x: -3.5, y: 0.6 } } })

export const instantCases: readonly InstantCase[] = [
  {
    id: 'no-earths-hand-on-other-phase',
    moment: () =>
      momentOf(isolatedSite(workerAloft), touching('pw', 'left-hand', { kind: 'conductor', id: 'conductor-c' })),
    livening: 'clash-a',
  },
  {
    id: 'never-isolated-stick-on-conductor',
    moment: () =>
      momentOf(
        isolatedSite(workerAloft, bladesClosed('switch-27', 'A', 'B', 'C')),
        touching('pw', 'left-hand', onB, 'S-11'),
        touching('pw', 'right-hand', onB, 'S-11'),
      ),
    livening: 'none',
  },
  {
    id: 'blade-b-left-closed-hand-on-c',
    moment: () =>
      momentOf(
        earthedSite(bladesClosed('switch-27', 'B')),
        touching('pw', 'left-hand', { kind: 'conductor', id: 'conductor-c' }),
      ),
    livening: 'none',
  },
  { id: 'earths-on-bare-pole', moment: () => momentOf(earthedSite(), leftHandOnB), livening: 'clash-b' },
  {
    id: 'earths-on-no-cover-holed-boots',
    moment: () => momentOf(earthedSite(defect('BT-42', 'nail-hole-left')), leftHandOnB),
    livening: 'clash-b',
  },
  { id: 'earths-on-cover', moment: () => momentOf(earthedSite(coverOn()), leftHandOnB), livening: 'clash-a' },
  {
    id: 'cover-and-bond-hand-on-arm',
    moment: () =>
      momentOf(
        earthedSite(coverOn(), bondOn),
        leftHandOnB,
        touching('pw', 'right-hand', { kind: 'metalwork', id: 'arm' }),
      ),
    livening: 'clash-b',
  },
  {
    id: 'two-phases-third-in-hand',
    moment: () => momentOf(earthedSite(bondOn), touching('pw', 'left-hand', { kind: 'conductor', id: 'conductor-c' })),
    livening: 'clash-ab',
  },
  {
    id: 'one-phase-left-off-tie-closed',
    moment: () =>
      momentOf(
        earthedSite(without('E-07', '3'), unlocked('switch-31')),
        leftHandOnB,
        touching('pw', 'right-hand', { kind: 'conductor', id: 'conductor-c' }),
      ),
    livening: 'switch-31-closed',
  },
  {
    id: 'clamp-burnt-off-second-shot',
    moment: () =>
      momentOf(
        earthedSite(
          without('E-07', '2'),
          clampOn('E-07', '2', 'conductor-b', { brushed: false, turns: 1 }),
          bondOn,
          unlocked('switch-27'),
        ),
        leftHandOnB,
      ),
    livening: 'switch-27-closed',
    second: 6,
  },
  {
    id: 'hand-on-lead-at-the-rod',
    moment: () =>
      momentOf(
        earthedSite(bootedAtRod),
        touching('gw', 'right-hand', { kind: 'lead', item: 'E-07', end: 'earth' }),
        touching('gw', 'left-hand', { kind: 'rod', item: 'R-1' }),
      ),
    livening: 'clash-b',
  },
  {
    id: 'two-people-on-a-loose-lead',
    moment: () =>
      momentOf(
        isolatedSite(workerAloft, coverOn(), standsAt('gw', -3.5, 0.6)),
        leftHandOnB,
        touching('pw', 'right-hand', { kind: 'lead', item: 'E-07', end: '1' }),
        touching('gw', 'right-hand', { kind: 'lead', item: 'E-07', end: 'earth' }),
      ),
    livening: 'clash-b',
  },
  {
    id: 'hand-on-lead-boots-fail',
    moment: () =>
      momentOf(
        isolatedSite(bootedAtRod, labelled('BT-43', { class: '0' }), clampOn('E-07', '1', 'conductor-b'), workerAloft),
        touching('gw', 'right-hand', { kind: 'lead', item: 'E-07', end: 'earth' }),
      ),
    livening: 'clash-b',
  },
  {
    id: 'low-voltage-unguarded',
    moment: () =>
      momentOf(
        isolatedSite(
          earthsOn,
          person('pw', { place: { kind: 'pole', station: 'below-lv' }, wears: ['BT-42', 'G-21'] }),
        ),
        touching('pw', 'left-hand', onLvB),
      ),
    livening: 'none',
  },
  {
    id: 'low-voltage-neutral-bonded-in',
    moment: () =>
      momentOf(
        earthedSite(clampOn('B-05', 'metal', 'lv-n'), clampOn('B-05', 'line', 'conductor-b')),
        leftHandOnB,
        touching('pw', 'right-hand', { kind: 'lv-wire', id: 'lv-n' }, 'L-52'),
      ),
    livening: 'clash-b',
  },
  {
    id: 'low-soil-high-fixing-crowd-at-the-pole',
    moment: () => momentOf(earthedSite(bondOn, standsAt('gw', 0, -0.5), standsAt('so', 0.1, 0.4)), leftHandOnB),
    livening: 'clash-c',
    corner: 'concrete-low fixing-high soil-low',
  },
  {
    id: 'coil-earthed-one-blade',
    moment: () => {
      const coilFed = alsoLivened({ id: 'one-blade', kind: 'coil-fed', switch: 'switch-27', phase: 'B' })
      return momentOf(earthedSite(inScenario(allOf(coilEarthed(0.95), coilFed)), unlocked('switch-27')), leftHandOnB)
    },
    livening: 'one-blade',
  },
  {
    id: 'unearthed-one-phase-live',
    moment: () =>
      momentOf(earthedSite(inScenario(unearthed), bladesClosed('switch-27', 'B'), coverOn(), bondOn), leftHandOnB),
    livening: 'none',
  },
  {
    id: 'reactor-two-blades-closed',
    moment: () => {
      const reactor = neutralOf({ kind: 'reactor', impedance: { re: 0.4, im: 18 } })
      return momentOf(earthedSite(inScenario(reactor), bladesClosed('switch-27', 'A', 'B')), leftHandOnB)
    },
    livening: 'none',
  },
  {
    id: 'neutral-wire-bonded-in',
    moment: () =>
      momentOf(
        earthedSite(
          inScenario(multiEarthed()),
          bladesClosed('switch-27', 'B'),
          clampOn('B-02', 'metal', 'neutral'),
          clampOn('B-02', 'line', 'conductor-b'),
        ),
        leftHandOnB,
        touching('pw', 'right-hand', { kind: 'conductor', id: 'neutral' }),
      ),
    livening: 'none',
  },
  {
    id: 'neutral-wire-raised-elsewhere',
    moment: () => {
      const fault = alsoLivened({ id: 'elsewhere', kind: 'neutral-raised', feeder: 'f2', phase: 'C', impedance: 0.5 })
      return momentOf(
        earthedSite(inScenario(allOf(multiEarthed({ earthEvery: 250 }), fault))),
        touching('pw', 'left-hand', { kind: 'conductor', id: 'neutral' }),
      )
    },
    livening: 'elsewhere',
  },
  {
    id: 'single-wire-closed-onto-its-earth',
    moment: () =>
      momentOf(
        isolatedSite(
          inScenario(singleWire),
          workerAloft,
          withRod,
          clampOn('E-07', 'earth', 'rod/R-1'),
          clampOn('E-07', '1', 'conductor-b'),
          unlocked('switch-31'),
        ),
        leftHandOnB,
      ),
    livening: 'switch-31-closed',
  },
  {
    id: 'spur-one-of-two-left-off',
    moment: () =>
      momentOf(
        isolatedSite(
          inScenario(spur),
          workerAloft,
          withRod,
          clampOn('E-07', 'earth', 'rod/R-1'),
          clampOn('E-07', '1', 'conductor-a'),
          unlocked('switch-27'),
        ),
        touching('pw', 'left-hand', { kind: 'conductor', id: 'conductor-a' }),
        touching('pw', 'right-hand', { kind: 'conductor', id: 'conductor-c' }),
      ),
    livening: 'switch-27-closed',
  },
  {
    id: 'beside-a-faulted-circuit',
    moment: () => {
      const induced = alsoLivened({ id: 'induced', kind: 'induction', parallel: 'p33', phase: 'C' })
      return momentOf(earthedSite(inScenario(allOf(besides(), induced)), bondOn), leftHandOnB)
    },
    livening: 'induced',
  },
  {
    id: 'beside-a-displaced-circuit-no-earths',
    moment: () => {
      const displaced = alsoLivened({ id: 'displaced', kind: 'pick-up', parallel: 'p33', phase: 'A' })
      return momentOf(isolatedSite(inScenario(allOf(besides(), displaced)), workerAloft), leftHandOnB)
    },
    livening: 'displaced',
  },
  ...lowVoltageInstants,
]

export interface SolvedCase {
  readonly instant: StampedInstant
  readonly written: Netlist
}

/** @param persons only those in the circuit; all when not given */
export function solveCase(it: InstantCase, persons?: readonly string[]): SolvedCase {
  const moment = it.moment()
  const corner = cornersOf(moment.site.scenario).find((one) => one.id === (it.corner ?? declaredCorner.id))
  if (corner === undefined) throw new Error(`no corner ${it.corner}`)
  const instant = stampInstant(moment, it.livening, corner, {
    cache: sharedCache,
    second: it.second ?? 0,
    ...(persons === undefined ? {} : { persons }),
  })
  if (isUnsolvable(instant)) throw new Error(`${it.id}: ${instant.reason} at ${instant.node}`)
  return { instant, written: instantNetlist(instant, { scenario: moment.site.scenario.id, run: it.id, at: 0 }) }
}
