// Circuits without an answer, hidden in random ones: each is refused with a node of the place where it goes wrong, and no
// number, however wild, comes back as NaN.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { complex } from '../../../../src/engine/math/complex'
import type { Element, Unsolvable } from '../../../../src/engine/physics/network'
import { factor, isUnsolvable } from '../../../../src/engine/physics/network'
import { flowsOf } from './flows'
import { fewer, randomCircuits, type RandomCircuit } from './randomCircuits'
import { requireSolved, resistor } from './requireSolved'

const runs = { numRuns: fewer(300) }

/** The refusal of a circuit with a trap put into it; fails when the circuit alone was refused already. */
function refusalOf({ elements }: RandomCircuit, trap: readonly Element[]): Unsolvable {
  requireSolved(elements)
  const factored = factor({ elements: [...elements, ...trap] })
  const answer = isUnsolvable(factored) ? factored : factored.solve()
  if (!isUnsolvable(answer)) throw new Error('an answer')
  return answer
}

const injected = (to: string): Element => ({ id: 'trap/i', kind: 'current', from: '0', to, current: complex(1) })

function expectEach(
  name: string,
  trap: (circuit: RandomCircuit) => readonly Element[],
  reason: Unsolvable['reason'],
  nodes: (circuit: RandomCircuit) => readonly string[],
): void {
  fc.assert(
    fc.property(randomCircuits(name, 20), (circuit) => {
      const refusal = refusalOf(circuit, trap(circuit))
      expect(refusal.reason).toBe(reason)
      expect(nodes(circuit)).toContain(refusal.node)
    }),
    runs,
  )
}

const island = () => ['p', 'q']

describe('a trap in any circuit', () => {
  it('floating: an island behind a current source and a coil that shares its flux', () => {
    expectEach(
      'floating',
      ({ nodes }) => [
        resistor('trap/r', 'p', 'q', 5),
        { ...injected('p'), from: nodes[0]! } as Element,
        {
          id: 'trap/coils',
          kind: 'coupled',
          branches: [
            { id: 'trap/1', from: nodes[1]!, to: '0' },
            { id: 'trap/2', from: 'p', to: 'q' },
          ],
          impedance: [
            [complex(0.1, 2), complex(0, 1)],
            [complex(0, 1), complex(0.1, 3)],
          ],
        },
      ],
      'floating',
      island,
    )
  })

  it('nearly floating: two points that only 1e-25 S ties to the rest', () => {
    expectEach(
      'nearly floating',
      ({ nodes }) => [
        resistor('trap/r', 'p', 'q', 5),
        injected('q'),
        { id: 'trap/air', kind: 'admittance', from: 'p', to: nodes[0]!, admittance: complex(1e-25) },
      ],
      'ill-conditioned',
      island,
    )
  })

  it('two ideal sources in parallel, alike or not', () => {
    for (const volt of [100, 110]) {
      expectEach(
        `parallel ${volt}`,
        ({ nodes }) => [
          { id: 'trap/1', kind: 'voltage', from: nodes[0]!, to: nodes[1]!, voltage: complex(100) },
          { id: 'trap/2', kind: 'voltage', from: nodes[0]!, to: nodes[1]!, voltage: complex(volt) },
        ],
        'ill-conditioned',
        ({ nodes }) => [nodes[0]!, nodes[1]!],
      )
    }
  })

  it('resonance without loss: a coil beside a capacitance of the same size, and one in front of it across a source', () => {
    expectEach(
      'parallel resonance',
      () => [
        injected('p'),
        { id: 'trap/l', kind: 'impedance', from: 'p', to: '0', impedance: complex(0, 4) },
        { id: 'trap/c', kind: 'admittance', from: 'p', to: '0', admittance: complex(0, 0.25) },
      ],
      'ill-conditioned',
      island,
    )
    expectEach(
      'series resonance',
      () => [
        { id: 'trap/e', kind: 'voltage', from: 'p', to: '0', voltage: complex(100) },
        { id: 'trap/l', kind: 'impedance', from: 'p', to: 'q', impedance: complex(0, 0.5) },
        { id: 'trap/c', kind: 'admittance', from: 'q', to: '0', admittance: complex(0, 2) },
      ],
      'ill-conditioned',
      island,
    )
  })

  it('three ideal sources in a ring', () => {
    expectEach(
      'ring',
      ({ nodes }) =>
        [0, 1, 2].map((k): Element => {
          const ring = [nodes[0]!, 'p', 'q']
          return { id: `trap/${k}`, kind: 'voltage', from: ring[k]!, to: ring[(k + 1) % 3]!, voltage: complex(k) }
        }),
      'ill-conditioned',
      ({ nodes }) => [nodes[0]!, 'p', 'q'],
    )
  })
})

