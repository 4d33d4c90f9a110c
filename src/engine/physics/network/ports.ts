/**
 * What a body sees of the circuit: open-circuit voltages and transfer impedances of the points it touches.
 * A ground port is a disc on the soil beside the electrodes: one ampere through it lifts every electrode by `mutual`,
 * and each electrode's current lifts the disc by the same mutual (reciprocity), so its right-hand side stands in the
 * electrode rows.
 */
import type { Complex } from '../../math/complex'
import { add, scale, ZERO } from '../../math/complex'
import type { SplitVector } from '../../math/splitMatrix'
import { splitVector } from '../../math/splitMatrix'
import { invariant } from '../../units/invariant'
import type { ReadableAssembly, Solution } from './solution'
import type { NodeName } from './unsolvable'
import { REMOTE_EARTH } from './unsolvable'

export type Port =
  | { readonly kind: 'node'; readonly node: NodeName }
  | {
      readonly kind: 'ground'
      /** Id of the electrodes element of this soil, '' when there is none. */
      readonly electrodes: string
      /** Ohm between this disc and each electrode, in the element's order. */
      readonly mutual: readonly number[]
      /** Ohm of the disc alone to remote earth. */
      readonly self: number
    }

export interface PortEquivalent {
  /** Volt to remote earth with no current through any port. */
  readonly open: readonly Complex[]
  /** transfer[i][j]: volt at port i per ampere into the circuit at port j. Symmetric. */
  readonly transfer: readonly (readonly Complex[])[]
}

export interface Injection {
  readonly port: Port
  readonly current: Complex
}

/** The node of a node port that the circuit does not have: a thing that touches nothing floats. */
export function findLoosePort(assembly: ReadableAssembly, ports: readonly Port[]): NodeName | undefined {
  for (const port of ports) {
    if (port.kind === 'node' && port.node !== REMOTE_EARTH && !assembly.rowByNode.has(port.node)) return port.node
  }
  return undefined
}

/** Adds the right-hand side of a current into the circuit at a port. */
export function addInjection(assembly: ReadableAssembly, right: SplitVector, port: Port, current: Complex): void {
  if (port.kind === 'node') {
    const row = assembly.rowByNode.get(port.node)
    if (row !== undefined) addAt(right, row, current)
    return
  }
  const first = firstElectrodeRow(assembly, port)
  if (first === undefined) return
  port.mutual.forEach((ohm, k) => addAt(right, first + k, scale(current, ohm)))
}

/** Right-hand side of one ampere at one port and nothing else. */
export function unitInjection(assembly: ReadableAssembly, port: Port): SplitVector {
  const right = splitVector(assembly.nodeOfRow.length)
  addInjection(assembly, right, port, { re: 1, im: 0 })
  return right
}

/** Volt at a port from node voltages and electrode currents, without the port's own current. */
export function portVoltage(port: Port, solution: Pick<Solution, 'voltage' | 'electrodeCurrents'>): Complex {
  if (port.kind === 'node') return solution.voltage(port.node)
  if (port.electrodes === '') return ZERO
  const currents = solution.electrodeCurrents(port.electrodes)
  return port.mutual.reduce((sum, ohm, k) => add(sum, scale(currents[k]!, ohm)), ZERO)
}

function firstElectrodeRow(assembly: ReadableAssembly, port: Extract<Port, { kind: 'ground' }>): number | undefined {
  if (port.electrodes === '') return undefined
  const element = assembly.elementById.get(port.electrodes)
  invariant(element?.kind === 'electrodes', 'an electrodes element', port.electrodes)
  const count = element.nodes.length
  invariant(port.mutual.length === count, `${count} mutual resistances`, port.mutual.length)
  return assembly.rowByElement.get(port.electrodes)
}

function addAt(right: SplitVector, row: number, value: Complex): void {
  right.re[row] = right.re[row]! + value.re
  right.im[row] = right.im[row]! + value.im
}
