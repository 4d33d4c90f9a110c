/**
 * Modified nodal analysis (Ho, Ruehli and Brennan 1975). Unknowns: node voltages, then the currents of voltage sources,
 * coupled branches, electrodes and of impedances up to 1 ohm. Those keep their own current because a clamp of 0.5 mΩ
 * stamped as 2000 S would drown a leakage of a few nS at the same node in rounding.
 * Node rows: sum of currents leaving = current injected. Branch rows: voltage law of the branch.
 */
import type { Complex } from '../../math/complex'
import { divide, ONE } from '../../math/complex'
import type { Entries, SplitMatrix, SplitVector } from '../../math/splitMatrix'
import { addEntry, noEntries, splitMatrix, splitVector } from '../../math/splitMatrix'
import type { Element } from './circuit'
import { compareIds, nodesOf } from './circuit'
import type { NodeName } from './unsolvable'
import { REMOTE_EARTH } from './unsolvable'

const OWN_CURRENT_UP_TO = 1

/** Which row each unknown has. */
export interface Numbering {
  readonly nodes: readonly NodeName[]
  readonly rowByNode: ReadonlyMap<NodeName, number>
  /** First row of the branch currents that an element owns. */
  readonly rowByElement: ReadonlyMap<string, number>
  /** For a failed pivot: the node to name for each row. */
  readonly nodeOfRow: readonly NodeName[]
}

export interface Assembly extends Numbering {
  readonly matrix: SplitMatrix
  readonly sources: SplitVector
}

function hasOwnCurrent(element: Element): boolean {
  if (element.kind === 'impedance') {
    return Math.abs(element.impedance.re) + Math.abs(element.impedance.im) <= OWN_CURRENT_UP_TO
  }
  return element.kind === 'voltage' || element.kind === 'coupled' || element.kind === 'electrodes'
}

export function numberUnknowns(elements: readonly Element[]): Numbering {
  const nodes = [...new Set(elements.flatMap(nodesOf))].filter((node) => node !== REMOTE_EARTH).sort(compareIds)
  const rowByNode = new Map(nodes.map((node, row) => [node, row]))
  const rowByElement = new Map<string, number>()
  const nodeOfRow: NodeName[] = [...nodes]
  for (const element of elements) {
    if (!hasOwnCurrent(element)) continue
    rowByElement.set(element.id, nodeOfRow.length)
    nodeOfRow.push(...branchNodes(element))
  }
  return { nodes, rowByNode, rowByElement, nodeOfRow }
}

export function assemble(elements: readonly Element[], numbering: Numbering): Assembly {
  const size = numbering.nodeOfRow.length
  const stamped = { ...numbering, entries: noEntries(), sources: splitVector(size) }
  for (const element of elements) stamp(stamped, element)
  const { entries, sources } = stamped
  return { ...numbering, matrix: splitMatrix(size, entries), sources }
}

interface Stamped extends Pick<Assembly, 'rowByNode' | 'rowByElement' | 'sources'> {
  readonly entries: Entries
}

function branchNodes(element: Element): readonly NodeName[] {
  if (element.kind === 'coupled') return element.branches.map((branch) => namedEnd(branch.from, branch.to))
  if (element.kind === 'electrodes') return element.nodes
  if (element.kind === 'shunt') return []
  return [namedEnd(element.from, element.to)]
}

function namedEnd(from: NodeName, to: NodeName): NodeName {
  return from === REMOTE_EARTH ? to : from
}

function stamp(assembly: Stamped, element: Element): void {
  const row = assembly.rowByElement.get(element.id)
  switch (element.kind) {
    case 'impedance':
      if (row === undefined) stampAdmittance(assembly, element.from, element.to, divide(ONE, element.impedance))
      else {
        stampBranch(assembly, row, element.from, element.to)
        addEntry(assembly.entries, row, row, -element.impedance.re, -element.impedance.im)
      }
      return
    case 'admittance':
      stampAdmittance(assembly, element.from, element.to, element.admittance)
      return
    case 'voltage':
      stampBranch(assembly, row!, element.from, element.to)
      assembly.sources.re[row!] = element.voltage.re
      assembly.sources.im[row!] = element.voltage.im
      return
    case 'current':
      inject(assembly, element.from, -element.current.re, -element.current.im)
      inject(assembly, element.to, element.current.re, element.current.im)
      return
    case 'coupled':
      element.branches.forEach((branch, i) => {
        stampBranch(assembly, row! + i, branch.from, branch.to)
        element.impedance[i]!.forEach((z, j) => addEntry(assembly.entries, row! + i, row! + j, -z.re, -z.im))
      })
      return
    case 'shunt':
      element.nodes.forEach((node, i) =>
        element.nodes.forEach((other, j) => {
          const a = assembly.rowByNode.get(node)
          const b = assembly.rowByNode.get(other)
          const y = element.admittance[i]![j]!
          if (a !== undefined && b !== undefined) addEntry(assembly.entries, a, b, y.re, y.im)
        }),
      )
      return
    case 'electrodes':
      element.nodes.forEach((node, i) => {
        stampBranch(assembly, row! + i, node, REMOTE_EARTH)
        element.resistance[i]!.forEach((r, j) => addEntry(assembly.entries, row! + i, row! + j, -r, 0))
      })
  }
}

function stampAdmittance(assembly: Stamped, from: NodeName, to: NodeName, y: Complex): void {
  const a = assembly.rowByNode.get(from)
  const b = assembly.rowByNode.get(to)
  if (a !== undefined) addEntry(assembly.entries, a, a, y.re, y.im)
  if (b !== undefined) addEntry(assembly.entries, b, b, y.re, y.im)
  if (a === undefined || b === undefined) return
  addEntry(assembly.entries, a, b, -y.re, -y.im)
  addEntry(assembly.entries, b, a, -y.re, -y.im)
}

/** The branch current leaves `from` and enters `to`; its own row begins V(from) - V(to). */
function stampBranch(assembly: Stamped, row: number, from: NodeName, to: NodeName): void {
  const a = assembly.rowByNode.get(from)
  const b = assembly.rowByNode.get(to)
  if (a !== undefined) {
    addEntry(assembly.entries, a, row, 1, 0)
    addEntry(assembly.entries, row, a, 1, 0)
  }
  if (b !== undefined) {
    addEntry(assembly.entries, b, row, -1, 0)
    addEntry(assembly.entries, row, b, -1, 0)
  }
}

function inject(assembly: Stamped, node: NodeName, re: number, im: number): void {
  const row = assembly.rowByNode.get(node)
  if (row === undefined) return
  assembly.sources.re[row] = assembly.sources.re[row]! + re
  assembly.sources.im[row] = assembly.sources.im[row]! + im
}
