/**
 * A circuit factored once per instant, then solved for its own sources, for bodies as ports and for injected currents.
 * Refused, with a node named: an island that nothing ties to remote earth, a value out of range, a matrix that
 * double precision cannot solve (two sources in parallel, a lossless resonance), more unknowns than are worth a wait.
 */
import type { Complex } from '../../math/complex'
import { add } from '../../math/complex'
import type { Lu } from '../../math/lu'
import { factorLu } from '../../math/lu'
import type { SplitVector } from '../../math/splitMatrix'
import type { Numbering } from './assemble'
import { assemble, numberUnknowns } from './assemble'
import type { Circuit, Element } from './circuit'
import { isInRange, LARGEST_NUMBER, nodesOf, sortedElements } from './circuit'
import type { Equilibrated } from './equilibrate'
import { equilibrate } from './equilibrate'
import { findFloatingNode } from './findFloatingNode'
import type { Injection, Port, PortEquivalent } from './ports'
import { addInjection, findLoosePort, portVoltage, unitInjection } from './ports'
import type { ReadableAssembly, Solution } from './solution'
import { readSolution } from './solution'
import { solveChecked } from './solveChecked'
import type { NodeName, Unsolvable } from './unsolvable'
import { isUnsolvable, REMOTE_EARTH, unsolvable } from './unsolvable'

/** Below this reciprocal condition of the equilibrated matrix no digit of the answer is left. */
const LEAST_RECIPROCAL_CONDITION = 1e-15

/** Largest accepted componentwise backward error; sound circuits stay below 1e-14. */
const LARGEST_RESIDUAL = 1e-10

/** A full matrix of so many takes some seconds, and four times as long with each half more. */
const MOST_UNKNOWNS = 1500

export interface Factored {
  readonly kind: 'factored'
  /** Sorted, without remote earth. */
  readonly nodes: readonly NodeName[]
  /** Of the equilibrated matrix. */
  readonly reciprocalCondition: number
  solve(): Solution | Unsolvable
  /**
   * Open-circuit voltages and transfer impedances of the ports, all relative to remote earth.
   * @param groundMutual ohm between two ground ports, by their positions in `ports`
   */
  ports(
    solution: Solution,
    ports: readonly Port[],
    groundMutual: (i: number, j: number) => number,
  ): PortEquivalent | Unsolvable
  /** The circuit with extra currents, ampere into the circuit at each port. */
  solveWith(injections: readonly Injection[]): Solution | Unsolvable
  /** What one ampere into the circuit at a port does, with the circuit's own sources at rest. */
  respond(port: Port): Solution | Unsolvable
}

export function factor(circuit: Circuit): Factored | Unsolvable {
  const elements = sortedElements(circuit)
  const wild = elements.find((element) => !isInRange(element))
  if (wild !== undefined) return unsolvable(nameOf(wild), 'not-finite')
  const numbering = numberUnknowns(elements)
  const { nodes, nodeOfRow } = numbering
  const floating = findFloatingNode(nodes, elements)
  if (floating !== undefined) return unsolvable(floating, 'floating')
  if (nodeOfRow.length > MOST_UNKNOWNS) return unsolvable(nodes[0] ?? REMOTE_EARTH, 'too-large')
  const assembly = readable(elements, numbering)
  const equilibrated = equilibrate(assembly.matrix)
  const lu = factorLu(equilibrated.matrix)
  if (lu.reciprocalCondition < LEAST_RECIPROCAL_CONDITION) {
    return unsolvable(assembly.nodeOfRow[lu.weakestColumn]!, 'ill-conditioned')
  }
  return factored(assembly, equilibrated, lu)
}

function factored(assembly: ReadableAssembly, equilibrated: Equilibrated, lu: Lu): Factored {
  const solveFor = (right: SplitVector): Solution | Unsolvable => {
    const { x, residual, worstRow } = solveChecked(equilibrated, lu, right)
    if (!Number.isFinite(residual)) return unsolvable(assembly.nodeOfRow[worstRow]!, 'not-finite')
    const wild = firstBeyond(x, LARGEST_NUMBER)
    if (wild >= 0) return unsolvable(assembly.nodeOfRow[wild]!, 'not-finite')
    if (residual > LARGEST_RESIDUAL) return unsolvable(assembly.nodeOfRow[worstRow]!, 'ill-conditioned')
    return readSolution(assembly, x, residual)
  }
  return {
    kind: 'factored',
    nodes: assembly.nodes,
    reciprocalCondition: lu.reciprocalCondition,
    solve: () => solveFor(assembly.sources),
    solveWith: (injections) => {
      const loose = findLoosePort(
        assembly,
        injections.map((injection) => injection.port),
      )
      if (loose !== undefined) return unsolvable(loose, 'floating')
      const right = { re: assembly.sources.re.slice(), im: assembly.sources.im.slice() }
      for (const { port, current } of injections) addInjection(assembly, right, port, current)
      return solveFor(right)
    },
    respond: (port) => {
      const loose = findLoosePort(assembly, [port])
      return loose === undefined ? solveFor(unitInjection(assembly, port)) : unsolvable(loose, 'floating')
    },
    ports: (solution, ports, groundMutual) => {
      const loose = findLoosePort(assembly, ports)
      if (loose !== undefined) return unsolvable(loose, 'floating')
      const columns: Complex[][] = []
      for (const [j, port] of ports.entries()) {
        const answer = solveFor(unitInjection(assembly, port))
        if (isUnsolvable(answer)) return answer
        columns.push(ports.map((seen, i) => add(portVoltage(seen, answer), throughSoil(ports, i, j, groundMutual))))
      }
      return {
        open: ports.map((port) => portVoltage(port, solution)),
        transfer: ports.map((_, i) => columns.map((column) => column[i]!)),
      }
    },
  }
}

/** The first row with anything larger, or with no number; -1 when there is none. */
function firstBeyond({ re, im }: SplitVector, largest: number): number {
  for (let row = 0; row < re.length; row++) {
    if (!(Math.abs(re[row]!) <= largest && Math.abs(im[row]!) <= largest)) return row
  }
  return -1
}

/** Volt per ampere straight through the soil between two discs, beside what the electrodes pass on. */
function throughSoil(
  ports: readonly Port[],
  i: number,
  j: number,
  groundMutual: (i: number, j: number) => number,
): Complex {
  const seen = ports[i]!
  const driven = ports[j]!
  if (seen.kind !== 'ground' || driven.kind !== 'ground') return { re: 0, im: 0 }
  return { re: i === j ? driven.self : groundMutual(i, j), im: 0 }
}

function readable(elements: readonly Element[], numbering: Numbering): ReadableAssembly {
  const placeByBranch = new Map<string, { elementId: string; position: number }>()
  for (const element of elements) {
    if (element.kind !== 'coupled') continue
    element.branches.forEach((branch, position) => placeByBranch.set(branch.id, { elementId: element.id, position }))
  }
  const elementById = new Map(elements.map((element) => [element.id, element]))
  return { ...assemble(elements, numbering), elementById, placeByBranch }
}

function nameOf(element: Element): NodeName {
  return nodesOf(element).find((node) => node !== REMOTE_EARTH) ?? REMOTE_EARTH
}
