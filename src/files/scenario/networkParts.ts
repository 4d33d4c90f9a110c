/** Lines and their sources in `earths-on/scenario`: conductors, feeders, neutral wires, circuits beside the section. */
import {
  amperes,
  byKind,
  choice,
  id,
  list,
  metres,
  number,
  ohms,
  ohmsPerMetre,
  optional,
  point,
  seconds,
  shape,
  volts,
  type Field,
} from '../shape'
import { impedance, phase } from './commonParts'
import { fuses, relay, relayReset } from './protectionParts'

const farads = (low: number, high: number): Field<number> => ({ suffix: 'F', schema: number(low, high) })

const wire = {
  x: { suffix: 'M', schema: number(-50, 50) },
  height: metres(3, 60),
  radius: metres(0.0005, 0.05),
  gmr: metres(0.0001, 0.05),
  resistance: ohmsPerMetre(1e-6, 0.1),
} as const

/** Three, two on a spur, one with the earth as its return. */
export const conductors = list(shape({ id: id(), phase: phase(), ...wire }), 1, 3)

const neutralWire = shape({
  id: id(),
  ...wire,
  earthEvery: metres(5, 5000),
  earthResistance: ohms(0.1, 10_000),
  poleEarth: shape({ at: point(), length: metres(0.1, 30), radius: metres(0.002, 0.1) }),
})

export const feeder = shape({
  id: id(),
  voltage: volts(100, 500_000),
  sourceImpedance: impedance,
  neutral: byKind({
    resistor: shape({ kind: choice('resistor'), resistance: ohms(0.001, 1e6) }),
    solid: shape({ kind: choice('solid') }),
    unearthed: shape({ kind: choice('unearthed') }),
    reactor: shape({ kind: choice('reactor'), impedance }),
    'arc-suppression-coil': shape({
      kind: choice('arc-suppression-coil'),
      tuning: number(0.1, 10),
      lossResistance: ohms(1, 1e7),
    }),
  }),
  networkCapacitance: optional(farads(1e-12, 1e-3)),
  neutralWire: optional(neutralWire),
  stationEarth: ohms(0.001, 1000),
  length: metres(1, 200_000),
  conductors,
  earthFault: relay,
  overcurrent: relay,
  breakerTime: seconds(0.001, 10),
  recloseDeadTimes: { suffix: 'S', schema: list(number(0.05, 600), 0, 5) },
  sensitiveEarthFault: optional(relay),
  fuses: optional(fuses),
  relayReset: optional(relayReset),
})

export const parallel = shape({
  id: id(),
  feeder: optional(id()),
  voltage: volts(100, 1_000_000),
  conductors,
  from: metres(-50_000, 50_000),
  to: metres(-50_000, 50_000),
  loadCurrent: amperes(0, 10_000),
  faultCurrent: optional(amperes(0.1, 100_000)),
  faultTime: optional(seconds(0.01, 3600)),
})
