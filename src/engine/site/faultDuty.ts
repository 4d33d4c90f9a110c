/**
 * What a lead at the work position must stand, by what the crew has on paper: the prospective current of each feeder
 * that could come there, and how long its protection lets it flow. And the copper section that this asks for.
 *   three-phase:  I = E/|Zs + Z1|          Z1 = Zii - Zij   (means over the row: transposed)
 *   to earth:     I = E/|Zs + Zii + Zn|     Zii with earth return, a neutral wire taken as earthed all along (Kron)
 *   section:      A = I √(n t)/(K √ln((B + θ)/(B + θ0)))     (adiabatic, n shots)
 * E volts to earth, Zn what earths the neutral. The line counts as far as the worked pole, the capacitances and what a rod
 * lets through do not: a lead has to stand the bolted fault. One shot where the reclose is off, else all (heat adds up).
 * A relay that the current does not move: to the scenario's horizon. Careful, never more than a few hundredths low.
 */
import { add, complex, magnitude, scale, subtract, type Complex } from '../math/complex'
import { adiabaticArea } from '../physics/conductor'
import { kronReduce, seriesImpedance } from '../physics/line'
import { arcTime, meltingTime, operatingTime } from '../physics/protection'
import { phasesOf, voltageToEarth } from './phasesOf'
import type { Conductor, Feeder, NeutralWire, Relay, Scenario, ThingId } from './scenario'

/** Ampere and seconds of one shot. */
export interface Duty {
  readonly current: number
  readonly time: number
}

export interface FaultDuty {
  readonly feeder: ThingId
  /** Between all conductors; on a single wire the same as to earth. */
  readonly between: Duty
  readonly toEarth: Duty
  /** Shots if nobody has the reclose taken off. */
  readonly shots: number
}

/** What a lead is there for: to join conductors, or to join metalwork to one of them. */
export type LeadUse = 'conductors' | 'metalwork'

/** °C: copper from a mild day to 300 K more, as leads are rated (IEC 61230 by the kA of its table, from memory). */
const [coldLead, hotLead] = [20, 320]

/** Of every feeder, in the order of the sheet. */
export function faultDuties(scenario: Scenario): readonly FaultDuty[] {
  return scenario.feeders.map((feeder) => {
    const toEarth = earthDuty(scenario, feeder)
    const between = phasesOf(feeder.conductors).length > 1 ? phaseDuty(scenario, feeder) : toEarth
    return { feeder: feeder.id, between, toEarth, shots: 1 + feeder.recloseDeadTimes.length }
  })
}

export interface AskedArea {
  /** Whose fault asks for most; undefined where no feeder is in service. */
  readonly duty: (Duty & { readonly feeder: ThingId }) | undefined
  /** mm² of copper. */
  readonly area: number
}

/** @param shotsOf 0 when that feeder is out, 1 when its reclose is off */
export function askedArea(scenario: Scenario, use: LeadUse, shotsOf: (duty: FaultDuty) => number = () => 1): AskedArea {
  const asked = faultDuties(scenario).flatMap((duty): readonly AskedArea[] => {
    const { current, time } = use === 'conductors' ? duty.between : duty.toEarth
    const seconds = shotsOf(duty) * time
    if (seconds === 0 || current === 0) return []
    const area = 1e6 * adiabaticArea('copper', current, seconds, coldLead, hotLead)
    return [{ duty: { feeder: duty.feeder, current, time: seconds }, area }]
  })
  return asked.reduce((most, it) => (it.area > most.area ? it : most), { duty: undefined, area: 0 })
}

function phaseDuty(scenario: Scenario, feeder: Feeder): Duty {
  const along = (conductors: readonly Conductor[], length: number): Complex => {
    const [self, mutual] = meansOf(seriesOf(scenario, conductors))
    return scale(subtract(self, mutual), length)
  }
  const { re, im } = feeder.sourceImpedance
  const way = add(along(feeder.conductors, feeder.length), along(scenario.conductors, reachOf(scenario, feeder)))
  const current = voltageToEarth(feeder) / magnitude(add(complex(re, im), way))
  return { current, time: clearing(scenario, feeder, [feeder.overcurrent], current) }
}

function earthDuty(scenario: Scenario, feeder: Feeder): Duty {
  const { neutralWire: wire } = feeder
  const along = (conductors: readonly Conductor[], length: number): Complex => {
    const wires = wire === undefined ? conductors : [...conductors, wire]
    return scale(meansOf(kronReduce(seriesOf(scenario, wires), conductors.length))[0], length)
  }
  const neutral = neutralOf(feeder)
  if (neutral === undefined) return { current: 0, time: 0 }
  const { re, im } = feeder.sourceImpedance
  const line = add(along(feeder.conductors, feeder.length), along(scenario.conductors, reachOf(scenario, feeder)))
  const current = voltageToEarth(feeder) / magnitude(add(add(complex(re, im), neutral), line))
  return { current, time: clearing(scenario, feeder, [feeder.earthFault, feeder.overcurrent], current) }
}

/** Undefined where nothing but capacitance, or a coil tuned to it, lets current to earth back. */
function neutralOf({ neutral, stationEarth, neutralWire }: Feeder): Complex | undefined {
  const station = complex(neutralWire === undefined ? stationEarth : 0)
  if (neutral.kind === 'unearthed' || neutral.kind === 'arc-suppression-coil') return undefined
  if (neutral.kind === 'solid') return station
  return add(station, neutral.kind === 'resistor' ? complex(neutral.resistance) : neutral.impedance)
}

/** Metres of the section between where the feeder comes to it and the worked pole: the nearest of its switches. */
function reachOf({ switches, section }: Scenario, { id }: Feeder): number {
  const own = switches.filter(({ feeder }) => feeder === id).map(({ along }) => Math.abs(along))
  return own.length === 0 ? Math.abs(section.crossingAlong) : Math.min(...own)
}

function seriesOf({ frequency, soil }: Scenario, wires: readonly (Conductor | NeutralWire)[]) {
  const { resistivity } = soil.layers[soil.layers.length - 1]!
  return seriesImpedance(
    frequency,
    resistivity,
    wires.map(({ x, height, gmr, resistance }) => ({ x, y: height, gmr, acResistance: resistance })),
  )
}

/** Mean of the self impedances and of the mutual ones. */
function meansOf(matrix: readonly (readonly Complex[])[]): readonly [Complex, Complex] {
  const mean = (all: readonly Complex[]): Complex => scale(all.reduce(add, complex(0)), 1 / Math.max(1, all.length))
  const self = matrix.map((row, i) => row[i]!)
  return [mean(self), mean(matrix.flatMap((row, i) => row.filter((_, j) => j !== i)))]
}

function clearing(scenario: Scenario, feeder: Feeder, relays: readonly Relay[], current: number): number {
  const { horizon, frequency } = scenario
  const trips = relays.map(({ curve, pickup, multiplier }) => operatingTime(curve, pickup, multiplier, current))
  const { fuses } = feeder
  const melts = fuses === undefined ? 'never' : meltingTime(fuses.link, fuses.rating, current, 'most')
  const times = [
    ...trips.flatMap((it) => (it === 'never' ? [] : [it + feeder.breakerTime])),
    ...(melts === 'never' ? [] : [melts + arcTime(frequency)]),
  ]
  return Math.min(horizon, ...times)
}
