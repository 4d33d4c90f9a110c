/**
 * The transformer's windings by themselves, against hand calculation. 100 kVA, 11 kV to 230 V a phase, 1.5 + j4 %; core
 * 0.2 % loss and 1 % magnetising current (own choices of the model). Short-circuit and no-load rules: any handbook of
 * electrical machines (from memory); vector groups: IEC 60076-1, clock notation (from memory).
 */
import { describe, expect, it } from 'vitest'
import { windingsElement } from '../../../src/engine/hazard/circuit/transformerWindings'
import { angle, complex, magnitude, polar, subtract, type Complex } from '../../../src/engine/math/complex'
import { factor, type Element, type Factored, type Solution } from '../../../src/engine/physics/network'
import type { Transformer } from '../../../src/engine/site/scenario'

const base: Transformer = {
  id: 't1',
  connection: 'Dyn',
  phases: ['A', 'B', 'C'],
  highVoltage: 11_000,
  lowVoltage: 230,
  rating: 100_000,
  impedance: { re: 0.015, im: 0.04 },
  along: 0,
  neutralEarth: { resistance: 5 },
  lowVoltageClosed: true,
}
const turn = (2 * Math.PI) / 3
const phaseAngles = { A: 0, B: -turn, C: turn } as const
const all = ['A', 'B', 'C'] as const
const perUnit = Math.sqrt(0.015 ** 2 + 0.04 ** 2)

const emf = (id: string, from: string, to: string, volts: Complex): Element => ({
  id,
  kind: 'voltage',
  from,
  to,
  voltage: volts,
})
const ohm = (id: string, from: string, to: string, value: number): Element => ({
  id,
  kind: 'impedance',
  from,
  to,
  impedance: complex(value),
})
/** Balanced volts to earth on the terminals of one side. */
const fed = (side: 'high' | 'low', volts: number): Element[] =>
  all.map((phase) => emf(`emf-${phase}`, `t1/${side}-${phase}`, '0', polar(volts, phaseAngles[phase])))
/** What holds a side that nothing else does. */
const held = (side: 'high' | 'low', phases: readonly string[] = all): Element[] =>
  phases.map((phase) => ohm(`hold-${side}-${phase}`, `t1/${side}-${phase}`, '0', 1e9))

function solved(transformer: Transformer, ...elements: readonly Element[]): Solution & { readonly factored: Factored } {
  const circuit = { elements: [windingsElement(transformer, 'n'), ohm('neutral-earth', 'n', '0', 5), ...elements] }
  const factored = factor(circuit)
  if (factored.kind !== 'factored') throw new Error(`${factored.reason} at ${factored.node}`)
  const solution = factored.solve()
  if ('kind' in solution) throw new Error(solution.reason)
  return { ...solution, factored }
}

const degrees = (value: Complex): number => (angle(value) * 180) / Math.PI
/** Volts of a low phase to the neutral. */
const low = (solution: Solution, phase: string): Complex =>
  subtract(solution.voltage(`t1/low-${phase}`), solution.voltage('n'))

