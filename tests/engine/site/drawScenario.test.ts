import { describe, expect, it } from 'vitest'
import { drawScenario, isUnsound, startSite, type Scenario } from '../../../src/engine'
import { marrowBend, marrowBendBase } from '../../support/marrowBend'

const base = marrowBendBase()
const seeds = Array.from({ length: 600 }, (_, i) => i + 100)
const drawn = (scenario: Scenario): readonly string[] =>
  scenario.items.flatMap((item) => {
    const before = base.items.find((it) => it.id === item.id)?.defects ?? []
    return item.defects.filter((id) => !before.includes(id)).map((id) => `${item.id} ${id}`)
  })

describe('drawScenario', () => {
  it('gives seed 1 of practise its two defects and its livening', () => {
    const scenario = marrowBend(1)
    expect(drawn(scenario)).toEqual(['S-12 out-of-test', 'BT-42 nail-hole-left'])
    expect(scenario.visible).toEqual({ trigger: 'hand-on-conductor', livening: 'clash-b', fallback: 4000 })
    const stick = scenario.items.find((it) => it.id === 'S-12')
    expect(String(stick?.label.due) < scenario.date).toBe(true)
  })

  it('gives the same variant for the same seed', () => {
    expect(JSON.stringify(marrowBend(77, 'assess'))).toBe(JSON.stringify(marrowBend(77, 'assess')))
  })

  it('draws none to three of at least twelve possible defects, never two of one type', () => {
    const counts = new Map<number, number>()
    const seen = new Set<string>()
    for (const seed of seeds) {
      const defects = drawn(drawScenario(base, seed, 'practise'))
      counts.set(defects.length, (counts.get(defects.length) ?? 0) + 1)
      defects.forEach((it) => seen.add(it))
      const types = defects.map((it) => base.items.find((item) => it.startsWith(`${item.id} `))?.type)
      expect(new Set(types).size).toBe(types.length)
    }
    expect([...counts.keys()].sort()).toEqual([0, 1, 2, 3])
    expect(seen.size).toBeGreaterThanOrEqual(12)
  })

  it('draws phase and trigger by seed, and in assess leaves about one seed in three quiet', () => {
    const variants = seeds.map((seed) => drawScenario(base, seed, 'assess').visible)
    const triggers = new Set(variants.flatMap((it) => (it ? [it.trigger] : [])))
    const livenings = new Set(variants.flatMap((it) => (it ? [it.livening] : [])))
    expect(triggers.size).toBe(6)
    expect([...livenings].sort()).toEqual(['clash-a', 'clash-b', 'clash-c'])
    // 600 draws of chance 1/3: mean 200, standard deviation 11.5; four of them on each side.
    const quiet = variants.filter((it) => it === null).length
    expect(quiet).toBeGreaterThan(154)
    expect(quiet).toBeLessThan(246)
    expect(seeds.some((seed) => drawScenario(base, seed, 'practise').visible === null)).toBe(false)
  })

  it('draws the gear alike for both purposes: the event has a stream of its own', () => {
    for (const seed of seeds.slice(0, 50)) {
      expect(drawn(drawScenario(base, seed, 'practise'))).toEqual(drawn(drawScenario(base, seed, 'assess')))
    }
  })

  it('always leaves a sound item of each type that the job needs', () => {
    for (const seed of seeds.slice(0, 200)) {
      const site = startSite(drawScenario(base, seed, 'practise'))
      for (const type of new Set(Object.values(site.items).map((item) => item.type))) {
        const all = Object.values(site.items).filter((item) => item.type === type)
        expect(
          all.some((item) => !isUnsound(site, item.id)),
          `${seed} ${type}`,
        ).toBe(true)
      }
    }
  })
})
