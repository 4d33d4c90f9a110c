import { describe, expect, it } from 'vitest'
import type { Complex } from '../../../../src/engine/math/complex'
import { complex, magnitude, polar, subtract } from '../../../../src/engine/math/complex'
import type { Element } from '../../../../src/engine/physics/network'
import { factor } from '../../../../src/engine/physics/network'
import { requireFactored, requireSolved, resistor, source } from './requireSolved'

const OMEGA = 2 * Math.PI * 50

function expectPhasor(got: Complex, wanted: Complex, relative = 1e-9): void {
  expect(magnitude(subtract(got, wanted))).toBeLessThanOrEqual(relative * magnitude(wanted))
}

describe('hand-solved circuits', () => {
  it('rod divider: 6350 V behind 1 Ω, lead 1 mΩ, rod 10 Ω (Ohm’s law)', () => {
    const solution = requireSolved([
      source('source', 's', 6350),
      resistor('supply', 's', 'line', 1),
      resistor('lead', 'line', 'rod', 0.001),
      resistor('rod', 'rod', '0', 10),
    ])
    const current = 6350 / 11.001
    expectPhasor(solution.voltage('rod'), complex(10 * current))
    expectPhasor(solution.current('lead'), complex(current))
    expectPhasor(solution.current('source'), complex(-current))
    expect(solution.residual).toBeLessThan(1e-14)
  })

  it('worker of 1000 Ω beside a jumper of 1 mΩ at 10 kA: 10 V over 1000.001 Ω (handbook divider, 10 mA)', () => {
    const solution = requireSolved([
      { id: 'fault', kind: 'current', from: '0', to: 'line', current: complex(10000) },
      resistor('jumper', 'line', '0', 0.001),
      resistor('worker', 'line', '0', 1000),
    ])
    expectPhasor(solution.current('worker'), complex(10 / 1000.001))
  })

  it('series R-L-C: 230 V over 10 + j(31.4159 - 63.6620) Ω', () => {
    const inductance = 0.1
    const capacitance = 50e-6
    const solution = requireSolved([
      source('source', 'a', 230),
      resistor('r', 'a', 'b', 10),
      { id: 'l', kind: 'impedance', from: 'b', to: 'c', impedance: complex(0, OMEGA * inductance) },
      { id: 'c', kind: 'admittance', from: 'c', to: '0', admittance: complex(0, OMEGA * capacitance) },
    ])
    const reactance = 31.41592653589793 - 63.66197723675813
    const size = 100 + reactance * reactance
    expectPhasor(solution.current('r'), complex((230 * 10) / size, (-230 * reactance) / size))
  })

  it('two coupled coils: 10 V on j2 Ω, mutual j1 Ω, other side j3 Ω shorted: Z = j2 - (j1)²/j3 = j5/3', () => {
    const solution = requireSolved([
      source('source', 'a', 10),
      {
        id: 'coils',
        kind: 'coupled',
        branches: [
          { id: 'first', from: 'a', to: '0' },
          { id: 'second', from: 'b', to: '0' },
        ],
        impedance: [
          [complex(0, 2), complex(0, 1)],
          [complex(0, 1), complex(0, 3)],
        ],
      },
      resistor('short', 'b', '0', 1e-6),
    ])
    expectPhasor(solution.current('first'), complex(0, -6), 1e-6)
    // 0 = j1·I1 + j3·I2
    expectPhasor(solution.current('second'), complex(0, 2), 1e-6)
  })

  it('floating wire beside a live one takes V·Cm/(Cm + Cg): 6350 V, 2 pF and 6 pF, one quarter', () => {
    const solution = requireSolved([
      source('live', 'a', 6350),
      {
        id: 'air',
        kind: 'shunt',
        nodes: ['a', 'w'],
        admittance: [
          [complex(0, OMEGA * 8e-12), complex(0, -OMEGA * 2e-12)],
          [complex(0, -OMEGA * 2e-12), complex(0, OMEGA * 8e-12)],
        ],
      },
    ])
    expectPhasor(solution.voltage('w'), complex(6350 / 4))
    // into the earth: 6 pF at 6350 V and 6 pF at a quarter of it
    expectPhasor(solution.current('air'), complex(0, OMEGA * 6e-12 * 6350 * 1.25))
  })

  it('two rods 10 Ω and 20 Ω with mutual 2 Ω: the loose one rises by 2 V per ampere of the first', () => {
    const solution = requireSolved([
      { id: 'fault', kind: 'current', from: '0', to: 'a', current: complex(5) },
      {
        id: 'soil',
        kind: 'electrodes',
        nodes: ['a', 'b'],
        resistance: [
          [10, 2],
          [2, 20],
        ],
      },
    ])
    expectPhasor(solution.voltage('a'), complex(50))
    expectPhasor(solution.voltage('b'), complex(10))
    expectPhasor(solution.electrodeCurrents('soil')[0]!, complex(5))
    expect(magnitude(solution.electrodeCurrents('soil')[1]!)).toBeLessThan(1e-12)
  })

  it('the same rods bonded: R = (R1 R2 - M²)/(R1 + R2 - 2M) = 196/26 Ω', () => {
    const solution = requireSolved([
      { id: 'fault', kind: 'current', from: '0', to: 'a', current: complex(26) },
      {
        id: 'soil',
        kind: 'electrodes',
        nodes: ['a', 'a'],
        resistance: [
          [10, 2],
          [2, 20],
        ],
      },
    ])
    expectPhasor(solution.voltage('a'), complex(196))
    expectPhasor(solution.electrodeCurrents('soil')[0]!, complex(18))
    expectPhasor(solution.electrodeCurrents('soil')[1]!, complex(8))
    expectPhasor(solution.current('soil'), complex(26))
  })

  it('unbalanced star without neutral: star point by Millman’s theorem', () => {
    const third = (2 * Math.PI) / 3
    const phase = (id: string, at: number, ohm: number): Element[] => [
      { id: `e${id}`, kind: 'voltage', from: id, to: '0', voltage: polar(100, at) },
      resistor(`r${id}`, id, 'star', ohm),
    ]
    const solution = requireSolved([...phase('a', 0, 10), ...phase('b', -third, 20), ...phase('c', third, 20)])
    // (10 - 5·½ - 5·½) / 0.2 with the quadrature parts cancelling
    expectPhasor(solution.voltage('star'), complex(25))
  })
})

