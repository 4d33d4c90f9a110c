// Each element by itself, with both parts of every value in play and the earth on either side: a sign that is wrong in one
// part only shows here. Ohm's law and the definitions in circuit.ts, worked by hand.

import { describe, expect, it } from 'vitest'
import type { Complex } from '../../../../src/engine/math/complex'
import { complex, magnitude, subtract } from '../../../../src/engine/math/complex'
import type { Element, Port } from '../../../../src/engine/physics/network'
import { factor } from '../../../../src/engine/physics/network'
import { requireAnswer, requireFactored, requireSolved, resistor } from './requireSolved'

function expectPhasor(got: Complex, wanted: Complex): void {
  expect(magnitude(subtract(got, wanted))).toBeLessThanOrEqual(1e-12 * magnitude(wanted))
}

const injected = (to: string, re: number, im = 0): Element => ({
  id: `into ${to}`,
  kind: 'current',
  from: '0',
  to,
  current: complex(re, im),
})

describe('one element', () => {
  it('a current of 2 + 3j A from a to b: -(2 + 3j) V on 1 Ω, 8 + 12j V on 4 Ω', () => {
    const solution = requireSolved([
      { id: 'i', kind: 'current', from: 'a', to: 'b', current: complex(2, 3) },
      resistor('a', 'a', '0', 1),
      resistor('b', '0', 'b', 4),
    ])
    expectPhasor(solution.voltage('a'), complex(-2, -3))
    expectPhasor(solution.voltage('b'), complex(8, 12))
    expectPhasor(solution.current('b'), complex(-2, -3))
    expectPhasor(solution.current('i'), complex(2, 3))
  })

  it('a voltage of 100 + 50j V from earth to a: a is at -(100 + 50j) V and draws them through 2 - j Ω', () => {
    const solution = requireSolved([
      { id: 'e', kind: 'voltage', from: '0', to: 'a', voltage: complex(100, 50) },
      { id: 'z', kind: 'impedance', from: 'a', to: '0', impedance: complex(2, -1) },
    ])
    expectPhasor(solution.voltage('a'), complex(-100, -50))
    // -(100 + 50j)(2 + j)/5
    expectPhasor(solution.current('z'), complex(-30, -40))
    expectPhasor(solution.current('e'), complex(-30, -40))
  })

  it('an admittance of 0.5 + 0.25j S, from earth or to it: 3 A raise it by 3/(0.5 + 0.25j) = 4.8 - 2.4j V', () => {
    for (const [from, to, sign] of [
      ['a', '0', 1],
      ['0', 'a', -1],
    ] as const) {
      const solution = requireSolved([
        { id: 'y', kind: 'admittance', from, to, admittance: complex(0.5, 0.25) },
        injected('a', 3),
      ])
      expectPhasor(solution.voltage('a'), complex(4.8, -2.4))
      expectPhasor(solution.current('y'), complex(3 * sign))
    }
  })

  it('an impedance of 3 + 4j Ω between two points as an admittance, one of 0.3 + 0.4j Ω with a current of its own', () => {
    for (const [size, id] of [
      [10, 'long'],
      [1, 'short'],
    ] as const) {
      const solution = requireSolved([
        { id, kind: 'impedance', from: 'a', to: 'b', impedance: complex(0.3 * size, 0.4 * size) },
        resistor('rest', 'b', '0', 5),
        injected('a', 2, -1),
      ])
      // (2 - j)(0.3 + 0.4j) = 1 + 0.5j
      expectPhasor(subtract(solution.voltage('a'), solution.voltage('b')), complex(size, 0.5 * size))
      expectPhasor(solution.current(id), complex(2, -1))
    }
  })

  it('coils: 10 A through 0.5 + 2j Ω leave 1 + 10j V across an open one by 0.1 + j Ω', () => {
    const solution = requireSolved([
      {
        id: 'coils',
        kind: 'coupled',
        branches: [
          { id: 'first', from: 'a', to: '0' },
          { id: 'second', from: 'c', to: 'd' },
        ],
        impedance: [
          [complex(0.5, 2), complex(0.1, 1)],
          [complex(0.1, 1), complex(0, 3)],
        ],
      },
      resistor('tie', 'd', '0', 7),
      injected('a', 10),
    ])
    expectPhasor(solution.voltage('a'), complex(5, 20))
    expectPhasor(subtract(solution.voltage('c'), solution.voltage('d')), complex(1, 10))
    expectPhasor(solution.current('first'), complex(10))
    expect(magnitude(solution.current('second'))).toBeLessThan(1e-12)
  })

  it('a shunt with the earth among its nodes: 0.5 S own, the rest beside the point', () => {
    const solution = requireSolved([
      {
        id: 'air',
        kind: 'shunt',
        nodes: ['0', 'a'],
        admittance: [
          [complex(9), complex(-9)],
          [complex(-9), complex(0.5)],
        ],
      },
      injected('a', 2),
    ])
    expectPhasor(solution.voltage('a'), complex(4))
  })
})

