/** The worked pole, by what it is made of. SI units; hidden truth like everything of a scenario. */
import type { GroundPoint } from './place'

export type Pole = ConcretePole | WoodPole | SteelPole

interface PoleShape {
  readonly number: string
  readonly height: number
  readonly armHeight: number
  readonly lvHeight: number
  readonly buttLength: number
  readonly diameter: number
  /** Arm bolt to what carries current in the pole (reinforcement, wood, steel), ohm. */
  readonly armFixing: number
  /** A step bolt, or the iron of a climber, to the same, ohm. */
  readonly stepBoltFixing: number
  readonly stepBoltsTo: number
  /** `none`: a wooden one is climbed on irons, any other not at all; bolts when not said. */
  readonly steps?: 'bolts' | 'none'
  /** The other leg of a double pole: made like the first, tied to it by the arm. */
  readonly secondLeg?: SecondLeg
}

export interface SecondLeg {
  readonly at: GroundPoint
  /** The arm's bolt in it, ohm. */
  readonly armFixing: number
}

export interface ConcretePole extends PoleShape {
  readonly kind: 'concrete'
  readonly cageRadius: number
  readonly concreteCover: number
  readonly concreteResistivity: number
  /** An earth conductor cast in and welded to the cage; ohm of its terminal, more when corroded, and its height. */
  readonly integralEarth?: { readonly terminal: number; readonly height: number }
}

export type WoodMoisture = 'dry' | 'damp' | 'soaked'
/** `oil`: creosote and the like, or none. `salt`: a waterborne salt, which conducts. */
export type WoodTreatment = 'oil' | 'salt'

export interface WoodPole extends PoleShape {
  readonly kind: 'wood'
  readonly moisture: WoodMoisture
  readonly treatment: WoodTreatment
  /** Rain on it: a film beside the wood. */
  readonly surface: 'dry' | 'wet'
  /** Ohm a metre of the wood, where it was measured; else by moisture and treatment. */
  readonly resistance?: number
  /** Of a wooden arm only the bolt is metal. */
  readonly arm: 'wood' | 'steel'
}

export interface SteelPole extends PoleShape {
  readonly kind: 'steel'
}

export const hasSteps = ({ steps }: Pick<Pole, 'steps'>): boolean => steps !== 'none'

/** Only oiled wood that is dry through and outside holds off what a body can stand between it and an earthed wire. */
export function mayConduct(pole: Pole): boolean {
  return pole.kind !== 'wood' || pole.moisture !== 'dry' || pole.treatment !== 'oil' || pole.surface !== 'dry'
}

/** Of a double pole: the first stands at the origin. 3 is the next pole of the line. */
export type Leg = 1 | 2 | 3