describe('circuits with everything from clamps to leakages', () => {
  it('1 Ω in front of 100 GΩ at 1 MV carries 10 µA to twelve digits, not the rounding of 1 MV', () => {
    const elements = [source('e', 'a', 1e6), resistor('one', 'a', 'b', 1), resistor('leak', 'b', '0', 1e11)]
    const found = requireSolved(elements).current('one')
    expect(found.re / (1e6 / (1e11 + 1))).toBeCloseTo(1, 12)
  })

  it('0.5 mΩ clamps, 200 MΩ leakage and 1 nS of capacitance in one circuit keep their digits', () => {
    // the far side hangs on 5 nS only; through two clamps and 1 MΩ flows V/(1 MΩ + 200 MΩ + 1 mΩ)
    const elements: Element[] = [
      source('live', 'a', 6350),
      resistor('grip', 'a', 'b', 1e6),
      resistor('clamp1', 'b', 'c', 0.0005),
      resistor('clamp2', 'c', 'd', 0.0005),
      resistor('leak', 'd', '0', 200e6),
    ]
    const plain = requireSolved(elements)
    expectPhasor(plain.current('clamp2'), complex(6350 / (201e6 + 0.001)), 1e-12)
    expectPhasor(plain.current('leak'), complex(6350 / (201e6 + 0.001)), 1e-12)
    const withAir = requireSolved([
      ...elements,
      { id: 'air', kind: 'admittance', from: 'd', to: '0', admittance: complex(0, 1e-9) },
    ])
    // 1/(1e6 + 1/(5e-9 + j1e-9)) by hand: denominator 1e6·(5e-9 + j1e-9) + 1 = 1.005 + j0.001
    const size = 1.005 * 1.005 + 1e-6
    const wanted = complex((6350 * (5e-9 * 1.005 + 1e-12)) / size, (6350 * (1e-9 * 1.005 - 5e-12)) / size)
    expectPhasor(withAir.current('clamp1'), wanted, 1e-9)
    expect(requireFactored(elements).reciprocalCondition).toBeGreaterThan(1e-12)
  })

  it('ten thousand amperes past a floating thing that only 1 pS holds', () => {
    const solution = requireSolved([
      { id: 'fault', kind: 'current', from: '0', to: 'a', current: complex(10000) },
      resistor('lead', 'a', '0', 0.002),
      resistor('glove', 'a', 'b', 200e6),
      { id: 'air', kind: 'admittance', from: 'b', to: '0', admittance: complex(1e-12) },
    ])
    // 20 V over 2e8 + 1e12 Ω
    expectPhasor(solution.current('glove'), complex(20 / 1.0002e12), 1e-6)
  })
})

