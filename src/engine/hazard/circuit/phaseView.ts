/**
 * One solved state of the circuit, as bodies and drawings ask it: node voltages, electrode currents, and what an ampere
 * put in at a point does everywhere (superposition). Everything is with nobody in the circuit.
 */
import type { Complex } from '../../math/complex'
import { add, scale, ZERO } from '../../math/complex'
import { factor, isUnsolvable, type Factored, type Port, type Solution, type Unsolvable } from '../../physics/network'
import { REMOTE_EARTH } from '../../physics/network'
import { invariant } from '../../units/invariant'
import type { SiteCircuit } from './buildCircuit'
import type { Ground } from './ground'
import { electrodesId } from './nodes'

/** A point where a body meets the circuit: a node, or a place on the ground by its mutual ohm to each electrode. */
export type Terminal =
  | { readonly kind: 'node'; readonly node: string }
  | { readonly kind: 'ground'; readonly mutual: readonly number[] }

export interface PhaseView {
  /** Short name of everything that it depends on. */
  readonly key: string
  readonly circuit: SiteCircuit
  readonly ground: Ground
  has(node: string): boolean
  voltage(node: string): Complex
  readonly electrodeCurrents: readonly Complex[]
  /** The whole solution, for branch currents; solved again if it was let go. */
  solution(): Solution
  factored(): Factored
  openVoltage(terminal: Terminal): Complex
  /** Volt at one terminal per ampere into the circuit at the other, without what passes straight through the soil. */
  transfer(seen: Terminal, driven: Terminal): Complex | Unsolvable
}

/** Keeps a few factored circuits, because each holds a matrix: the others are factored again when asked for. */
export interface FactoredStore {
  get(key: string): Factored | undefined
  set(key: string, value: Factored): void
  /** Place of each node in a list of nodes; one map for all circuits with the same nodes. */
  indexOf(nodes: readonly string[]): ReadonlyMap<string, number>
}

export function viewPhase(
  circuit: SiteCircuit,
  ground: Ground,
  store: FactoredStore,
  key: string,
): PhaseView | Unsolvable {
  const first = factor(circuit)
  if (isUnsolvable(first)) return first
  const solved = first.solve()
  if (isUnsolvable(solved)) return solved
  store.set(key, first)
  const factored = (): Factored => {
    const kept = store.get(key)
    if (kept !== undefined) return kept
    const again = requireSolved(factor(circuit))
    store.set(key, again)
    return again
  }
  const index = store.indexOf(first.nodes)
  const own = reading(index, solved)
  const responses = new Map<string, Reading | Unsolvable>()
  const respond = (id: string, port: Port): Reading | Unsolvable => {
    const known = responses.get(id)
    if (known !== undefined) return known
    const answer = factored().respond(port)
    const made = isUnsolvable(answer) ? answer : reading(index, answer)
    responses.set(id, made)
    return made
  }
  const count = ground.electrodes.length
  const transfer = (seen: Terminal, driven: Terminal): Complex | Unsolvable => {
    if (driven.kind === 'node') {
      const answer = respond(`node ${driven.node}`, { kind: 'node', node: driven.node })
      return isUnsolvable(answer) ? answer : readAt(answer, seen)
    }
    let sum = ZERO
    for (let k = 0; k < count; k++) {
      const answer = respond(`electrode ${k}`, electrodePort(k, count))
      if (isUnsolvable(answer)) return answer
      sum = add(sum, scale(readAt(answer, seen), driven.mutual[k]!))
    }
    return sum
  }
  return {
    key,
    circuit,
    ground,
    has: (node) => node === REMOTE_EARTH || index.has(node),
    voltage: (node) => readAt(own, { kind: 'node', node }),
    electrodeCurrents: electrodeCurrentsOf(own),
    solution: () => requireSolved(factored().solve()),
    factored,
    openVoltage: (terminal) => readAt(own, terminal),
    transfer,
  }
}

/** Volt of each node, then ampere of each electrode, re and im in turn: small, because many are kept. */
interface Reading {
  readonly index: NodeIndex
  readonly values: Float64Array
}

type NodeIndex = ReadonlyMap<string, number>

function reading(index: NodeIndex, solution: Solution): Reading {
  const currents = solution.electrodeCurrents(electrodesId)
  const values = new Float64Array(2 * (index.size + currents.length))
  for (const [node, i] of index) write(values, i, solution.voltage(node))
  currents.forEach((current, k) => write(values, index.size + k, current))
  return { index, values }
}

function write(values: Float64Array, at: number, value: Complex): void {
  values[2 * at] = value.re
  values[2 * at + 1] = value.im
}

function at(values: Float64Array, place: number): Complex {
  return { re: values[2 * place]!, im: values[2 * place + 1]! }
}

function electrodeCurrentsOf({ index, values }: Reading): readonly Complex[] {
  return Array.from({ length: values.length / 2 - index.size }, (_, k) => at(values, index.size + k))
}

function readAt({ index, values }: Reading, terminal: Terminal): Complex {
  if (terminal.kind === 'node') {
    if (terminal.node === REMOTE_EARTH) return ZERO
    const place = index.get(terminal.node)
    invariant(place !== undefined, 'a node of the circuit', terminal.node)
    return at(values, place)
  }
  let re = 0
  let im = 0
  terminal.mutual.forEach((ohm, k) => {
    const place = 2 * (index.size + k)
    re += ohm * values[place]!
    im += ohm * values[place + 1]!
  })
  return { re, im }
}

/** A place on the ground that only electrode `k` reaches, with one ohm. */
function electrodePort(k: number, count: number): Port {
  const mutual = Array.from({ length: count }, (_, i) => (i === k ? 1 : 0))
  return { kind: 'ground', electrodes: electrodesId, mutual, self: 0 }
}

/** The same circuit was solved before, so it is again. */
function requireSolved<T>(answer: T | Unsolvable): T {
  invariant(!isUnsolvable(answer), 'a circuit that was solved before')
  return answer
}
