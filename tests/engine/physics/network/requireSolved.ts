import { complex } from '../../../../src/engine/math/complex'
import type { Element, Factored, Solution, Unsolvable } from '../../../../src/engine/physics/network'
import { factor, isUnsolvable } from '../../../../src/engine/physics/network'

/** Fails the test with the reason when the circuit gave none. */
export function requireAnswer<T>(answer: T | Unsolvable): T {
  if (isUnsolvable(answer)) throw new Error(`unsolvable: ${answer.reason} at ${answer.node}`)
  return answer
}

export function requireFactored(elements: readonly Element[]): Factored {
  return requireAnswer(factor({ elements }))
}

export function requireSolved(elements: readonly Element[]): Solution {
  return requireAnswer(requireFactored(elements).solve())
}

export function resistor(id: string, from: string, to: string, ohm: number): Element {
  return { id, kind: 'impedance', from, to, impedance: complex(ohm) }
}

export function source(id: string, node: string, volt: number): Element {
  return { id, kind: 'voltage', from: node, to: '0', voltage: complex(volt) }
}
