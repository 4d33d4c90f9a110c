// What a circuit may be made of, each at its edge, and that neither order nor name reaches the answer.
// By definition: an inverse of nothing, a matrix that is not square, a sum that depends on its order (IEEE 754 addition).

import { describe, expect, it } from 'vitest'
import { complex, type Complex } from '../../../../src/engine/math/complex'
import type { Element, Unsolvable } from '../../../../src/engine/physics/network'
import { factor, isUnsolvable, unsolvable } from '../../../../src/engine/physics/network'
import { requireFactored, requireSolved, resistor, source } from './requireSolved'

const nothing = complex(0)
const one = complex(1)

const impedance = (value: Complex): Element => ({ id: 'z', kind: 'impedance', from: 'a', to: '0', impedance: value })
const coils = (rows: readonly (readonly Complex[])[]): Element => ({
  id: 'coils',
  kind: 'coupled',
  branches: [
    { id: 'coil1', from: 'a', to: '0' },
    { id: 'coil2', from: 'b', to: '0' },
  ],
  impedance: rows,
})
const air = (rows: readonly (readonly Complex[])[]): Element => ({
  id: 'air',
  kind: 'shunt',
  nodes: ['a', 'b'],
  admittance: rows,
})
const rods = (rows: readonly (readonly number[])[]): Element => ({
  id: 'rods',
  kind: 'electrodes',
  nodes: ['a', 'b'],
  resistance: rows,
})

describe('our own mistakes throw', () => {
  it('a matrix has a row and a column for each branch or node', () => {
    const short = [[one, one], [one]]
    const squares: readonly ((rows: typeof short) => Element)[] = [
      coils,
      air,
      (rows) => rods(rows.map((row) => row.map(() => 5))),
    ]
    for (const element of squares) {
      for (const rows of [
        short,
        [[one, one]],
        [
          [one, one],
          [one, one],
          [one, one],
        ],
        [[one], [one]],
      ]) {
        expect(() => factor({ elements: [element(rows)] })).toThrow('a 2 by 2 matrix in')
      }
    }
  })

  it('a branch of coils has an id of its own, the coils another', () => {
    const held = coils([
      [complex(1, 2), nothing],
      [nothing, complex(1, 3)],
    ])
    for (const id of ['coils', 'coil1', 'coil2']) {
      expect(() => factor({ elements: [held, resistor(id, 'a', '0', 1)] })).toThrow('id once')
    }
    expect(() => factor({ elements: [held, resistor('other', 'a', '0', 1)] })).not.toThrow()
  })

  it('an impedance of nothing is none, whichever part is left is one', () => {
    expect(() => factor({ elements: [impedance(nothing)] })).toThrow('other than zero')
    for (const some of [complex(0, 1), complex(1)]) expect(() => factor({ elements: [impedance(some)] })).not.toThrow()
  })

  it('a current is asked of a branch, not of coils; of rods that are there', () => {
    const held = coils([
      [complex(1, 2), nothing],
      [nothing, complex(1, 3)],
    ])
    const solution = requireSolved([held, resistor('r', 'a', '0', 1)])
    expect(() => solution.current('coils')).toThrow('one of its branches')
    expect(() => solution.electrodeCurrents('rods')).toThrow('an electrodes element')
    expect(() => solution.electrodeCurrents('r')).toThrow('an electrodes element')
  })
})

