/** Transformers and sources by chance, over all that a file allows: always solved, to the solver’s own residual. */
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import { lineOf } from '../../../src/engine/hazard/liven'
import { isUnsolvable } from '../../../src/engine/physics/network'
import type { Phase } from '../../../src/engine/site/scenario'
import { backFed } from './backFeedSites'
import { earthedSite, isolatedSite, sharedCache } from './sites'

const connections = {
  Dyn: ['A', 'B', 'C'],
  Yyn: ['A', 'B', 'C'],
  'single-phase': ['B', 'C'],
  'single-wire': ['C'],
} as const satisfies Record<string, readonly Phase[]>

/** From low to high, evenly by size. */
const spread = (low: number, high: number) =>
  fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map((it) => Math.exp(it))

const any = fc.record({
  connection: fc.constantFrom<keyof typeof connections>('Dyn', 'Yyn', 'single-phase', 'single-wire'),
  highVoltage: spread(1000, 100_000),
  lowVoltage: spread(50, 1000),
  rating: spread(500, 5_000_000),
  re: fc.double({ min: 0, max: 5, noNaN: true }),
  im: spread(0.001, 5),
  source: spread(100, 5_000_000),
  earth: spread(0.01, 10_000),
  isEarthed: fc.boolean(),
})

it('200 of them, with earths on the line and without', () => {
  fc.assert(
    fc.property(any, ({ connection, highVoltage, lowVoltage, rating, re, im, source, earth, isEarthed }) => {
      const phases = connections[connection]
      const change = backFed({
        transformer: {
          connection,
          phases,
          highVoltage,
          lowVoltage,
          rating,
          impedance: { re, im },
          neutralEarth: { resistance: earth },
          ...(connection === 'single-wire' ? { highEarth: { resistance: earth } } : {}),
        },
        source: { rating: source, phases: phases.length === 3 ? phases : [phases[0]!], impedance: { re, im } },
      })
      const site = isEarthed ? earthedSite(change) : isolatedSite(change)
      const line = lineOf(site, 'set-on', declaredCorner, sharedCache)
      if (isUnsolvable(line)) throw new Error(`${line.reason} at ${line.node}`)
      expect(Number.isFinite(line.siteRise)).toBe(true)
      expect(Number.isFinite(line.liveCurrent)).toBe(true)
      const { view } = line.phases[0]!
      expect(view.solution().residual).toBeLessThan(1e-10)
    }),
    { numRuns: 200 },
  )
}, 60_000)