describe('no load, both ways: rated volts give rated volts, less what half of the leakage takes of 1 % of current', () => {
  // |1 / (1 + Zleak/2 × Y0)| with Y0 = 0.002 - j0.01: 1 - (0.0075 × 0.002 + 0.02 × 0.01) = 0.999785
  const kept = 1 - (0.0075 * 0.002 + 0.02 * 0.01)

  it.each(['Dyn', 'Yyn'] as const)('%s from the high side', (connection) => {
    const solution = solved({ ...base, connection }, ...fed('high', 11_000 / Math.sqrt(3)), ...held('low'))
    for (const phase of all) expect(magnitude(low(solution, phase)) / 230).toBeCloseTo(kept, 5)
  })

  it.each(['Dyn', 'Yyn'] as const)('%s from the low side: the high side stands at its full 11 kV', (connection) => {
    const solution = solved({ ...base, connection }, ...fed('low', 230), ...held('high'))
    const between = subtract(solution.voltage('t1/high-A'), solution.voltage('t1/high-B'))
    expect(magnitude(between) / 11_000).toBeCloseTo(kept, 5)
  })

  it('it takes 0.2 % of the rating as loss and 1 % as magnetising current', () => {
    const solution = solved(base, ...fed('high', 11_000 / Math.sqrt(3)))
    const rated = 100_000 / (Math.sqrt(3) * 11_000)
    expect(magnitude(solution.current('emf-A')) / rated).toBeCloseTo(Math.sqrt(0.002 ** 2 + 0.01 ** 2), 4)
  })

  it('single phase between two conductors, and one wire against the earth, both ways', () => {
    const single: Transformer = { ...base, connection: 'single-phase', phases: ['B', 'C'], rating: 25_000 }
    const down = solved(
      single,
      emf('e', 't1/high-B', 't1/high-C', complex(11_000)),
      ohm('hold', 't1/high-C', '0', 1e6),
      ...held('low', ['B']),
    )
    expect(magnitude(low(down, 'B')) / 230).toBeCloseTo(kept, 5)
    const up = solved(single, emf('e', 't1/low-B', 'n', complex(230)), ...held('high', ['B', 'C']))
    expect(magnitude(subtract(up.voltage('t1/high-B'), up.voltage('t1/high-C'))) / 11_000).toBeCloseTo(kept, 5)
    const wire: Transformer = { ...base, connection: 'single-wire', phases: ['A'], highVoltage: 12_700, rating: 10_000 }
    const back = solved(
      wire,
      emf('e', 't1/low-A', 'n', complex(230)),
      ohm('earth', 't1/high-earth', '0', 20),
      ...held('high', ['A']),
    )
    expect(magnitude(back.voltage('t1/high-A')) / 12_700).toBeCloseTo(kept, 5)
  })
})

describe('short circuit, both ways: rated current over the leakage, less what the core takes', () => {
  // the core stands beside one half: Z = z/2 + (z/2 beside 1/Y0) is within 0.03 % of z
  it.each(['Dyn', 'Yyn'] as const)('%s, low side shorted: 5.25 A / 0.0427 at 11 kV', (connection) => {
    const solution = solved(
      { ...base, connection },
      ...fed('high', 11_000 / Math.sqrt(3)),
      ...all.map((phase) => ohm(`short-${phase}`, `t1/low-${phase}`, 'n', 1e-6)),
    )
    const rated = 100_000 / (Math.sqrt(3) * 11_000)
    expect(magnitude(solution.current('emf-A')) / (rated / perUnit)).toBeCloseTo(1, 3)
    expect(magnitude(solution.current('short-A')) / (100_000 / 690 / perUnit)).toBeCloseTo(1, 3)
  })

  it.each(['Dyn', 'Yyn'] as const)(
    '%s, high side shorted between its phases: 145 A / 0.0427 at 230 V',
    (connection) => {
      const solution = solved(
        { ...base, connection },
        ...fed('low', 230),
        ...all.map((phase) => ohm(`short-${phase}`, `t1/high-${phase}`, '0', 1e-3)),
      )
      expect(magnitude(solution.current('emf-B')) / (100_000 / 690 / perUnit)).toBeCloseTo(1, 3)
      const line = 100_000 / (Math.sqrt(3) * 11_000) / perUnit
      expect(magnitude(solution.current('short-B')) / line).toBeCloseTo(1, 3)
    },
  )
})

describe('clock hour: low volts behind high volts by 30° an hour', () => {
  it.each([
    ['Dyn', undefined, 30],
    ['Dyn', 11, 30],
    ['Dyn', 1, -30],
    ['Dyn', 5, -150],
    ['Dyn', 7, 150],
    ['Yyn', undefined, 0],
    ['Yyn', 6, 180],
  ] as const)('%s%s: %d°', (connection, clock, shift) => {
    const transformer = { ...base, connection, ...(clock === undefined ? {} : { clock }) }
    const solution = solved(transformer, ...fed('high', 11_000 / Math.sqrt(3)), ...held('low'))
    for (const phase of all) {
      const ahead = degrees(low(solution, phase)) - (phaseAngles[phase] * 180) / Math.PI
      const off = ((((ahead - shift) % 360) + 540) % 360) - 180
      expect(Math.abs(off), phase).toBeLessThan(0.05)
    }
  })
})

