/** Chance over the stated ranges: Wilson by published figures, the draws by their ends, the whole by what must hold. */
import { describe, expect, it } from 'vitest'
import { chanceOf, countedShare, drawnScenarios, type Chance } from '../../../src/engine/hazard/chance'
import { cornersOf, declaredCorner, inCorner } from '../../../src/engine/hazard/corner'
import { chanceOfFibrillation } from '../../../src/engine/physics/body'
import type { LiveMoment } from '../../../src/engine/hazard/liven'
import {
  barrierAt,
  bondOn,
  circleRound,
  coverOn,
  earthedSite,
  exposureOf,
  inScenario,
  leftHandOnB,
  momentOf,
  rodPlace,
  storyOf,
} from './sites'

const worker = { person: 'pw', path: 'hand-thigh', livening: 'clash-b' }
const walker = { person: 'bystander', path: 'bystander-pace', livening: 'clash-b' }

function drawn(moment: LiveMoment, whom: typeof worker, draws: number): Chance {
  const answer = chanceOf(moment, whom, draws)
  if (answer.kind !== 'chance') throw new Error(`${answer.node}: ${answer.reason}`)
  return answer
}

const bare = momentOf(earthedSite(bondOn), leftHandOnB)
const covered = momentOf(earthedSite(bondOn, coverOn()), leftHandOnB)

describe('Wilson interval', () => {
  // R. G. Newcombe, Statistics in Medicine 17 (1998), table I, method 3; from memory, high confidence
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('%s of %s: %s to %s', (count, of, low, high) => {
    const found = countedShare(count, of)
    expect(found.share).toBe(count / of)
    expect(found.low).toBeCloseTo(low, 4)
    expect(found.high).toBeCloseTo(high, 4)
  })

  it('all of them is none of them turned round, and never leaves 0 to 1', () => {
    for (const of of [1, 5, 200]) {
      expect(countedShare(of, of)).toMatchObject({ high: 1 })
      expect(countedShare(of, of).low).toBeCloseTo(1 - countedShare(0, of).high, 12)
      expect(countedShare(0, of).low).toBe(0)
    }
  })
})

describe('draws', () => {
  const { scenario } = bare.site
  const all = [...drawnScenarios(scenario, 2_000)]

  it('stay within the stated ends and the population, and half of them lie on either side of the middle', () => {
    const soil = all.map((it) => it.soil.layers[0]!.resistivity / scenario.soil.layers[0]!.resistivity)
    const { low, high } = scenario.ranges.find((it) => it.of === 'soil')!
    expect(Math.min(...soil)).toBeGreaterThanOrEqual(low)
    expect(Math.max(...soil)).toBeLessThanOrEqual(high)
    // even on a logarithmic scale: half lie below √(low·high); 2000 coins are within 4 standard deviations of 1000
    expect(Math.abs(soil.filter((it) => it < Math.sqrt(low * high)).length - 1_000)).toBeLessThan(4 * Math.sqrt(500))
    const people = all.map((it) => it.body.percentile)
    expect(Math.min(...people)).toBeGreaterThanOrEqual(1)
    expect(Math.max(...people)).toBeLessThanOrEqual(99)
    expect(Math.abs(people.filter((it) => it < 50).length - 1_000)).toBeLessThan(4 * Math.sqrt(500))
  })

  it('both layers of soil, both fixings of a kind, move together; each range by itself', () => {
    for (const it of all.slice(0, 20)) {
      const factor = it.soil.layers[0]!.resistivity / scenario.soil.layers[0]!.resistivity
      expect(it.soil.layers[1]!.resistivity / scenario.soil.layers[1]!.resistivity).toBeCloseTo(factor, 12)
      expect(it.pole.armFixing / scenario.pole.armFixing).toBeCloseTo(it.stay!.fixing / scenario.stay!.fixing, 12)
    }
    // 20 draws of two independent factors do not correlate fully
    const pairs = all.slice(0, 400).map((it) => [it.soil.layers[0]!.resistivity, it.pole.armFixing] as const)
    expect(Math.abs(correlation(pairs.map(([a, b]) => [Math.log(a), Math.log(b)] as const)))).toBeLessThan(0.2)
  })

  it('one more range leaves the draws of the others as they were', () => {
    const more = { ...scenario, ranges: [...scenario.ranges, { of: 'moisture', low: 0.01, high: 1 } as const] }
    const [before, after] = [[...drawnScenarios(scenario, 5)], [...drawnScenarios(more, 5)]]
    expect(after.map((it) => it.soil)).toEqual(before.map((it) => it.soil))
    expect(after.map((it) => it.body)).toEqual(before.map((it) => it.body))
    for (const [i, it] of after.entries()) expect(it.contact.sole.leakage).toBeLessThan(before[i]!.contact.sole.leakage)
  })
})

