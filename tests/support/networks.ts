/**
 * Marrow-bend on other networks: what `inScenario` of tests/engine/hazard/sites.ts takes. Values are usual ones of the
 * trade (common practice, no source) unless a test says otherwise.
 */
import type {
  Conductor,
  Livening,
  NeutralEarthing,
  NeutralWire,
  ParallelCircuit,
  Scenario,
} from '../../src/engine/site/scenario'

type ScenarioChange = (scenario: Scenario) => Partial<Scenario>

/** One after the other; each sees what those before it changed. */
export function allOf(...changes: readonly ScenarioChange[]): ScenarioChange {
  return (scenario) => changes.reduce<Scenario>((now, change) => ({ ...now, ...change(now) }), scenario)
}

/** Every feeder. @param networkCapacitance farad a phase of the other lines on its busbar */
export function neutralOf(neutral: NeutralEarthing, networkCapacitance?: number): ScenarioChange {
  return ({ feeders }) => ({
    feeders: feeders.map((it) => ({
      ...it,
      neutral,
      ...(networkCapacitance === undefined ? {} : { networkCapacitance }),
    })),
  })
}

/** 100 km of overhead line at about 5 nF/km and phase to earth, and some cable. */
const townNetwork = 4e-6

export function coilEarthed(tuning = 1, lossResistance = 600): ScenarioChange {
  return neutralOf({ kind: 'arc-suppression-coil', tuning, lossResistance }, townNetwork)
}

export const unearthed: ScenarioChange = neutralOf({ kind: 'unearthed' }, townNetwork)

/** One metre under the conductors, an earth every 100 m of 25 Ω, at the worked pole a rod half a metre from its axis. */
export const neutralWire: NeutralWire = {
  id: 'neutral',
  x: 0.3,
  height: 7.5,
  radius: 0.0045,
  gmr: 0.0034,
  resistance: 0.0006,
  earthEvery: 100,
  earthResistance: 25,
  poleEarth: { at: { x: 0, y: 0.5 }, length: 2, radius: 0.008 },
}

/** Solid at the station, the same neutral wire from both stations through the section; the crossing has none. */
export function multiEarthed(wire: Partial<NeutralWire> = {}): ScenarioChange {
  return ({ feeders, switches }) => ({
    feeders: feeders.map((it) =>
      switches.some((at) => at.feeder === it.id)
        ? { ...it, neutral: { kind: 'solid' } as const, neutralWire: { ...neutralWire, ...wire } }
        : it,
    ),
  })
}

/** Only these phases on section and feeders; livenings that would need another go. */
function onlyPhases(scenario: Scenario, keep: readonly Conductor['phase'][]): Partial<Scenario> {
  const left = (set: readonly Conductor[]) => set.filter((it) => keep.includes(it.phase))
  const conductors = left(scenario.conductors)
  return {
    conductors,
    feeders: scenario.feeders.map((it) => ({ ...it, conductors: left(it.conductors) })),
    livenings: scenario.livenings.filter((it) => phasesNamed(it).every((phase) => keep.includes(phase))),
    work: { ...scenario.work, conductor: conductors[0]!.id },
  }
}

function phasesNamed(livening: Livening): readonly Conductor['phase'][] {
  return [...('phase' in livening ? [livening.phase] : []), ...('phases' in livening ? livening.phases : [])]
}

/** A spur of the conductors A and C. */
export const spur: ScenarioChange = (scenario) => onlyPhases(scenario, ['A', 'C'])

/** Conductor B alone at 12.7 kV, behind isolating transformers of 100 kVA (4 %: 64 Ω) earthed at the station by 2 Ω. */
export const singleWire: ScenarioChange = (scenario) => {
  const one = onlyPhases(scenario, ['B'])
  return {
    ...one,
    feeders: one.feeders!.map((it) => ({
      ...it,
      voltage: 12_700,
      sourceImpedance: { re: 20, im: 61 },
      neutral: { kind: 'solid' } as const,
      stationEarth: 2,
      earthFault: { ...it.earthFault, pickup: 10 },
    })),
  }
}

/** 33 kV in the next row of poles, 10 m away, along the whole section but its first 100 m; 150 A of load. */
export const besideSection: ParallelCircuit = {
  id: 'p33',
  voltage: 33_000,
  conductors: (['A', 'B', 'C'] as const).map((phase, i) => ({
    id: `p33-${phase.toLowerCase()}`,
    phase,
    x: 10 + 1.2 * (i - 1),
    height: 11,
    radius: 0.0075,
    gmr: 0.0058,
    resistance: 0.0003,
  })),
  from: -500,
  to: 400,
  loadCurrent: 150,
  faultCurrent: 2_000,
  faultTime: 0.5,
}

export function besides(change: Partial<ParallelCircuit> = {}): ScenarioChange {
  return () => ({ parallels: [{ ...besideSection, ...change }] })
}

export function alsoLivened(...more: readonly Livening[]): ScenarioChange {
  return ({ livenings }) => ({ livenings: [...livenings, ...more] })
}
