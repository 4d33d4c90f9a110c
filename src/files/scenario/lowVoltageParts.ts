/** The low voltage, transformers and other people's sources in `earths-on/scenario`: keys, units and ranges. */
import * as v from 'valibot'
import type { ScenarioBase } from '../../engine'
import {
  boolean,
  choice,
  id,
  list,
  metres,
  number,
  numberChoice,
  ohms,
  ohmsPerMetre,
  oneOf,
  optional,
  point,
  seconds,
  shape,
  volts,
  type Field,
} from '../shape'
import { impedance, phase } from './commonParts'
import { fuses } from './protectionParts'

const phaseList = (least: number) => list(phase(), least, 3)

/** Share of a rating's own impedance. */
const perUnit = {
  suffix: 'PerUnit',
  schema: v.pipe(
    shape({ resistance: number(0, 5), reactance: number(0.001, 5) }),
    v.transform(({ resistance, reactance }) => ({ re: resistance, im: reactance })),
  ) as v.GenericSchema<unknown, { readonly re: number; readonly im: number }>,
} satisfies Field<unknown>

const voltAmperes = (low: number, high: number): Field<number> => ({ suffix: 'VA', schema: number(low, high) })

/** Resistance and reactance of each metre. */
const wire = v.pipe(
  shape({ resistance: ohmsPerMetre(0, 0.1), reactance: ohmsPerMetre(0, 0.1) }),
  v.transform(({ resistance, reactance }) => ({ re: resistance, im: reactance })),
) as v.GenericSchema<unknown, { readonly re: number; readonly im: number }>

export const lv = shape({
  /** Phase to neutral. */
  voltage: volts(50, 1000),
  sourceImpedance: impedance,
  wires: list(
    shape({
      id: id(),
      phase: choice('A', 'B', 'C', 'N'),
      x: { suffix: 'M', schema: number(-5, 5) },
      height: metres(2, 30),
      lamps: optional(
        shape({ resistance: ohms(1, 1e6), cabinet: point(), key: optional(id()), ownSupply: optional(boolean()) }),
      ),
      isolator: optional(shape({ at: point(), key: optional(id()) })),
    }),
    2,
    8,
  ),
  neutralEarth: shape({ resistance: ohms(0.01, 10_000), at: point() }),
  fedBy: optional(id()),
  houseEarths: optional(
    list(
      shape({
        /** Of wire from the worked pole. */
        distance: metres(1, 5000),
        resistance: ohms(0.01, 10_000),
        wire,
        at: optional(point()),
      }),
      0,
      50,
    ),
  ),
  insulatorLeakage: ohms(1000, 1e12),
})

/** What a pole without low voltage has: no wires, and so nothing that the rest would say anything of. */
export const noLowVoltage: ScenarioBase['lv'] = {
  voltage: 0,
  sourceImpedance: { re: 0, im: 0 },
  wires: [],
  neutralEarth: { resistance: 1, at: { x: 0, y: 0 } },
  insulatorLeakage: 1,
}

export const transformer = shape({
  id: id(),
  connection: choice('Dyn', 'Yyn', 'single-phase', 'single-wire'),
  clock: optional(numberChoice(0, 1, 5, 6, 7, 11)),
  phases: phaseList(1),
  /** Phase to phase, of a single wire to earth; phase to neutral. */
  highVoltage: volts(1000, 100_000),
  lowVoltage: volts(50, 1000),
  rating: voltAmperes(500, 5_000_000),
  impedance: perUnit,
  along: metres(-50_000, 50_000),
  fuses: optional(fuses),
  neutralEarth: shape({ resistance: ohms(0.01, 10_000), at: optional(point()) }),
  highEarth: optional(shape({ resistance: ohms(0.01, 10_000) })),
  lowVoltageClosed: boolean(),
  load: optional(voltAmperes(1, 5_000_000)),
})

const never = choice('never')
const { schema: soon } = seconds(0.001, 3600)
const trips = oneOf<number | 'never'>([soon, never], (input) => (typeof input === 'string' ? never : soon))

export const embeddedSource = shape({
  id: id(),
  kind: choice('generator', 'inverter', 'tie'),
  transformer: id(),
  at: point(),
  phases: phaseList(1),
  rating: voltAmperes(100, 5_000_000),
  impedance: optional(perUnit),
  stall: optional(shape({ share: number(0.1, 10), after: seconds(0.001, 3600) })),
  limit: optional(number(0.1, 10)),
  trips: optional({ suffix: 'S', schema: trips }),
  onDiagram: optional(boolean()),
})

export const premises = shape({
  id: id(),
  at: point(),
  answers: choice('has-own', 'has-none', 'does-not-know', 'nobody-home'),
  consents: boolean(),
})