describe('zero sequence', () => {
  /** The same current in all three low phases, returning by the neutral. */
  const pushed = (amperes: number): Element[] =>
    all.map((phase) => ({
      id: `push-${phase}`,
      kind: 'current',
      from: 'n',
      to: `t1/low-${phase}`,
      current: complex(amperes),
    }))
  const lowBase = (230 * 230 * 3) / 100_000

  it('of the high line finds no way in at a delta: one conductor against the earth carries no current', () => {
    const equal = all.map((phase) => emf(`emf-${phase}`, `t1/high-${phase}`, '0', complex(6_350)))
    const solution = solved(base, ...equal)
    for (const phase of all) expect(magnitude(solution.current(`emf-${phase}`))).toBeLessThan(1e-9)
    for (const phase of all) expect(magnitude(low(solution, phase))).toBeLessThan(1e-6)
  })

  it('the delta shorts that of the low side: Z0 = z/2 + (z/2 beside j0.5) of the core, nothing on the line', () => {
    const solution = solved(base, ...pushed(10), ...held('high'))
    const half = complex(0.0075, 0.02)
    // z/2 beside j0.5: j0.5 z/2 / (z/2 + j0.5), by hand 0.00693 + j0.01934
    const beside = { re: 0.00693, im: 0.01934 }
    const wanted = 10 * lowBase * Math.sqrt((half.re + beside.re) ** 2 + (half.im + beside.im) ** 2)
    expect(magnitude(low(solution, 'A')) / wanted).toBeCloseTo(1, 3)
    for (const phase of all) expect(magnitude(solution.voltage(`t1/high-${phase}`))).toBeLessThan(0.1)
  })

  it('a star without earth lets the core alone carry it: z/2 + j0.5 of a three-limb core', () => {
    const solution = solved({ ...base, connection: 'Yyn' }, ...pushed(10), ...held('high'))
    const wanted = 10 * lowBase * Math.sqrt(0.0075 ** 2 + 0.52 ** 2)
    expect(magnitude(low(solution, 'A')) / wanted).toBeCloseTo(1, 4)
  })

  it('so a single-phase load of half the phase rating shifts the neutral of a Yyn and not that of a Dyn', () => {
    // 72.5 A in one phase: a zero sequence of a third of 0.5 per unit over j0.52: 8.7 % of phase voltage; on a delta 0.70 %
    const shift = (connection: 'Dyn' | 'Yyn'): number => {
      const load: Element = { id: 'load', kind: 'current', from: 't1/low-A', to: 'n', current: complex(0, -72.5) }
      const solution = solved({ ...base, connection }, ...fed('high', 11_000 / Math.sqrt(3)), load)
      const sum = all.reduce(
        (total, phase) => ({ re: total.re + low(solution, phase).re, im: total.im + low(solution, phase).im }),
        complex(0),
      )
      return magnitude(sum) / 3 / 230
    }
    expect(shift('Yyn')).toBeCloseTo(0.087, 3)
    expect(shift('Dyn')).toBeCloseTo(0.00699, 4)
  })
})

describe('one limb fed alone', () => {
  it('has half of its flux return in each of the other two: 11 kV, and 5.5 kV on the other two sides of the delta', () => {
    const solution = solved(base, emf('e', 't1/low-A', 'n', complex(230)), ...held('high'))
    const between = (a: string, b: string): number =>
      magnitude(subtract(solution.voltage(`t1/high-${a}`), solution.voltage(`t1/high-${b}`)))
    expect(between('A', 'B') / 11_000).toBeCloseTo(1, 3)
    expect(between('B', 'C') / 5_500).toBeCloseTo(1, 2)
    expect(between('C', 'A') / 5_500).toBeCloseTo(1, 2)
  })
})

describe('the matrix', () => {
  it('is symmetric (reciprocity), so the same numbers serve both ways', () => {
    const windings = windingsElement(base, 'n')
    if (windings.kind !== 'coupled') throw new Error('coupled windings')
    windings.impedance.forEach((row, i) => row.forEach((z, k) => expect(windings.impedance[k]![i]).toEqual(z)))
  })

  it('keeps its digits: reciprocal condition far above 1e-12 with 1 mΩ and 1 GΩ beside it', () => {
    const solution = solved(base, ...fed('low', 230), ...held('high'), ohm('short', 't1/high-A', 't1/high-B', 1e-3))
    expect(solution.factored.reciprocalCondition).toBeGreaterThan(1e-12)
    expect(solution.residual).toBeLessThan(1e-12)
  })
})
