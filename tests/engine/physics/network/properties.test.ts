// Ten thousand circuits at random, none of them looked at by eye: what must be so of any linear network is so of each.
// Bounds are those of rounding: each check names what it is measured against.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { add, magnitude, scale, subtract, ZERO } from '../../../../src/engine/math/complex'
import type { Factored, Port, Solution } from '../../../../src/engine/physics/network'
import { flowsOf, outOf, powerOf } from './flows'
import { driven, drivenOnlyBy, fewer, randomCircuits, renamed, type RandomCircuit } from './randomCircuits'
import { requireAnswer, requireFactored, requireSolved } from './requireSolved'

function forEach(name: string, numRuns: number, check: (circuit: RandomCircuit) => void): void {
  fc.assert(fc.property(randomCircuits(name), check), { numRuns: fewer(numRuns) })
}

const EPSILON = 2.220446049250313e-16

/** Two ways to the same voltages may differ by a thousand roundings, as far as the condition magnifies them. */
function expectSame(
  factored: Factored,
  one: (node: string) => Parameters<typeof magnitude>[0],
  other: typeof one,
): void {
  const largest = Math.max(...factored.nodes.map((node) => magnitude(one(node))))
  const bound = ((1000 * EPSILON) / factored.reciprocalCondition) * largest
  const apart = Math.max(...factored.nodes.map((node) => magnitude(subtract(one(node), other(node)))))
  expect(apart).toBeLessThanOrEqual(bound)
}

/** The bits of every node voltage. */
function bitsOf(nodes: readonly string[], { voltage }: Solution): readonly number[] {
  return nodes.flatMap((node) => [voltage(node).re, voltage(node).im])
}

describe('any circuit', () => {
  const quarters = ['first', 'second', 'third', 'last']
  it.each(quarters)(
    'Kirchhoff: what flows into a node flows out; power: what the sources give, the rest takes (%s)',
    (quarter) => {
      forEach(`kirchhoff ${quarter}`, 1000, ({ elements }) => {
        const factored = requireFactored(elements)
        const solution = requireAnswer(factored.solve())
        const flows = elements.flatMap((element) => flowsOf(element, solution))
        const largest = Math.max(...flows.map((flow) => flow.reach))
        const excess = factored.nodes.map((node) => {
          const out = outOf(node, flows)
          const left = magnitude(out.reduce((sum, flow) => add(sum, flow.current), ZERO))
          const reach = out.reduce((sum, flow) => sum + flow.reach, 0)
          // where nothing flows, what is left is the rounding of the largest current elsewhere
          return left - (1e-11 * reach + 1e-14 * largest)
        })
        expect(Math.max(...excess)).toBeLessThanOrEqual(0)
        const taken = elements.map((element) => powerOf(element, solution)).reduce(add, ZERO)
        const passed = flows.reduce((sum, { from, to, reach }) => {
          return sum + reach * (magnitude(solution.voltage(from)) + magnitude(solution.voltage(to)))
        }, 0)
        expect(passed).toBeGreaterThan(0)
        expect(magnitude(taken)).toBeLessThanOrEqual(1e-12 * passed)
        expect(solution.residual).toBeLessThan(1e-13)
      })
    },
  )

  it('reciprocity: an ampere at one port does to another what it does the other way round, on the ground as well', () => {
    forEach('reciprocity', 2000, ({ elements, nodes }) => {
      const soil = elements.find((it) => it.id === 'soil')
      const mutual = soil?.kind === 'electrodes' ? soil.nodes.map((_, k) => 0.1 / (k + 1)) : []
      const ports: readonly Port[] = [
        { kind: 'node', node: nodes[0]! },
        { kind: 'node', node: nodes[nodes.length - 1]! },
        { kind: 'ground', electrodes: 'soil', mutual, self: 300 },
      ]
      const factored = requireFactored(elements)
      const { transfer } = requireAnswer(factored.ports(requireAnswer(factored.solve()), ports, () => 0))
      for (const [i, j] of [
        [0, 1],
        [0, 2],
        [1, 2],
      ] as const) {
        const size = Math.sqrt(magnitude(transfer[i]![i]!) * magnitude(transfer[j]![j]!))
        expect(size).toBeGreaterThan(0)
        expect(magnitude(subtract(transfer[i]![j]!, transfer[j]![i]!))).toBeLessThanOrEqual(1e-10 * size)
      }
    })
  })

  it('superposition: all sources together do what they do one kind after the other', () => {
    forEach('superposition', 2000, ({ elements }) => {
      const factored = requireFactored(elements)
      const all = requireAnswer(factored.solve())
      const [byVoltage, byCurrent] = [drivenOnlyBy('voltage', elements), drivenOnlyBy('current', elements)].map(
        requireSolved,
      )
      expectSame(factored, all.voltage, (node) => add(byVoltage!.voltage(node), byCurrent!.voltage(node)))
    })
  })

  it('scaling: every source four times as large gives the same bits, two powers of two higher; three times as large, three times as much', () => {
    forEach('scaling', 1000, ({ elements }) => {
      const factored = requireFactored(elements)
      const one = requireAnswer(factored.solve())
      const four = requireSolved(driven(elements, 4))
      expect(bitsOf(factored.nodes, four)).toEqual(bitsOf(factored.nodes, one).map((part) => 4 * part))
      const three = requireSolved(driven(elements, 3))
      expectSame(factored, one.voltage, (node) => scale(three.voltage(node), 1 / 3))
    })
  })

  it('names: others in the same order give the same bits, in whatever order they come; in another order the same voltages', () => {
    forEach('names', 1000, ({ elements }) => {
      const factored = requireFactored(elements)
      const one = requireAnswer(factored.solve())
      const longer = (name: string): string => (name === '0' ? name : `n${name}`)
      const alike = requireSolved([...renamed(elements, longer, longer)].reverse())
      expect(bitsOf(factored.nodes.map(longer), alike)).toEqual(bitsOf(factored.nodes, one))
      const turned = (name: string): string => (/^[1-9]/.test(name) ? `m${100 - Number(name)}` : name)
      const turnedId = (id: string): string => [...id].reverse().join('')
      const other = requireSolved(renamed(elements, turned, turnedId))
      expectSame(factored, one.voltage, (node) => other.voltage(turned(node)))
    })
  })
})