describe('a circuit without an answer says which node and why', () => {
  it('an island behind a current source and magnetic coupling floats', () => {
    const coupled: Element = {
      id: 'coils',
      kind: 'coupled',
      branches: [
        { id: 'first', from: 'a', to: '0' },
        { id: 'second', from: 'm', to: 'n' },
      ],
      impedance: [
        [complex(0, 2), complex(0, 1)],
        [complex(0, 1), complex(0, 3)],
      ],
    }
    const load = resistor('load', 'm', 'n', 5)
    expect(factor({ elements: [source('s', 'a', 10), coupled, load] })).toEqual({
      kind: 'unsolvable',
      node: 'm',
      reason: 'floating',
    })
    expect(
      factor({
        elements: [resistor('r', 'a', '0', 1), { id: 'i', kind: 'current', from: 'a', to: 'q', current: complex(1) }],
      }),
    ).toEqual({ kind: 'unsolvable', node: 'q', reason: 'floating' })
  })

  it('an admittance of zero holds nothing', () => {
    const loose: Element = { id: 'c', kind: 'admittance', from: 'b', to: '0', admittance: complex(0) }
    expect(factor({ elements: [resistor('r', 'a', '0', 1), loose] })).toMatchObject({ node: 'b', reason: 'floating' })
  })

  it('two stiff sources against each other, and a lossless resonance', () => {
    expect(factor({ elements: [source('one', 'a', 1), source('two', 'a', 2)] })).toMatchObject({
      kind: 'unsolvable',
      reason: 'ill-conditioned',
      node: 'a',
    })
    const elements: Element[] = [
      { id: 'i', kind: 'current', from: '0', to: 'a', current: complex(1) },
      { id: 'l', kind: 'impedance', from: 'a', to: '0', impedance: complex(0, 4) },
      { id: 'c', kind: 'admittance', from: 'a', to: '0', admittance: complex(0, 0.25) },
    ]
    expect(factor({ elements })).toMatchObject({ kind: 'unsolvable', reason: 'ill-conditioned', node: 'a' })
  })

  it('a delta of capacitances that nothing ties to earth in earnest', () => {
    const y = complex(0, 1e-6)
    const minus = complex(0, -1e-6)
    const delta: Element = {
      id: 'air',
      kind: 'shunt',
      nodes: ['a', 'b'],
      admittance: [
        [y, minus],
        [minus, y],
      ],
    }
    expect(factor({ elements: [delta] })).toMatchObject({ kind: 'unsolvable', reason: 'ill-conditioned' })
  })

  it('a value that is no number', () => {
    expect(factor({ elements: [resistor('r', 'a', '0', Number.NaN)] })).toEqual({
      kind: 'unsolvable',
      node: 'a',
      reason: 'not-finite',
    })
  })

  it('a current beyond the range of numbers', () => {
    const factored = requireFactored([source('s', 'a', 1e149), resistor('r', 'a', '0', 1e-3)])
    expect(factored.solve()).toMatchObject({ kind: 'unsolvable', reason: 'not-finite' })
  })

  it('a port on a thing that touches nothing', () => {
    const factored = requireFactored([resistor('r', 'a', '0', 1)])
    const solution = factored.solve()
    if (!('voltage' in solution)) throw new Error('no solution')
    expect(factored.ports(solution, [{ kind: 'node', node: 'loose' }], () => 0)).toEqual({
      kind: 'unsolvable',
      node: 'loose',
      reason: 'floating',
    })
  })

  it('our own mistakes throw: zero impedance, the same id twice, an unknown node or id', () => {
    expect(() => factor({ elements: [resistor('r', 'a', '0', 0)] })).toThrow('other than zero')
    expect(() => factor({ elements: [resistor('r', 'a', '0', 1), resistor('r', 'b', '0', 1)] })).toThrow('id once')
    const solution = requireSolved([resistor('r', 'a', '0', 1)])
    expect(() => solution.voltage('b')).toThrow('node of the circuit')
    expect(() => solution.current('x')).toThrow('element or branch')
  })

  it('a circuit of nothing is solved: remote earth alone', () => {
    expect(requireSolved([]).voltage('0')).toEqual({ re: 0, im: 0 })
  })
})
