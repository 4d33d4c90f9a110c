import { describe, expect, it } from 'vitest'
import type { Complex } from '../../../../src/engine/math/complex'
import { add, complex, divide, magnitude, multiply, scale, subtract } from '../../../../src/engine/math/complex'
import type { Element, Port } from '../../../../src/engine/physics/network'
import { requireAnswer, requireFactored, requireSolved, resistor, source } from './requireSolved'

function expectPhasor(got: Complex, wanted: Complex, relative = 1e-9): void {
  expect(magnitude(subtract(got, wanted))).toBeLessThanOrEqual(relative * magnitude(wanted))
}

/** 6000 V behind 19 Ω on a rod of 81 Ω: 60 A, 4860 V. A foot 2 m off has 6 Ω mutual, another 3 m off 5 Ω. */
const site: readonly Element[] = [
  source('emf', 's', 6000),
  resistor('supply', 's', 'site', 19),
  { id: 'soil', kind: 'electrodes', nodes: ['site'], resistance: [[81]] },
]
const HAND: Port = { kind: 'node', node: 'site' }
const LEFT: Port = { kind: 'ground', electrodes: 'soil', mutual: [6], self: 312.5 }
const RIGHT: Port = { kind: 'ground', electrodes: 'soil', mutual: [5], self: 312.5 }
const FEET_APART = 53

describe('what a body sees', () => {
  it('by hand: open voltages 4860, 360 and 300 V, transfer through rod and soil', () => {
    const factored = requireFactored(site)
    const { open, transfer } = requireAnswer(
      factored.ports(requireAnswer(factored.solve()), [HAND, LEFT, RIGHT], () => FEET_APART),
    )
    expectPhasor(open[0]!, complex(4860))
    expectPhasor(open[1]!, complex(360))
    expectPhasor(open[2]!, complex(300))
    // at the site 19 Ω beside 81 Ω
    expectPhasor(transfer[0]![0]!, complex(15.39))
    // one ampere at the left foot lifts the rod by 6 V; against 81 + 19 Ω that drives 0.06 A back through the supply
    expectPhasor(transfer[0]![1]!, complex((6 * 19) / 100))
    expectPhasor(transfer[1]![0]!, complex((6 * 19) / 100))
    expectPhasor(transfer[1]![1]!, complex(312.5 - (6 * 6) / 100))
    expectPhasor(transfer[1]![2]!, complex(53 - (6 * 5) / 100))
  })

  it('a hand-to-foot body on the ports is the body of the whole circuit with its foot as an electrode', () => {
    const body = 800
    const factored = requireFactored(site)
    const solution = requireAnswer(factored.solve())
    const { open, transfer } = requireAnswer(factored.ports(solution, [HAND, LEFT], () => 0))
    const loop = subtract(add(transfer[0]![0]!, transfer[1]![1]!), scale(transfer[0]![1]!, 2))
    const current = divide(subtract(open[0]!, open[1]!), add(loop, complex(body)))
    const whole = requireSolved([
      ...site.slice(0, 2),
      {
        id: 'soil',
        kind: 'electrodes',
        nodes: ['site', 'foot'],
        resistance: [
          [81, 6],
          [6, 312.5],
        ],
      },
      resistor('body', 'site', 'foot', body),
    ])
    expectPhasor(whole.current('body'), current)
    // and the full solve with the current injected gives the same site voltage
    const loaded = requireAnswer(
      factored.solveWith([
        { port: HAND, current: scale(current, -1) },
        { port: LEFT, current },
      ]),
    )
    expectPhasor(loaded.voltage('site'), whole.voltage('site'))
    expectPhasor(loaded.electrodeCurrents('soil')[0]!, whole.electrodeCurrents('soil')[0]!)
  })

  it('without electrodes the ground is remote earth behind the foot’s own resistance', () => {
    const factored = requireFactored([source('emf', 'a', 230), resistor('load', 'a', '0', 100)])
    const foot: Port = { kind: 'ground', electrodes: '', mutual: [], self: 300 }
    const { open, transfer } = requireAnswer(factored.ports(requireAnswer(factored.solve()), [foot], () => 0))
    expect(open[0]).toEqual({ re: 0, im: 0 })
    expect(transfer[0]![0]).toEqual({ re: 300, im: 0 })
  })

  it('remote earth itself can be a port: 0 V whatever flows', () => {
    const factored = requireFactored(site)
    const earth: Port = { kind: 'node', node: '0' }
    const { open, transfer } = requireAnswer(factored.ports(requireAnswer(factored.solve()), [HAND, earth], () => 0))
    expect(magnitude(open[1]!)).toBe(0)
    expect(transfer[1]!.map(magnitude)).toEqual([0, 0])
    expect(magnitude(multiply(transfer[0]![1]!, complex(1)))).toBe(0)
  })

  it('as many mutual resistances as electrodes, or it throws', () => {
    const factored = requireFactored(site)
    const foot: Port = { kind: 'ground', electrodes: 'soil', mutual: [1, 2], self: 300 }
    expect(() => factored.solveWith([{ port: foot, current: complex(1) }])).toThrow('1 mutual resistances')
  })
})
