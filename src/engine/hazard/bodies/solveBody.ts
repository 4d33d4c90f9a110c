/**
 * The current through one body: a star of limbs of 0.5·Z(U) each, the trunk nothing, chest, thigh and knee at the trunk. U is
 * the largest voltage between any two contacts inside their layers, the same for all limbs; it is iterated to 1e-9 and
 * bisected when it does not settle. There is no fallback body: no convergence is an answer of its own.
 */
import type { Complex } from '../../math/complex'
import { add, complex, divide, magnitude, ONE, subtract, ZERO } from '../../math/complex'
import { handToHandImpedance } from '../../physics/body'
import { unsolvable, type Unsolvable } from '../../physics/network'
import type { Scenario } from '../../site/scenario'
import type { Limb } from '../../site/contact'
import type { Layer } from './layer'
import { solveStar } from './starSystem'

/** Contacts of one body as ports of the circuit. */
export interface BodyPorts {
  readonly limbs: readonly Limb[]
  readonly open: readonly Complex[]
  /** Ohm between ports: through the circuit, the soil and what contacts share. */
  readonly transfer: readonly (readonly Complex[])[]
}

export interface BodySolution {
  /** Ampere into the body at each contact. */
  readonly currents: readonly Complex[]
  /** Largest voltage between two contacts inside their layers. */
  readonly bodyVoltage: number
}

export type Skin = Scenario['body']

const tolerance = 1e-9
const mostIterations = 60
const mostBisections = 200

/** @param layers by contact, failed ones as resistances; at least two contacts */
export function solveBody(
  ports: BodyPorts,
  layers: readonly (readonly Layer[])[],
  skin: Skin,
  person: string,
): BodySolution | Unsolvable {
  const outside = layers.map(layersImpedance)
  const at = (voltage: number): BodySolution | undefined => starAt(ports, outside, voltage, skin)
  let voltage = largestDifference(ports.open)
  for (let i = 0; i < mostIterations; i++) {
    const solution = at(voltage)
    if (solution === undefined) return unsolvable(person, 'not-finite')
    if (isSettled(voltage, solution.bodyVoltage)) return solution
    voltage = solution.bodyVoltage
  }
  return bisect(at, largestDifference(ports.open), person)
}

function bisect(
  at: (voltage: number) => BodySolution | undefined,
  most: number,
  person: string,
): BodySolution | Unsolvable {
  let low = 0
  let high = 2 * most
  for (let i = 0; i < mostBisections; i++) {
    const middle = (low + high) / 2
    const solution = at(middle)
    if (solution === undefined) return unsolvable(person, 'not-finite')
    if (isSettled(middle, solution.bodyVoltage)) return solution
    if (solution.bodyVoltage > middle) low = middle
    else high = middle
  }
  return unsolvable(person, 'no-convergence')
}

/** Below a nanovolt there is nothing to settle. */
export function isSettled(assumed: number, found: number): boolean {
  return Math.abs(found - assumed) <= tolerance * Math.max(found, 1)
}

function starAt(ports: BodyPorts, outside: readonly Complex[], voltage: number, skin: Skin): BodySolution | undefined {
  if (!Number.isFinite(voltage)) return undefined
  const limb = 0.5 * handToHandImpedance(voltage, skin.percentile, skin.skin)
  const own = ports.limbs.map((it) => (isAtTrunk(it) ? 0 : limb))
  const star = solveStar(
    ports.open,
    ports.transfer,
    outside.map((z, i) => add(z, complex(own[i]!))),
  )
  if (star === undefined) return undefined
  const inside = star.currents.map((current, i) => ({ re: current.re * own[i]!, im: current.im * own[i]! }))
  return { currents: star.currents, bodyVoltage: largestDifference(inside) }
}

export function isAtTrunk(limb: Limb): boolean {
  return limb === 'thigh' || limb === 'chest' || limb === 'knee'
}

export function layersImpedance(layers: readonly Layer[]): Complex {
  return layers.reduce((sum, layer) => {
    return add(sum, layer.kind === 'resistance' ? complex(layer.ohm) : divide(ONE, layer.admittance))
  }, ZERO)
}

export function largestDifference(values: readonly Complex[]): number {
  let most = 0
  values.forEach((a, i) => {
    for (const b of values.slice(0, i)) most = Math.max(most, magnitude(subtract(a, b)))
  })
  return most
}
