/**
 * Random circuits of every kind of element, from clamps of 0.1 mΩ to leakages of 10 MΩ. Each is grown from one number,
 * so that thousands of them cost little and any one of them can be had again. All are passive but for their sources,
 * and every node hangs on something.
 */
import fc from 'fast-check'
import { complex, polar, scale, type Complex } from '../../../../src/engine/math/complex'
import { stream } from '../../../../src/engine/math/random'
import type { Element } from '../../../../src/engine/physics/network'

export interface RandomCircuit {
  readonly elements: readonly Element[]
  /** '1' and so on; the inner nodes of sources are not among them. */
  readonly nodes: readonly string[]
}

/** How many of them: all, or the few that a run has time for that asks once for each change it makes. */
export const fewer = (numRuns: number): number => Math.min(numRuns, Number(process.env.FUZZ_RUNS ?? numRuns))

/** @param name keeps the circuits of one property apart from those of the next */
export function randomCircuits(name: string, mostNodes = 40): fc.Arbitrary<RandomCircuit> {
  return fc
    .record({ seed: fc.integer({ min: 0, max: 2 ** 31 - 1 }), count: fc.integer({ min: 2, max: mostNodes }) })
    .map(({ seed, count }) => growCircuit(diceOf(`${name} ${seed}`), count))
}

interface Dice {
  between(from: number, to: number): number
  /** A size anywhere between two powers of ten. */
  decades(from: number, to: number): number
  below(count: number): number
}

function diceOf(name: string): Dice {
  const { next, below } = stream(name, 'circuit')
  const between = (from: number, to: number): number => from + next() * (to - from)
  return { between, below, decades: (from, to) => 10 ** between(from, to) }
}

const kinds = ['impedance', 'admittance', 'coupled', 'shunt', 'electrodes', 'voltage', 'current'] as const

function growCircuit(dice: Dice, count: number): RandomCircuit {
  const nodes = Array.from({ length: count }, (_, i) => String(i + 1))
  // each node on an earlier one or on the earth
  const tree = nodes.map((node, i) => impedanceBetween(dice, `tree${i}`, node, String(dice.below(i + 1))))
  const more = Array.from({ length: 3 + dice.below(count) }, (_, i) => {
    return grow(dice, kinds[dice.below(kinds.length)]!, `more${i}`, nodes)
  })
  const each = [grow(dice, 'voltage', 'emf', nodes), grow(dice, 'current', 'injected', nodes)]
  const soil = grow(dice, 'electrodes', 'soil', nodes)
  return { nodes, elements: [...tree, ...more.flat(), ...each.flat(), ...soil] }
}

function grow(dice: Dice, kind: Element['kind'], id: string, nodes: readonly string[]): readonly Element[] {
  const any = (): string => nodes[dice.below(nodes.length)]!
  const anyOrEarth = (): string => (dice.below(4) === 0 ? '0' : any())
  const some = (most: number): string[] => Array.from({ length: 1 + dice.below(most) }, any)
  switch (kind) {
    case 'impedance':
      return [impedanceBetween(dice, id, any(), anyOrEarth())]
    case 'admittance':
      return [{ id, kind, from: any(), to: anyOrEarth(), admittance: complex(0, dice.decades(-10, -4)) }]
    case 'current':
      return [{ id, kind, from: anyOrEarth(), to: any(), current: phasor(dice, -1, 3) }]
    case 'voltage':
      // behind an impedance: ideal sources in a ring have no answer
      return [
        { id, kind, from: id, to: anyOrEarth(), voltage: phasor(dice, 0, 4) },
        impedanceBetween(dice, `${id}/behind`, id, any()),
      ]
    case 'coupled':
      return [coupled(dice, id, some(4), anyOrEarth)]
    case 'shunt':
      return [shunt(dice, id, some(4))]
    case 'electrodes':
      return [electrodes(dice, id, some(5))]
  }
}

function phasor(dice: Dice, from: number, to: number): Complex {
  return polar(dice.decades(from, to), dice.between(-Math.PI, Math.PI))
}

function impedanceBetween(dice: Dice, id: string, from: string, to: string): Element {
  const size = dice.decades(-4, 7)
  const turn = dice.between(-1, 1)
  return { id, kind: 'impedance', from, to, impedance: complex(size * (1.05 - Math.abs(turn)), size * turn) }
}

/** Coils with resistance that share part of their flux. */
function coupled(dice: Dice, id: string, from: readonly string[], other: () => string): Element {
  const self = from.map(() => dice.decades(-3, 2))
  const share = dice.between(0.1, 0.9)
  const impedance = self.map((a, i) =>
    self.map((b, j) => (i === j ? complex(0.1 * a, a) : complex(0, share * Math.sqrt(a * b)))),
  )
  return {
    id,
    kind: 'coupled',
    impedance,
    branches: from.map((node, i) => ({ id: `${id}.${i}`, from: node, to: other() })),
  }
}

/** Conductors with capacitance to earth and to each other. */
function shunt(dice: Dice, id: string, nodes: readonly string[]): Element {
  const toEarth = nodes.map(() => dice.decades(-10, -5))
  const between = nodes.map((_, i) => nodes.map((__, j) => (i < j ? dice.decades(-10, -5) : 0)))
  const mutual = (i: number, j: number): number => between[Math.min(i, j)]![Math.max(i, j)]!
  const admittance = nodes.map((_, i) =>
    nodes.map((__, j) => {
      if (i !== j) return complex(0, -mutual(i, j))
      return complex(
        0,
        nodes.reduce((sum, ___, k) => (k === i ? sum : sum + mutual(i, k)), toEarth[i]!),
      )
    }),
  )
  return { id, kind: 'shunt', nodes, admittance }
}

/** Rods that raise each other by part of what the smaller one has. */
function electrodes(dice: Dice, id: string, nodes: readonly string[]): Element {
  const own = nodes.map(() => dice.decades(0, 3))
  const share = dice.between(0, 0.6)
  const resistance = own.map((a, i) => own.map((b, j) => (i === j ? a : share * Math.min(a, b))))
  return { id, kind: 'electrodes', nodes, resistance }
}

/** Every source times a factor. */
export function driven(elements: readonly Element[], factor: number): readonly Element[] {
  return elements.map((element): Element => {
    if (element.kind === 'voltage') return { ...element, voltage: scale(element.voltage, factor) }
    if (element.kind === 'current') return { ...element, current: scale(element.current, factor) }
    return element
  })
}

/** With the sources of one kind at rest: a voltage becomes a joint, a current nothing. */
export function drivenOnlyBy(kind: 'voltage' | 'current', elements: readonly Element[]): readonly Element[] {
  return elements.map((element) => {
    return element.kind === kind || (element.kind !== 'voltage' && element.kind !== 'current')
      ? element
      : driven([element], 0)[0]!
  })
}

/** The same circuit under other names. */
export function renamed(
  elements: readonly Element[],
  nameOf: (node: string) => string,
  idOf: (id: string) => string,
): readonly Element[] {
  return elements.map((element): Element => {
    const id = idOf(element.id)
    if (element.kind === 'coupled') {
      const branches = element.branches.map((it) => ({ id: idOf(it.id), from: nameOf(it.from), to: nameOf(it.to) }))
      return { ...element, id, branches }
    }
    if (element.kind === 'electrodes' || element.kind === 'shunt') {
      return { ...element, id, nodes: element.nodes.map(nameOf) }
    }
    return { ...element, id, from: nameOf(element.from), to: nameOf(element.to) }
  })
}
