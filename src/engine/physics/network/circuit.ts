/**
 * What a circuit is made of. Phasors are rms. Current is positive from `from` to `to` through the element; a shunt's
 * and an electrode's current is positive from its node into the earth. Ohm, siemens, volt, ampere.
 */
import type { Complex } from '../../math/complex'
import { invariant } from '../../units/invariant'
import type { NodeName } from './unsolvable'

export type Element =
  | {
      readonly id: string
      readonly kind: 'impedance'
      readonly from: NodeName
      readonly to: NodeName
      readonly impedance: Complex
    }
  | {
      readonly id: string
      readonly kind: 'admittance'
      readonly from: NodeName
      readonly to: NodeName
      readonly admittance: Complex
    }
  /** V(from) - V(to) = voltage. */
  | {
      readonly id: string
      readonly kind: 'voltage'
      readonly from: NodeName
      readonly to: NodeName
      readonly voltage: Complex
    }
  /** Takes `current` out of `from` and puts it into `to`. */
  | {
      readonly id: string
      readonly kind: 'current'
      readonly from: NodeName
      readonly to: NodeName
      readonly current: Complex
    }
  /** V(from) - V(to) of each branch = impedance matrix × branch currents. */
  | {
      readonly id: string
      readonly kind: 'coupled'
      readonly branches: readonly CoupledBranch[]
      readonly impedance: readonly (readonly Complex[])[]
    }
  /** Currents from the nodes to remote earth = admittance matrix × node voltages (Maxwell form). */
  | {
      readonly id: string
      readonly kind: 'shunt'
      readonly nodes: readonly NodeName[]
      readonly admittance: readonly (readonly Complex[])[]
    }
  /** Node voltages = resistance matrix × currents into the soil. */
  | {
      readonly id: string
      readonly kind: 'electrodes'
      readonly nodes: readonly NodeName[]
      readonly resistance: readonly (readonly number[])[]
    }

export interface CoupledBranch {
  readonly id: string
  readonly from: NodeName
  readonly to: NodeName
}

export interface Circuit {
  readonly elements: readonly Element[]
}

/** Elements by id in code-unit order: the order of insertion must not reach a single bit of the answer. */
export function sortedElements(circuit: Circuit): readonly Element[] {
  const sorted = [...circuit.elements].sort((a, b) => compareIds(a.id, b.id))
  const ids = sorted.flatMap((element) =>
    element.kind === 'coupled' ? [element.id, ...element.branches.map((branch) => branch.id)] : [element.id],
  )
  const seen = new Set<string>()
  for (const id of ids) {
    invariant(!seen.has(id), 'each element and branch id once', id)
    seen.add(id)
  }
  sorted.forEach(checkShape)
  return sorted
}

/** Of two that differ. */
export function compareIds(a: string, b: string): number {
  return a < b ? -1 : 1
}

export function nodesOf(element: Element): readonly NodeName[] {
  switch (element.kind) {
    case 'coupled':
      return element.branches.flatMap((branch) => [branch.from, branch.to])
    case 'shunt':
    case 'electrodes':
      return element.nodes
    default:
      return [element.from, element.to]
  }
}

/** Values and answers beyond this would leave the range of numbers when one is multiplied by another. */
export const LARGEST_NUMBER = 1e150

/** Every value of it is a number that can be reckoned with. */
export function isInRange(element: Element): boolean {
  switch (element.kind) {
    case 'impedance':
      return isReckonable(element.impedance)
    case 'admittance':
      return isReckonable(element.admittance)
    case 'voltage':
      return isReckonable(element.voltage)
    case 'current':
      return isReckonable(element.current)
    case 'coupled':
      return element.impedance.every((row) => row.every(isReckonable))
    case 'shunt':
      return element.admittance.every((row) => row.every(isReckonable))
    case 'electrodes':
      return element.resistance.every((row) => row.every((re) => Math.abs(re) <= LARGEST_NUMBER))
  }
}

/** Not for what is no number: that is never below anything. */
function isReckonable({ re, im }: Complex): boolean {
  return Math.abs(re) <= LARGEST_NUMBER && Math.abs(im) <= LARGEST_NUMBER
}

function checkShape(element: Element): void {
  if (element.kind === 'impedance') {
    const isZero = element.impedance.re === 0 && element.impedance.im === 0
    invariant(!isZero, 'an impedance other than zero', element.id)
  }
  if (element.kind === 'coupled') checkSquare(element.id, element.impedance, element.branches.length)
  if (element.kind === 'shunt') checkSquare(element.id, element.admittance, element.nodes.length)
  if (element.kind === 'electrodes') checkSquare(element.id, element.resistance, element.nodes.length)
}

function checkSquare(id: string, matrix: readonly (readonly unknown[])[], size: number): void {
  const isSquare = matrix.length === size && matrix.every((row) => row.length === size)
  invariant(isSquare, `a ${size} by ${size} matrix in ${id}`, `${matrix.length} rows`)
}
