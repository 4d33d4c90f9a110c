import { describe, expect, it } from 'vitest'
import { complex, magnitude } from '../../../../src/engine/math/complex'
import type { Element, Factored, Solution } from '../../../../src/engine/physics/network'
import { factor, isUnsolvable } from '../../../../src/engine/physics/network'

export function requireFactored(elements: readonly Element[]): Factored {
  const answer = factor({ elements })
  if (isUnsolvable(answer)) throw new Error(`unsolvable: ${answer.reason} at ${answer.node}`)
  return answer
}

export function requireSolved(elements: readonly Element[]): Solution {
  const answer = requireFactored(elements).solve()
  if (isUnsolvable(answer)) throw new Error(`unsolvable: ${answer.reason} at ${answer.node}`)
  return answer
}

const resistor = (id: string, from: string, to: string, ohm: number): Element => ({
  id,
  kind: 'impedance',
  from,
  to,
  impedance: complex(ohm),
})

describe('hand-solved circuits', () => {
  it('rod divider: 6350 V behind 1 Ω, lead 1 mΩ, rod 10 Ω (Ohm’s law)', () => {
    const solution = requireSolved([
      { id: 'source', kind: 'voltage', from: 's', to: '0', voltage: complex(6350) },
      resistor('supply', 's', 'line', 1),
      resistor('lead', 'line', 'rod', 0.001),
      resistor('rod', 'rod', '0', 10),
    ])
    const current = 6350 / 11.001
    expect(magnitude(solution.voltage('rod'))).toBeCloseTo(10 * current, 6)
    expect(solution.current('lead').re).toBeCloseTo(current, 8)
    expect(solution.current('source').re).toBeCloseTo(-current, 8)
    expect(solution.residual).toBeLessThan(1e-14)
  })

  it('worker of 1000 Ω beside a jumper of 1 mΩ at 10 kA carries 10 mA (handbook divider)', () => {
    const solution = requireSolved([
      { id: 'fault', kind: 'current', from: '0', to: 'line', current: complex(10000) },
      resistor('jumper', 'line', '0', 0.001),
      resistor('worker', 'line', '0', 1000),
    ])
    expect(solution.current('worker').re / 0.01).toBeCloseTo(1, 5)
  })
})