describe('values that can be reckoned with', () => {
  const wild = [1.1e150, -1.1e150, Number.NaN, Number.POSITIVE_INFINITY]
  const held = resistor('held', 'b', '0', 1)
  const refusalOf = (element: Element): unknown => factor({ elements: [resistor('r', 'a', '0', 1), held, element] })
  const refused: Unsolvable = { kind: 'unsolvable', node: 'a', reason: 'not-finite' }

  it('one part of one value out of range is refused by the node that it is at', () => {
    for (const part of wild) {
      for (const value of [complex(part, 1), complex(1, part)]) {
        expect(refusalOf(impedance(value))).toEqual(refused)
        expect(refusalOf({ id: 'y', kind: 'admittance', from: '0', to: 'a', admittance: value })).toEqual(refused)
        expect(refusalOf({ id: 'e', kind: 'voltage', from: '0', to: 'a', voltage: value })).toEqual(refused)
        expect(refusalOf({ id: 'i', kind: 'current', from: '0', to: 'a', current: value })).toEqual(refused)
      }
    }
  })

  it('one value of a matrix, wherever it stands', () => {
    for (const part of wild) {
      for (const [i, j] of [
        [0, 0],
        [0, 1],
        [1, 0],
        [1, 1],
      ] as const) {
        const rows = [0, 1].map((row) => [0, 1].map((column) => (row === i && column === j ? complex(1, part) : one)))
        expect(refusalOf(coils(rows))).toEqual(refused)
        expect(refusalOf(air(rows))).toEqual(refused)
        expect(refusalOf(rods(rows.map((row) => row.map(({ im }) => (im === 0 ? 1 : im)))))).toEqual(refused)
      }
    }
  })

  it('one at earth on both sides is named by the earth', () => {
    const idle: Element = { id: 'i', kind: 'current', from: '0', to: '0', current: complex(Number.NaN) }
    expect(factor({ elements: [idle] })).toEqual({ ...refused, node: '0' })
  })
})

describe('what holds a node', () => {
  const driven = (...elements: readonly Element[]): unknown => factor({ elements: [...elements] })
  const floating = (node: string): Unsolvable => ({ kind: 'unsolvable', node, reason: 'floating' })

  it('a leakage without capacitance, a capacitance without leakage', () => {
    for (const admittance of [complex(1e-12), complex(0, 1e-12)]) {
      expect(driven({ id: 'y', kind: 'admittance', from: 'a', to: '0', admittance })).toMatchObject({
        kind: 'factored',
      })
    }
  })

  it('each row of a shunt with anything in it holds its node, an empty one does not', () => {
    const half = air([
      [complex(0, 1e-9), nothing],
      [nothing, complex(0, 1e-9)],
    ])
    expect(driven(half)).toMatchObject({ kind: 'factored' })
    expect(
      driven(
        air([
          [complex(0, 1e-9), nothing],
          [nothing, nothing],
        ]),
      ),
    ).toEqual(floating('b'))
  })

  it('a chain of elements, in whatever order they come', () => {
    const chain = [
      resistor('3', 'a', 'b', 1),
      resistor('1', 'c', 'd', 1),
      resistor('2', 'd', '0', 1),
      source('4', 'a', 1),
    ]
    expect(driven(...chain, resistor('5', 'b', 'c', 1))).toMatchObject({ kind: 'factored' })
    const loose = [resistor('3', 'a', 'b', 1), resistor('1', 'c', 'd', 1), resistor('2', 'd', '0', 1)]
    expect(driven(...loose)).toEqual(floating('a'))
  })
})

describe('order', () => {
  it('nodes are numbered by their names, code unit by code unit', () => {
    const names = ['b', 'a', 'B', '10', '9', 'aa']
    const elements = names.map((name) => resistor(`r${name}`, name, '0', 5))
    expect(requireFactored(elements).nodes).toEqual(['10', '9', 'B', 'a', 'aa', 'b'])
  })

  it('whatever the order of insertion, sums of thirds come to the same bits', () => {
    const elements = [3, 7, 11, 13, 17].map((ohm, i) => resistor(`r${i}`, 'a', '0', ohm))
    const drive: Element = { id: 'i', kind: 'current', from: '0', to: 'a', current: complex(1 / 3, 1 / 7) }
    const more: Element = { id: 'j', kind: 'current', from: '0', to: 'a', current: complex(1 / 11, 1 / 13) }
    const last: Element = { id: 'k', kind: 'current', from: '0', to: 'a', current: complex(1e-3 / 3, 1e3 / 7) }
    const all = [...elements, drive, more, last]
    const wanted = requireSolved(all).voltage('a')
    for (const turned of all.map((_, k) => [...all.slice(k), ...all.slice(0, k)])) {
      expect(requireSolved(turned).voltage('a')).toEqual(wanted)
      expect(requireSolved(turned.reverse()).voltage('a')).toEqual(wanted)
    }
  })
})

describe('an answer that is a reason', () => {
  it('is told from whatever else an answer can be', () => {
    expect(isUnsolvable(unsolvable('a', 'floating'))).toBe(true)
    for (const other of [undefined, null, 0, 'unsolvable', {}, { kind: 'factored' }, { node: 'a' }]) {
      expect(isUnsolvable(other)).toBe(false)
    }
  })
})