describe('ranges of contact and moisture', () => {
  it('moisture scales what layers and sticks leak through, contact every area; nothing else', () => {
    const { scenario } = bare.site
    const { contact } = scenario
    const wet = inCorner(scenario, { ...declaredCorner, id: 'wet', moisture: 0.01, contact: 2 })
    expect(wet.contact.sole.leakage).toBeCloseTo(0.01 * contact.sole.leakage, 3)
    expect(wet.contact.stickLeakage).toBeCloseTo(0.01 * contact.stickLeakage, 3)
    expect(wet.contact.area).toEqual({
      thigh: 2 * contact.area.thigh,
      hand: 2 * contact.area.hand,
      sole: 2 * contact.area.sole,
      bootOnBolt: 2 * contact.area.bootOnBolt,
    })
    expect({ ...wet, contact: 0 }).toEqual({ ...scenario, contact: 0 })
  })

  it('a wet cover leaks by hand: 4.8 kV over 150 MΩ · 0.001 beside its 221 pF', () => {
    const corner = { ...declaredCorner, id: 'wet', moisture: 0.001 }
    const dry = exposureOf(storyOf(covered), 'pw')
    const wet = exposureOf(storyOf(covered, 'clash-b', corner), 'pw')
    expect(wet.bodyCurrent).toBeGreaterThan(10 * dry.bodyCurrent)
    const leak = dry.layer!.voltage / (covered.site.scenario.contact.cover.leakage * corner.moisture)
    // the boots, wet too, carry their part beside the thigh
    expect(wet.bodyCurrent).toBeGreaterThan(0.8 * leak)
  })

  it('stated in a scenario they are corners like the others', () => {
    const ranges = [...bare.site.scenario.ranges, { of: 'moisture', low: 0.1, high: 1 } as const]
    expect(cornersOf({ ranges }).length).toBe(17)
  })
})

describe('chance', () => {
  it('a bare thigh is above in every draw, and next to certain to stop the heart', () => {
    const found = drawn(bare, worker, 20)
    expect(found.above).toMatchObject({ count: 20, of: 20, share: 1, high: 1 })
    expect(found.above.low).toBeCloseTo(0.8389, 4)
    expect(found.fibrillation.low).toBeGreaterThan(0.99)
    expect(found.unsolved).toBe(0)
  })

  it('a sound cover holds in every draw; none in 20 still leaves up to 16 %', () => {
    const found = drawn(covered, worker, 20)
    expect(found.above).toMatchObject({ count: 0, share: 0, low: 0 })
    expect(found.above.high).toBeCloseTo(0.1611, 4)
    expect(found.fibrillation.likely).toBe(0)
  })

  it('a layer that may fail is told both ways', () => {
    const found = drawn(momentOf(earthedSite(bondOn, coverOn('C-16')), leftHandOnB), worker, 10)
    expect(found.above.count).toBe(0)
    expect(found.aboveIfLayersFail.count).toBe(10)
    expect(found.fibrillation.likely).toBe(0)
    expect(found.fibrillation.high).toBeGreaterThan(0.99)
  })

  it('without ranges and for the public, the value judged is the declared one in every draw', () => {
    const near = earthedSite(bondOn, barrierAt(circleRound(rodPlace, 3)))
    const fixed = momentOf(inScenario(() => ({ ranges: [] }))(near))
    const declared = exposureOf(storyOf(fixed), 'bystander', 'bystander-pace')
    const found = drawn(fixed, walker, 5)
    expect(found.judged).toEqual({ low: declared.judged, middle: declared.judged, high: declared.judged })
    expect(found.overLimit.middle).toBe(declared.judged / declared.limit)
    // people differ: the interval is that of their currents, the declared one among them
    const chance = chanceOfFibrillation(declared.heartEquivalent, declared.duration)
    expect(found.fibrillation.low).toBeLessThanOrEqual(chance.high)
    expect(found.fibrillation.high).toBeGreaterThanOrEqual(found.fibrillation.likely)
  })

  it('lies between the corners where the value rises or falls with each range', () => {
    const site = earthedSite(bondOn, barrierAt(circleRound(rodPlace, 3)))
    const moment = momentOf(site)
    const corners = cornersOf(site.scenario).map((corner) => {
      return exposureOf(storyOf(moment, 'clash-b', corner), 'bystander', 'bystander-pace').judged
    })
    const found = drawn(moment, walker, 30)
    expect(found.judged.low).toBeGreaterThan(0.99 * Math.min(...corners))
    expect(found.judged.high).toBeLessThan(1.01 * Math.max(...corners))
    expect(found.judged.low).toBeLessThan(found.judged.middle)
    expect(found.judged.middle).toBeLessThan(found.judged.high)
  })

  it('the same to the bit each time; another seed draws others', () => {
    const again = drawn(bare, worker, 6)
    expect(JSON.stringify(drawn(bare, worker, 6))).toBe(JSON.stringify(again))
    const other = drawn(momentOf(inScenario(() => ({ seed: 2 }))(bare.site), leftHandOnB), worker, 6)
    expect(other.judged).not.toEqual(again.judged)
  })

  it('tells how far it is', () => {
    const told: [number, number][] = []
    chanceOf(covered, worker, 3, (done, total) => told.push([done, total]))
    expect(told).toEqual([
      [1, 3],
      [2, 3],
      [3, 3],
    ])
  })

  it('where no draw has an answer there is none', () => {
    const broken = inScenario(({ feeders }) => ({
      feeders: feeders.map((it) => ({ ...it, sourceImpedance: { re: Number.NaN, im: 0 } })),
    }))
    const answer = chanceOf(momentOf(broken(earthedSite(bondOn)), leftHandOnB), worker, 2)
    expect(answer).toMatchObject({ kind: 'unsolvable' })
    expect(() => chanceOf(bare, worker, 0)).toThrow(/one draw/)
  })
})

function correlation(pairs: readonly (readonly [number, number])[]): number {
  const mean = (values: readonly number[]): number => values.reduce((sum, it) => sum + it, 0) / values.length
  const [ma, mb] = [mean(pairs.map(([a]) => a)), mean(pairs.map(([, b]) => b))]
  const sums = pairs.map(([a, b]) => [(a - ma) * (b - mb), (a - ma) ** 2, (b - mb) ** 2] as const)
  const [ab, aa, bb] = [0, 1, 2].map((k) => mean(sums.map((it) => it[k]!))) as [number, number, number]
  return ab / Math.sqrt(aa * bb)
}
