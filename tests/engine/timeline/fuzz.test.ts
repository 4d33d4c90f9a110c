/**
 * Random orders, sensible and senseless: nothing crashes, no number is lost, a refusal changes nothing, and replay, live
 * play and JSON are one. Checked against itself by design; the invariants are those of the engine's contract.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  actions,
  drawScenario,
  extendTimeline,
  openTimeline,
  startSite,
  type Order,
  type Site,
} from '../../../src/engine'
import { recorded } from '../../support/cleanStages'
import { marrowBend } from '../../support/marrowBend'
import { faultsOfWalk, walkAtRandom } from '../../support/randomWalk'
import { scenarioBase, scenarioSlugs } from '../../support/record/shelf'

const crew = ['gw', 'pic', 'pw', 'so']
const ids = [...actions.keys()]

const openings: readonly Site[] = ['book-out', 'take-permit', 'drive-rod', 'clamp', 'untie', 'unclamp'].map(
  (act) => recorded('clean').entries.find((it) => it.order.do === act)!.before,
)

describe('random crews', () => {
  test('200 seeds: nothing crashes, refusals leave the site alone, replay is the same to the bit', () => {
    let acted = 0
    for (let seed = 0; seed < 200; seed++) {
      const opening = openings[seed % openings.length]!
      const timeline = walkAtRandom(seed, opening, 40)
      expect(faultsOfWalk(timeline, opening), `seed ${seed}`).toEqual([])
      acted += timeline.entries.filter(({ outcome }) => outcome === 'done').length
    }
    // The walk is no test if nearly everything is refused.
    expect(acted).toBeGreaterThan(1500)
  }, 120_000)

  test.each(scenarioSlugs())('%s: the same from its first second, 8 seeds', (slug) => {
    for (let seed = 0; seed < 8; seed++) {
      const opening = startSite(drawScenario(scenarioBase(slug), seed + 1, 'practise'))
      expect(faultsOfWalk(walkAtRandom(seed, opening, 60), opening), `seed ${seed}`).toEqual([])
    }
  })

  test('values of any kind whatever are answered, never thrown', () => {
    const site = openings[3]!
    const anything = fc.record({
      who: fc.constantFrom(...crew, '', '__proto__'),
      do: fc.constantFrom(...ids, 'toString', '__proto__'),
      with: fc.option(fc.constantFrom(...Object.keys(site.items), '__proto__'), { nil: undefined }),
      on: fc.option(fc.constantFrom('conductor-a', 'pole', 'rod/R-1', 'switch-27', 'E-07', 'constructor'), {
        nil: undefined,
      }),
      values: fc.dictionary(
        fc.constantFrom('turns', 'to', 'at', 'outline', 'depth', 'from', 'readBack', '__proto__'),
        fc.jsonValue(),
      ),
    })
    fc.assert(
      fc.property(anything, ({ with: item, on, ...rest }) => {
        const order = { at: site.time, ...rest, ...(item && { with: item }), ...(on && { on }) } as unknown as Order
        const timeline = extendTimeline(openTimeline(site.scenario, site), order)
        expect(timeline.entries).toHaveLength(1)
        expect(['done', 'refused']).toContain(timeline.entries[0]!.outcome)
      }),
      { seed: 7, numRuns: 2000 },
    )
  })

  test('chance strikes too: random crews on the seed with a livening', () => {
    const scenario = marrowBend(1)
    const opening = { ...openings[4]!, scenario }
    for (let seed = 0; seed < 10; seed++) {
      const timeline = walkAtRandom(seed, opening, 30)
      expect(timeline.entries).toHaveLength(30)
    }
  })
})
