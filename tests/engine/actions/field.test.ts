/** Earth readings against the electrodes' own formula, and weather that turns. */
import { describe, expect, test } from 'vitest'
import { bodiesAt, openTimeline, runTimeline, type Scenario } from '../../../src/engine'
import { layerOf } from '../../../src/engine/hazard/bodies/layer'
import { startSite } from '../../../src/engine/site/startSite'
import { isDark, weatherAt } from '../../../src/engine/site/weather'
import { done } from '../../support/cleanStages'
import { marrowBend } from '../../support/marrowBend'
import { changed, clampOn, inScenario, standsAt, withRod } from '../hazard/sites'
import { withItem } from '../../support/placedItem'
import { readingOf, withTester } from './fieldCases'

describe('the instrument', () => {
  test('a corroded terminal adds its ohms to those of the butt, and nothing else shows it', () => {
    const [good, bad] = [readingOf(withTester(0.5)), readingOf(withTester(800))] as number[]
    // In series: the difference is that of the terminals.
    expect(bad! - good!).toBeCloseTo(799.5, 1)
  })

  test('a rod by itself: ρ/2πL · (ln 4L/a − 1) of a rod in even soil (Dwight 1936)', () => {
    const site = changed(
      withItem(withTester(1), 'ET-2', 'earth-tester', { kind: 'tarp' }),
      inScenario(() => ({ soil: { layers: [{ resistivity: 100 }] } })),
      withRod,
    )
    const { depth, at } = site.rods[0]!
    const read = done(changed(site, standsAt('gw', at.x, at.y)), 'gw', 'measure-earth', {
      with: 'ET-1',
      on: 'rod/R-1',
      values: { against: 'far-earth' },
    })
    const byHand = (100 / (2 * Math.PI * depth)) * (Math.log((4 * depth) / 0.008) - 1)
    expect(Number(read.evidence.at(-1)?.values['ohm']) / byHand).toBeCloseTo(1, 1)
  })

  test('a lead between two earths is a few milliohms, not their sum', () => {
    const site = changed(
      withTester(0.5),
      withRod,
      clampOn('E-07', 'earth', 'rod/R-1'),
      clampOn('E-07', '1', 'terminal'),
    )
    const said = { with: 'ET-1', on: 'terminal', values: { against: 'rod/R-1' } }
    // 12 m of 25 mm² copper is 8.3 mΩ and two clamps of half a milliohm: a hundredth.
    expect(done(site, 'gw', 'measure-earth', said).evidence.at(-1)?.values['ohm']).toBeCloseTo(0.01, 2)
  })

  test('one that reads wrong reads wrong, a dead one nothing', () => {
    const sound = readingOf(withTester(0.5)) as number
    expect(readingOf(withTester(0.5, 'off-on-bar'))).toBeCloseTo(0.4 * sound, 1)
    expect(readingOf(withTester(0.5, 'flat'))).toBe('test.silent')
  })
})

describe('weather that turns', () => {
  const turning = (): Scenario => ({
    ...marrowBend(),
    weatherChanges: [
      { at: 100, rain: true },
      { at: 200, thunder: true, wind: 12 },
    ],
  })

  test('is as it was until its second, and keeps what is not named', () => {
    const at = (time: number) => weatherAt({ scenario: turning(), time })
    expect(at(99)).toEqual(marrowBend().weather)
    expect(at(100)).toEqual({ ...marrowBend().weather, rain: true })
    expect(at(500)).toEqual({ wind: 12, rain: true, thunder: true })
  })

  test('ends a moment, is noticed once by who is in charge, and read by who looks', () => {
    const orders = [
      { at: 0, who: 'pic', do: 'read-order', values: { sources: [] } },
      { at: 250, who: 'pic', do: 'read-weather', values: {} },
    ]
    const timeline = runTimeline(turning(), orders)
    expect(timeline.moments.map(({ to }) => to)).toEqual(expect.arrayContaining([100, 200]))
    const told = timeline.end.evidence.filter(({ of }) => of === 'weather')
    expect(told.map(({ at, says }) => `${at} ${says}`)).toEqual([
      '100 weather.rain-begins',
      '200 weather.thunder-heard',
      '270 weather.read',
    ])
    expect(told[2]?.values).toEqual({ wind: 12, rain: 'rain', thunder: 'thunder' })
    expect(openTimeline(marrowBend()).end.evidence).toEqual([])
  })

  test('rain wets a stick that was dry', () => {
    const scenario = { ...turning(), contact: { ...turning().contact, wetStickLeakage: 1e6, stickLeakage: 1e9 } }
    const at = (time: number) => {
      const site = { ...startSite(scenario), time }
      return layerOf(site, scenario, 'S-11', 'left-hand', 0.01)
    }
    expect(at(50)).toMatchObject({ ohm: 1e9 })
    expect(at(150)).toMatchObject({ ohm: 1e6 })
    expect(bodiesAt({ ...startSite(scenario), time: 150 })).toHaveLength(4)
  })

  test('it is dark between the seconds that the scenario says, over midnight too', () => {
    const scenario = { ...marrowBend(), startsAt: 0, dark: { from: 61_200, to: 21_600 } }
    const at = (time: number): boolean => isDark({ scenario, time })
    expect([at(61_199), at(61_200), at(86_399), at(86_400 + 21_599), at(86_400 + 21_600)]).toEqual([
      false,
      true,
      true,
      true,
      false,
    ])
    expect(isDark({ scenario: marrowBend(), time: 80_000 })).toBe(false)
  })
})
