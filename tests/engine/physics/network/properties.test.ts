import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Complex } from '../../../../src/engine/math/complex'
import { add, complex, magnitude, multiply, scale, subtract, ZERO } from '../../../../src/engine/math/complex'
import type { Element, Port } from '../../../../src/engine/physics/network'
import { requireAnswer, requireFactored, requireSolved } from './requireSolved'

/** Sizes from clamps to leakages, spread over the decades. */
const decades = (from: number, to: number) => fc.double({ min: from, max: to, noNaN: true }).map((e) => 10 ** e)
const impedances = fc
  .record({ size: decades(-4, 7), turn: fc.double({ min: -1, max: 1, noNaN: true }) })
  .map(({ size, turn }): Complex => ({ re: size * (1.05 - Math.abs(turn)), im: size * turn }))

/** Every node hangs on an earlier one; then sources, coupling, capacitance and electrodes at random places. */
const circuits = fc.integer({ min: 2, max: 7 }).chain((count) => {
  const node = fc.integer({ min: 0, max: count }).map(String)
  const real = fc.integer({ min: 1, max: count }).map(String)
  const tree = fc.tuple(
    ...Array.from({ length: count }, (_, i) =>
      fc.record({ parent: fc.integer({ min: 0, max: i }), impedance: impedances }).map(
        ({ parent, impedance }): Element => ({
          id: `tree${i + 1}`,
          kind: 'impedance',
          from: String(i + 1),
          to: String(parent),
          impedance,
        }),
      ),
    ),
  )
  const extras = fc.array(
    fc.oneof(
      fc.record({ kind: fc.constant('impedance' as const), from: node, to: node, impedance: impedances }),
      fc.record({
        kind: fc.constant('admittance' as const),
        from: real,
        to: node,
        admittance: decades(-10, -4).map((s) => complex(0, s)),
      }),
      fc.record({ kind: fc.constant('current' as const), from: node, to: node, current: decades(-1, 3).map(complex) }),
      fc
        .record({
          a: real,
          b: node,
          c: real,
          d: node,
          self: decades(-3, 2),
          share: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        })
        .map(({ a, b, c, d, self, share }) => ({
          kind: 'coupled' as const,
          branches: [
            { id: '', from: a, to: b },
            { id: '', from: c, to: d },
          ],
          impedance: [
            [complex(0.1 * self, self), complex(0, share * self)],
            [complex(0, share * self), complex(0.2 * self, self)],
          ],
        })),
    ),
    { maxLength: 6 },
  )
  const soil = fc.record({ a: real, b: real, r1: decades(0, 3), r2: decades(0, 3) }).map(
    ({ a, b, r1, r2 }): Element => ({
      id: 'soil',
      kind: 'electrodes',
      nodes: [a, b],
      resistance: [
        [r1, 0.3 * Math.min(r1, r2)],
        [0.3 * Math.min(r1, r2), r2],
      ],
    }),
  )
  const drive = fc
    .record({ at: real, volt: decades(0, 4), behind: decades(-1, 2) })
    .map(({ at, volt, behind }): Element[] => [
      { id: 'emf', kind: 'voltage', from: 'emf', to: '0', voltage: complex(volt) },
      { id: 'behind', kind: 'impedance', from: 'emf', to: at, impedance: complex(behind, behind) },
    ])
  return fc.record({ tree, extras, soil, drive }).map(({ tree, extras, soil, drive }): Element[] => [
    ...tree,
    ...extras.map((extra, k): Element => {
      const id = `extra${k}`
      if (extra.kind !== 'coupled') return { ...extra, id }
      return { ...extra, id, branches: extra.branches.map((branch, i) => ({ ...branch, id: `${id}.${i}` })) }
    }),
    soil,
    ...drive,
  ])
})

const GROUND: Port = { kind: 'ground', electrodes: 'soil', mutual: [0.2, 0.1], self: 300 }
const PORTS: readonly Port[] = [{ kind: 'node', node: '1' }, { kind: 'node', node: '2' }, GROUND]
const none = (): number => 0

function flowsOf(element: Element, current: (id: string) => Complex, electrodes: readonly Complex[]) {
  if (element.kind === 'coupled') {
    return element.branches.map((branch) => ({ from: branch.from, to: branch.to, flow: current(branch.id) }))
  }
  if (element.kind === 'electrodes') {
    return element.nodes.map((node, k) => ({ from: node, to: '0', flow: electrodes[k]! }))
  }
  if (element.kind === 'shunt') throw new Error('no shunts are drawn here')
  return [{ from: element.from, to: element.to, flow: current(element.id) }]
}

