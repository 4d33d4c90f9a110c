/** Voltages and currents read out of a solved unknown vector. */
import type { Complex } from '../../math/complex'
import { add, divide, multiply, subtract, ZERO } from '../../math/complex'
import type { SplitVector } from '../../math/splitMatrix'
import { invariant } from '../../units/invariant'
import type { Assembly } from './assemble'
import type { Element } from './circuit'
import type { NodeName } from './unsolvable'
import { REMOTE_EARTH } from './unsolvable'

export interface Solution {
  /** Volt to remote earth. Throws for a node that the circuit does not have. */
  voltage(node: NodeName): Complex
  /** Ampere from `from` to `to`; a shunt's or electrode group's total into the earth. */
  current(elementOrBranchId: string): Complex
  /** Ampere into the soil from each electrode, in the element's own order. */
  electrodeCurrents(elementId: string): readonly Complex[]
  /** Componentwise backward error of the solve, dimensionless. */
  readonly residual: number
}

export interface ReadableAssembly extends Assembly {
  readonly elementById: ReadonlyMap<string, Element>
  /** Coupled element and position by branch id. */
  readonly placeByBranch: ReadonlyMap<string, { readonly elementId: string; readonly position: number }>
}

export function readSolution(assembly: ReadableAssembly, x: SplitVector, residual: number): Solution {
  const at = (row: number): Complex => ({ re: x.re[row]!, im: x.im[row]! })
  const voltage = (node: NodeName): Complex => {
    if (node === REMOTE_EARTH) return ZERO
    const row = assembly.rowByNode.get(node)
    invariant(row !== undefined, 'a node of the circuit', node)
    return at(row)
  }
  const ownCurrents = (elementId: string, count: number): Complex[] => {
    const first = assembly.rowByElement.get(elementId)
    invariant(first !== undefined, 'an element with its own currents', elementId)
    return Array.from({ length: count }, (_, i) => at(first + i))
  }
  return {
    voltage,
    residual,
    electrodeCurrents: (elementId) => {
      const element = assembly.elementById.get(elementId)
      invariant(element?.kind === 'electrodes', 'an electrodes element', elementId)
      return ownCurrents(elementId, element.nodes.length)
    },
    current: (id) => {
      const place = assembly.placeByBranch.get(id)
      if (place !== undefined) return at(assembly.rowByElement.get(place.elementId)! + place.position)
      const element = assembly.elementById.get(id)
      invariant(element !== undefined, 'an element or branch of the circuit', id)
      return elementCurrent(assembly, element, voltage, ownCurrents)
    },
  }
}

function elementCurrent(
  assembly: Assembly,
  element: Element,
  voltage: (node: NodeName) => Complex,
  ownCurrents: (elementId: string, count: number) => Complex[],
): Complex {
  switch (element.kind) {
    case 'impedance':
      if (assembly.rowByElement.has(element.id)) return ownCurrents(element.id, 1)[0]!
      return divide(subtract(voltage(element.from), voltage(element.to)), element.impedance)
    case 'admittance':
      return multiply(subtract(voltage(element.from), voltage(element.to)), element.admittance)
    case 'voltage':
      return ownCurrents(element.id, 1)[0]!
    case 'current':
      return element.current
    case 'shunt':
      return element.admittance.flat().reduce((sum, y, k) => {
        return add(sum, multiply(y, voltage(element.nodes[k % element.nodes.length]!)))
      }, ZERO)
    case 'electrodes':
      return ownCurrents(element.id, element.nodes.length).reduce(add, ZERO)
    case 'coupled':
      return invariant(false, 'the id of one of its branches', element.id) as never
  }
}
