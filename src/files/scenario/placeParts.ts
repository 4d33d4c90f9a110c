/** The pole by what it is made of, and the metal on pole and ground. Ranges say what is physically sensible. */
import * as v from 'valibot'
import {
  byKind,
  choice,
  id,
  list,
  metres,
  number,
  ohmMetres,
  ohms,
  ohmsPerMetre,
  optional,
  point,
  shape,
  text,
  volts,
} from '../shape'

const poleShape = {
  number: text(20),
  /** Above ground. */
  height: metres(4, 30),
  armHeight: metres(3, 30),
  lvHeight: metres(3, 30),
  buttLength: metres(0.5, 5),
  diameter: metres(0.1, 1.5),
  armFixing: ohms(0.001, 1e9),
  stepBoltFixing: ohms(0.001, 1e9),
  stepBoltsTo: metres(1, 30),
  steps: optional(choice('bolts', 'none')),
  secondLeg: optional(shape({ at: point(), armFixing: ohms(0.001, 1e9) })),
}

export const pole = byKind({
  concrete: shape({
    kind: choice('concrete'),
    ...poleShape,
    cageRadius: metres(0.02, 0.7),
    concreteCover: metres(0.005, 0.2),
    concreteResistivity: ohmMetres(1, 1_000_000),
    integralEarth: optional(shape({ terminal: ohms(0.0001, 1e6), height: metres(0.3, 30) })),
  }),
  wood: shape({
    kind: choice('wood'),
    ...poleShape,
    moisture: choice('dry', 'damp', 'soaked'),
    treatment: choice('oil', 'salt'),
    surface: choice('dry', 'wet'),
    resistance: optional(ohmsPerMetre(10, 1e9)),
    arm: choice('wood', 'steel'),
  }),
  steel: shape({ kind: choice('steel'), ...poleShape }),
})

export const metalwork = shape({
  id: id(),
  kind: choice('band', 'bolt', 'brace', 'cable-sheath', 'lamp-bracket', 'tank'),
  height: metres(0, 30),
  on: id(),
  fixing: ohms(0.0001, 1e9),
  earth: optional(ohms(0.001, 1e6)),
})

export const nextPole = shape({
  number: text(20),
  along: { suffix: 'M', schema: number(-500, 500) },
  work: optional(shape({ conductor: id(), old: id(), item: id() })),
})

export const sectionJumpers = shape({
  id: id(),
  number: text(20),
  along: { suffix: 'M', schema: number(-5000, 5000) },
})

const joint = shape({ to: id(), resistance: ohms(0.0001, 1e9) })

export const groundThing = byKind({
  fence: shape({
    id: id(),
    kind: choice('fence'),
    posts: list(point(), 1, 60),
    postDepth: metres(0.1, 3),
    postRadius: metres(0.005, 0.3),
    joins: optional(joint),
  }),
  pipe: shape({
    id: id(),
    kind: choice('pipe'),
    resistance: ohms(0.01, 1e6),
    points: list(point(), 1, 60),
    joins: optional(joint),
  }),
  earth: shape({ id: id(), kind: choice('earth'), at: point(), resistance: ohms(0.01, 1e6) }),
})

const outrigger = v.pipe(
  shape({ offset: point(), radius: metres(0.05, 1) }),
  v.transform(({ offset, radius }) => ({ x: offset.x, y: offset.y, radius })),
) as v.GenericSchema<unknown, { readonly x: number; readonly y: number; readonly radius: number }>

export const truck = shape({
  tyres: ohms(100, 1e10),
  outriggers: list(outrigger, 0, 8),
  boom: optional(shape({ leakage: ohms(0.001, 1e13), liner: ohms(0, 1e13) })),
})

export const livestock = shape({ pace: { suffix: 'M', schema: number(0.5, 4) }, limit: volts(1, 10_000) })

/** Of the handline, a metre. */
export const rope = shape({ dry: ohmsPerMetre(1, 1e12), wet: ohmsPerMetre(1, 1e12) })
