// The text itself: what each kind of element becomes, names that any simulator takes, words at every part.

import { expect, test } from 'vitest'
import { complex, type Element } from '../../../src/engine'
import { describePart, netlist } from '../../../src/reports/netlist'
import { instantCases, solveCase } from '../../support/netlistInstants'

/** Lines of one element at 50 Hz, comments and the tail left out. */
function linesOf(...elements: readonly Element[]): readonly string[] {
  const { text } = netlist({
    title: 'test',
    remarks: [],
    circuit: { elements },
    frequency: 50,
    wordsFor: () => 'a part',
    measured: [],
  })
  return text
    .split('\n')
    .slice(1)
    .filter((line) => /^[a-z]/.test(line))
}

const omega = 2 * Math.PI * 50

function numberAtEnd(line: string | undefined): number {
  return Number(line?.split(' ').at(-1))
}

test('an impedance is a resistor and an inductor, or a capacitor, in series: X = ωL, X = -1/ωC', () => {
  const [r, l] = linesOf({ id: 'x', kind: 'impedance', from: 'p', to: '0', impedance: complex(3, omega * 0.2) })
  expect(r).toBe('r_x p x_x 3')
  expect(l).toMatch(/^l_x x_x 0 /)
  expect(numberAtEnd(l)).toBeCloseTo(0.2, 12)
  const [c, ...more] = linesOf({
    id: 'x',
    kind: 'impedance',
    from: 'p',
    to: 'q',
    impedance: complex(0, -1 / (omega * 5e-6)),
  })
  expect(c).toMatch(/^c_x p q /)
  expect(numberAtEnd(c)).toBeCloseTo(5e-6, 15)
  expect(more).toEqual([])
})

test('an ohm or less is an H source on its own current', () => {
  const lines = linesOf({ id: 'clamp', kind: 'impedance', from: 'p', to: 'q', impedance: complex(0.0005) })
  expect(lines).toEqual(['v_clamp_own p clamp_own dc 0 ac 0', 'h_clamp clamp_own q v_clamp_own 0.0005'])
})

test('a layer is a resistor beside a capacitor: Y = 1/R + jωC', () => {
  const [r, c] = linesOf({
    id: 'sole',
    kind: 'admittance',
    from: 'p',
    to: 'q',
    admittance: complex(1e-8, omega * 1e-10),
  })
  expect(numberAtEnd(r)).toBeCloseTo(1e8, 3)
  expect(c).toMatch(/^c_sole p q /)
  expect(numberAtEnd(c)).toBeCloseTo(1e-10, 20)
})

test('a source by its rms magnitude and its angle in degrees', () => {
  const [v] = linesOf({ id: 'emf', kind: 'voltage', from: 'p', to: '0', voltage: complex(0, -230) })
  expect(v).toBe('v_emf p 0 dc 0 ac 230 -90')
})

test('the capacitances of two wires: to earth the sum of the row, between them minus the entry (Maxwell)', () => {
  const matrix = [
    [complex(0, omega * 9e-9), complex(0, omega * -2e-9)],
    [complex(0, omega * -2e-9), complex(0, omega * 8e-9)],
  ]
  const lines = linesOf({ id: 's', kind: 'shunt', nodes: ['p', 'q'], admittance: matrix })
  const found = new Map(lines.map((line) => [line.split(' ').slice(1, 3).join(' '), numberAtEnd(line)]))
  expect(found.get('p 0')).toBeCloseTo(7e-9, 18)
  expect(found.get('q 0')).toBeCloseTo(6e-9, 18)
  expect(found.get('p q')).toBeCloseTo(2e-9, 18)
})

test('every name is one that a simulator takes, each part has its own, and every node of the legend is used', () => {
  const { written } = solveCase(instantCases[0]!)
  const lines = written.text.split('\n')
  const parts = lines.slice(1).filter((line) => /^[a-z]/.test(line))
  const partNames = parts.map((line) => line.split(' ')[0]!)
  expect(new Set(partNames).size).toBe(partNames.length)
  for (const name of [...partNames, ...written.nodeNames.values()]) expect(name).toMatch(/^[a-z][a-z0-9_]*$/)
  const used = new Set(parts.flatMap((line) => line.split(' ')))
  for (const safe of written.nodeNames.values()) expect(used, safe).toContain(safe)
  expect(new Set(written.nodeNames.values()).size).toBe(written.nodeNames.size)
  expect(lines.every((line) => /^[\x20-\x7e]*$/.test(line))).toBe(true)
  expect(lines.at(-2)).toBe('.end')
})

test('two nodes that are written alike stay two', () => {
  const lines = linesOf(
    { id: 'one', kind: 'impedance', from: 'a/b', to: '0', impedance: complex(2) },
    { id: 'two', kind: 'impedance', from: 'a@b', to: 'gnd', impedance: complex(2) },
  )
  expect(lines).toEqual(['r_one a_b 0 2', 'r_two a_b_2 gnd_2 2'])
})

test('every part of every instant has words of its own, its places filled', () => {
  for (const it of instantCases) {
    for (const { id } of solveCase(it).instant.circuit.elements) {
      const words = describePart(id)
      expect(words, id).not.toBe(id)
      expect(words, id).not.toMatch(/[{}⟨⟩–]/)
    }
  }
})