describe('a circuit that cannot be is named by a point of it, though its elements begin at the earth', () => {
  const atA = { kind: 'unsolvable', node: 'a', reason: 'ill-conditioned' }

  it('two sources that point the same way', () => {
    const up = (id: string, volt: number): Element => ({
      id,
      kind: 'voltage',
      from: '0',
      to: 'a',
      voltage: complex(volt),
    })
    expect(factor({ elements: [up('one', 1), up('two', 2)] })).toEqual(atA)
  })

  it('coils of no impedance across a source', () => {
    const bare: Element = {
      id: 'coil',
      kind: 'coupled',
      branches: [{ id: 'turn', from: '0', to: 'a' }],
      impedance: [[complex(0)]],
    }
    const source: Element = { id: 'source', kind: 'voltage', from: 'a', to: '0', voltage: complex(1) }
    expect(factor({ elements: [bare, source] })).toEqual(atA)
  })

  it('a current of 1e149 A through 1 kΩ is beyond the range of numbers, in either part', () => {
    for (const current of [complex(1e149), complex(0, 1e149)]) {
      const drive: Element = { id: 'i', kind: 'current', from: '0', to: 'a', current }
      const factored = requireFactored([resistor('r', 'a', '0', 1000), drive])
      expect(factored.solve()).toEqual({ kind: 'unsolvable', node: 'a', reason: 'not-finite' })
    }
  })
})

describe('currents from outside', () => {
  /** Two rods of 10 and 20 Ω that share 2 Ω, and a disc with 4 Ω to the first and 3 Ω to the second. */
  const soil: Element = {
    id: 'soil',
    kind: 'electrodes',
    nodes: ['a', 'b'],
    resistance: [
      [10, 2],
      [2, 20],
    ],
  }
  const disc: Port = { kind: 'ground', electrodes: 'soil', mutual: [4, 3], self: 300 }
  const node = (name: string): Port => ({ kind: 'node', node: name })
  const own = injected('a', 5, 1)

  it('into a point: 5 + j A of its own and 1 + 2j A more, 10 Ω and 2 Ω', () => {
    const factored = requireFactored([soil, own])
    const solution = requireAnswer(factored.solveWith([{ port: node('a'), current: complex(1, 2) }]))
    expectPhasor(solution.voltage('a'), complex(60, 30))
    expectPhasor(solution.voltage('b'), complex(12, 6))
    // the circuit’s own sources are what they were
    expectPhasor(requireAnswer(factored.solve()).voltage('a'), complex(50, 10))
  })

  it('through a disc: each rod is raised by its own mutual, its sources at rest or not', () => {
    const factored = requireFactored([soil, own])
    const alone = requireAnswer(factored.respond(disc))
    expectPhasor(alone.voltage('a'), complex(4))
    expectPhasor(alone.voltage('b'), complex(3))
    const both = requireAnswer(factored.solveWith([{ port: disc, current: complex(2, 1) }]))
    expectPhasor(both.voltage('a'), complex(58, 14))
    expectPhasor(both.voltage('b'), complex(16, 5))
  })

  it('a disc where there are no rods moves nothing, and needs rods that are there when it names some', () => {
    const factored = requireFactored([resistor('r', 'a', '0', 5), own])
    const bare: Port = { kind: 'ground', electrodes: '', mutual: [], self: 300 }
    expectPhasor(requireAnswer(factored.solveWith([{ port: bare, current: complex(7) }])).voltage('a'), complex(25, 5))
    for (const electrodes of ['soil', 'r']) {
      const stray: Port = { kind: 'ground', electrodes, mutual: [4, 3], self: 300 }
      expect(() => factored.respond(stray)).toThrow('an electrodes element')
    }
  })

  it('into something that touches nothing: it floats', () => {
    const factored = requireFactored([soil, own])
    const floating = { kind: 'unsolvable', node: 'loose', reason: 'floating' }
    expect(factored.respond(node('loose'))).toEqual(floating)
    const currents = [node('a'), node('loose')].map((port) => ({ port, current: complex(1) }))
    expect(factored.solveWith(currents)).toEqual(floating)
  })

  it('into something that only 1e-200 S holds: an ampere would raise it beyond the range of numbers', () => {
    const leak: Element = { id: 'leak', kind: 'admittance', from: 'c', to: '0', admittance: complex(1e-200) }
    const factored = requireFactored([soil, own, leak])
    const refused = { kind: 'unsolvable', node: 'c', reason: 'not-finite' }
    expect(factored.respond(node('c'))).toEqual(refused)
    expect(factored.ports(requireAnswer(factored.solve()), [node('a'), node('c')], () => 0)).toEqual(refused)
  })
})