describe('any number', () => {
  // from the smallest to the largest that there is, and none at all
  const wild = fc.oneof(
    fc.double(),
    fc.integer({ min: -320, max: 308 }).map((decade) => Number(`1e${decade}`)),
    fc.constantFrom(0, -0, 5e-324, Number.MAX_VALUE, Infinity, Number.NaN),
  )

  it('gives voltages and currents that are numbers, or a reason', () => {
    const numRuns = fewer(1000)
    let refused = 0
    let answered = 0
    const cases = fc.record({ circuit: randomCircuits('wild', 6), re: wild, im: wild, at: fc.nat() })
    fc.assert(
      fc.property(cases, ({ circuit, re, im, at }) => {
        const place = at % circuit.elements.length
        const elements = circuit.elements.map((it, i) => (i === place ? withValue(it, re, im) : it))
        const factored = factor({ elements })
        const answer = isUnsolvable(factored) ? factored : factored.solve()
        if (isUnsolvable(answer)) {
          refused++
          return
        }
        answered++
        for (const element of elements) {
          for (const { current } of flowsOf(element, answer)) {
            expect(Number.isFinite(current.re) && Number.isFinite(current.im)).toBe(true)
          }
        }
        expect(answer.residual).toBeLessThanOrEqual(1e-10)
      }),
      { numRuns },
    )
    expect([refused > numRuns / 10, answered > numRuns / 10]).toEqual([true, true])
  })
})

/** One value of an element put to another; a plain impedance of nothing is our own mistake, and is not made here. */
function withValue(element: Element, re: number, im: number): Element {
  const value = complex(re, im)
  switch (element.kind) {
    case 'impedance':
      return re === 0 && im === 0 ? element : { ...element, impedance: value }
    case 'admittance':
      return { ...element, admittance: value }
    case 'voltage':
      return { ...element, voltage: value }
    case 'current':
      return { ...element, current: value }
    case 'coupled':
      return { ...element, impedance: element.impedance.map((row, i) => row.map((z, j) => (i === j ? value : z))) }
    case 'shunt':
      return { ...element, admittance: element.admittance.map((row, i) => row.map((y, j) => (i === j ? value : y))) }
    case 'electrodes':
      return { ...element, resistance: element.resistance.map((row, i) => row.map((r, j) => (i === j ? re : r))) }
  }
}

describe('too much', () => {
  it('a chain of two thousand poles is refused at once, by its first node', () => {
    const chain = Array.from({ length: 2000 }, (_, i) =>
      resistor(`span${i}`, `pole${i}`, i === 0 ? '0' : `pole${i - 1}`, 5),
    )
    const drive: Element = { id: 'i', kind: 'current', from: '0', to: 'pole9', current: complex(1) }
    const start = performance.now()
    expect(factor({ elements: [...chain, drive] })).toEqual({ kind: 'unsolvable', node: 'pole0', reason: 'too-large' })
    // it took no elimination: that of a full square of this size takes many seconds
    expect(performance.now() - start).toBeLessThan(2000)
  })

  it('a chain of a thousand poles is solved: ohms in a row, 1 A through 5 Ω each', () => {
    const poles = Array.from({ length: 1000 }, (_, i) => `pole${i}`)
    const chain = poles.map((pole, i) => resistor(`span${i}`, pole, i === 0 ? '0' : poles[i - 1]!, 5))
    const drive: Element = { id: 'i', kind: 'current', from: '0', to: poles[999]!, current: complex(1) }
    const solution = requireSolved([...chain, drive])
    expect(solution.voltage(poles[999]!).re).toBeCloseTo(5000, 6)
  })
})