describe('any circuit', () => {
  it('Kirchhoff: what flows into a node flows out', () => {
    fc.assert(
      fc.property(circuits, (elements) => {
        const factored = requireFactored(elements)
        const solution = requireAnswer(factored.solve())
        const flows = elements.flatMap((element) =>
          flowsOf(element, solution.current, solution.electrodeCurrents('soil')),
        )
        // an element of 1 Ω or more reads its current off two rounded voltages
        const rounding = 1e-13 * Math.max(...factored.nodes.map((node) => magnitude(solution.voltage(node))))
        for (const node of factored.nodes) {
          const outward = flows.flatMap(({ from, to, flow }) => [
            ...(from === node ? [flow] : []),
            ...(to === node ? [scale(flow, -1)] : []),
          ])
          const total = magnitude(outward.reduce(add, ZERO))
          const through = outward.reduce((sum, flow) => sum + magnitude(flow), 0)
          expect(total).toBeLessThanOrEqual(1e-9 * through + rounding)
        }
      }),
    )
  })

  it('reciprocity: the transfer matrix of its ports is symmetric, ground port included', () => {
    fc.assert(
      fc.property(circuits, (elements) => {
        const factored = requireFactored(elements)
        const { transfer } = requireAnswer(factored.ports(requireAnswer(factored.solve()), PORTS, none))
        for (const i of [0, 1, 2]) {
          for (const j of [0, 1, 2]) {
            const difference = magnitude(subtract(transfer[i]![j]!, transfer[j]![i]!))
            const size = Math.sqrt(magnitude(transfer[i]![i]!) * magnitude(transfer[j]![j]!))
            expect(difference).toBeLessThanOrEqual(1e-7 * size)
          }
        }
      }),
    )
  })

  it('superposition: open voltages plus transfer times currents is the full solve', () => {
    fc.assert(
      fc.property(circuits, fc.array(decades(-3, 1), { minLength: 3, maxLength: 3 }), (elements, amps) => {
        const factored = requireFactored(elements)
        const equivalent = requireAnswer(factored.ports(requireAnswer(factored.solve()), PORTS, none))
        const currents = amps.map((amp, i) => complex(amp * (i - 1.5), amp * 0.3))
        const full = requireAnswer(factored.solveWith(PORTS.map((port, i) => ({ port, current: currents[i]! }))))
        for (const i of [0, 1]) {
          const byParts = currents.reduce(
            (sum, current, j) => add(sum, multiply(equivalent.transfer[i]![j]!, current)),
            equivalent.open[i]!,
          )
          const whole = full.voltage(String(i + 1))
          const reach = currents.reduce(
            (sum, current, j) => sum + magnitude(multiply(equivalent.transfer[i]![j]!, current)),
            magnitude(equivalent.open[i]!),
          )
          expect(magnitude(subtract(byParts, whole))).toBeLessThanOrEqual(1e-8 * reach)
        }
      }),
    )
  })

  it('scaling: every source times 3 is every voltage times 3', () => {
    fc.assert(
      fc.property(circuits, (elements) => {
        const tripled = elements.map((element): Element => {
          if (element.kind === 'voltage') return { ...element, voltage: scale(element.voltage, 3) }
          if (element.kind === 'current') return { ...element, current: scale(element.current, 3) }
          return element
        })
        const one = requireSolved(elements)
        const three = requireSolved(tripled)
        const largest = Math.max(...requireFactored(elements).nodes.map((node) => magnitude(one.voltage(node))))
        for (const node of ['1', '2', 'emf']) {
          const difference = magnitude(subtract(three.voltage(node), scale(one.voltage(node), 3)))
          expect(difference).toBeLessThanOrEqual(1e-8 * largest)
        }
      }),
    )
  })

  it('another order of insertion gives the same bits', () => {
    const shuffled = circuits.chain((elements) =>
      fc.record({
        elements: fc.constant(elements),
        other: fc.shuffledSubarray(elements, { minLength: elements.length }),
      }),
    )
    fc.assert(
      fc.property(shuffled, ({ elements, other }) => {
        const one = requireSolved(elements)
        const two = requireSolved(other)
        for (const node of requireFactored(elements).nodes) expect(two.voltage(node)).toEqual(one.voltage(node))
        for (const element of elements) {
          if (element.kind !== 'coupled') expect(two.current(element.id)).toEqual(one.current(element.id))
        }
      }),
    )
  })

  it('other names give the same voltages', () => {
    fc.assert(
      fc.property(circuits, (elements) => {
        // reverses the order in which nodes are sorted
        const renamed = (node: string): string => (node === '0' ? node : node === 'emf' ? 'a' : `n${9 - Number(node)}`)
        const others = elements.map((element): Element => {
          const id = `x${element.id}`
          if (element.kind === 'coupled') {
            const branches = element.branches.map((b) => ({ id: b.id, from: renamed(b.from), to: renamed(b.to) }))
            return { ...element, id, branches }
          }
          if (element.kind === 'electrodes' || element.kind === 'shunt') {
            return { ...element, id, nodes: element.nodes.map(renamed) }
          }
          return { ...element, id, from: renamed(element.from), to: renamed(element.to) }
        })
        const one = requireSolved(elements)
        const two = requireSolved(others)
        const { nodes } = requireFactored(elements)
        const largest = Math.max(...nodes.map((node) => magnitude(one.voltage(node))))
        for (const node of nodes) {
          const difference = magnitude(subtract(one.voltage(node), two.voltage(renamed(node))))
          expect(difference).toBeLessThanOrEqual(1e-8 * largest)
        }
      }),
    )
  })
})
