/** Sources that end themselves or limit: a set that stalls, an inverter, the carriers of their transformer. */
import { describe, expect, it } from 'vitest'
import { declaredCorner } from '../../../../src/engine/hazard/corner'
import { solveInstant } from '../../../../src/engine/hazard/instant'
import { solveLimited } from '../../../../src/engine/hazard/protection/limited'
import { complex, magnitude } from '../../../../src/engine/math/complex'
import { isUnsolvable } from '../../../../src/engine/physics/network'
import { backFed } from '../backFeedSites'
import { line, phaseVoltage } from '../protectionSites'
import { earthedSite, isolatedSite, momentOf, sharedCache } from '../sites'

describe('a set behind a transformer', () => {
  const rated = 5_000 / (3 * 230)

  it('stalls when it must give more than its share for so long: earths between phases for 20 s', () => {
    const story = line(earthedSite(backFed({ source: { stall: { share: 0.8, after: 20 } } })), 'set-on')
    expect(story).toMatchObject({ cleared: true, clearedBy: 'stall', duration: 20 })
  })

  it('has nothing to stall on without earths: the line stays alive', () => {
    const story = line(isolatedSite(backFed({ source: { stall: { share: 0.8, after: 20 } } })), 'set-on')
    expect(story).toMatchObject({ cleared: false, clearedBy: 'nothing', duration: 60 })
  })

  const inverter = (limit: number, trips: number | 'never') => {
    return backFed({ source: { kind: 'inverter', impedance: { re: 0.01, im: 0.1 }, limit, trips } })
  }

  it('an inverter gives its limit and no more into a short circuit, and stops when it notices', () => {
    const moment = momentOf(earthedSite(inverter(1.2, 2)))
    const instant = solveInstant(moment, 'set-on', declaredCorner, { cache: sharedCache })
    if (instant.kind !== 'instant') throw new Error(instant.reason)
    const outputs = ['A', 'B', 'C'].map(
      (phase) => instant.branches.find((it) => it.id === `set-1/output-${phase}`)!.size,
    )
    expect(Math.max(...outputs) / (1.2 * rated)).toBeCloseTo(1, 8)
    expect(instant.story).toMatchObject({ clearedBy: 'source-stop', duration: 2 })
  })

  it('one that never notices lasts, and below its limit holds the full voltage', () => {
    const story = line(isolatedSite(inverter(1.2, 'never')), 'set-on')
    expect(story).toMatchObject({ clearedBy: 'nothing', duration: 60 })
    expect(magnitude(story.phases[0]!.view.voltage('conductor-a@pole')) / phaseVoltage).toBeCloseTo(1, 1)
  })

  it('the transformer’s own carriers blow when a larger source comes the same way: 400 kVA through 6 K', () => {
    const large = backFed({
      transformer: { rating: 500_000, fuses: { link: 'K', rating: 6 } },
      source: { rating: 400_000, impedance: { re: 0, im: 0.2 } },
    })
    const story = line(earthedSite(large), 'set-on')
    // 400 kVA at 11 kV is 21 A, through 20 + 3 % of its base: 90 A, just above the 86 A that melt a slow 6 K in 0.1 s
    expect(story.clearedBy).toBe('fuse')
    expect(story.duration).toBeLessThan(0.2)
    expect(story.liveCurrent).toBeGreaterThan(86)
  })
})

describe('a source that limits', () => {
  const limits = [{ emfs: ['s/emf-A'], measures: ['s/output-A'], most: 10 }]
  const circuit = { links: [], elements: [emf(100)] }
  function emf(volts: number) {
    return { id: 's/emf-A', kind: 'voltage', from: 'x', to: '0', voltage: complex(volts, 0) } as const
  }
  /** 2 Ω behind it, and `others` A that other sources drive through it the same way. */
  const solveWith = (others: number) => (it: { elements: readonly unknown[] }) => {
    const { voltage } = it.elements[0] as ReturnType<typeof emf>
    const current = complex(voltage.re / 2 + others, 0)
    return { solution: () => ({ current: () => current }), voltage: () => voltage } as never
  }

  it('settles on the voltage that gives its limit: 20 V at 2 Ω, 12 V where others drive 4 A', () => {
    for (const [others, volts] of [
      [0, 20],
      [4, 12],
    ] as const) {
      const view = solveLimited(circuit, limits, solveWith(others))
      if (isUnsolvable(view)) throw new Error(view.reason)
      expect(view.voltage('x').re).toBeCloseTo(volts, 6)
    }
  })

  it('where others drive more than its limit through it there is no answer, and it says so', () => {
    expect(solveLimited(circuit, limits, solveWith(11))).toMatchObject({
      kind: 'unsolvable',
      reason: 'no-convergence',
      node: 's/emf-A',
    })
  })
})
