/** Fuses in whole stories: each opens its own phase; a carrier put back in. */
import { describe, expect, it } from 'vitest'
import { magnitude } from '../../../../src/engine/math/complex'
import type { Feeder, Livening } from '../../../../src/engine/site/scenario'
import { feedersWith, inverse, line, phaseVoltage } from '../protectionSites'
import { bondOn, changed, coverOn, earthedSite, inScenario, unlocked, without, type Change } from '../sites'

/** Relays that see nothing of the faults here. */
const deaf: Partial<Feeder> = {
  earthFault: { curve: 'definite-time', pickup: 50_000, multiplier: 1 },
  overcurrent: { curve: 'definite-time', pickup: 50_000, multiplier: 1 },
}
const alsoLivening = (livening: Livening): Change =>
  inScenario(({ livenings }) => ({ livenings: [...livenings, livening] }))

describe('fuses', () => {
  const fused = (rating: number) => feedersWith({ ...deaf, fuses: { link: 'K', rating } })

  it('a 20 K melts at 70 A by the line from 47 A at 300 s to 71 A at 10 s, arcs one period, and that is the end', () => {
    const story = line(earthedSite(fused(20)))
    const slope = Math.log(30) / Math.log(71 / 47)
    const melts = 300 * (story.liveCurrent / 47) ** -slope
    expect(story.liveCurrent).toBeGreaterThan(65)
    expect(story.liveCurrent).toBeLessThan(71)
    expect(story.duration / (melts + 0.02)).toBeCloseTo(1, 3)
    expect(story).toMatchObject({ cleared: true, clearedBy: 'fuse' })
  })

  it('a 40 K does not melt for 70 A: nothing cleared it', () => {
    expect(line(earthedSite(fused(40)))).toMatchObject({ cleared: false, clearedBy: 'nothing', duration: 60 })
  })

  it('three phases closed onto a complete set: all three 65 K go within 0.1 s at 1.6 kA (1100 A melt in 0.1 s)', () => {
    const story = line(earthedSite(bondOn, coverOn(), unlocked('switch-27'), fused(65)), 'switch-27-closed')
    const melts = 0.1 * (1_100 / 1_600) ** 2
    expect(story.clearedBy).toBe('fuse')
    expect(story.duration).toBeGreaterThan(0.85 * melts + 0.02)
    expect(story.duration).toBeLessThan(1.15 * melts + 0.02)
  })

  it('each opens its own phase only: the phase without a clamp stays alive at full voltage', () => {
    const oneOff = earthedSite(bondOn, coverOn(), unlocked('switch-27'), fused(65), without('E-07', '3'))
    const story = line(oneOff, 'switch-27-closed')
    expect(story).toMatchObject({ cleared: false, clearedBy: 'nothing', duration: 60 })
    const last = story.phases[story.phases.length - 1]!
    expect(magnitude(last.view.voltage('conductor-c@pole')) / phaseVoltage).toBeCloseTo(1, 2)
    expect(magnitude(last.view.voltage('conductor-a@pole')) / phaseVoltage).toBeLessThan(0.05)
    expect(last.from).toBeLessThan(0.2)
  })
})

describe('D4 a fuse carrier is put back in', () => {
  const carriers = (rating: number): Change =>
    inScenario(({ switches }) => ({
      switches: switches.map((it) => (it.id === 'switch-27' ? { ...it, fuses: { link: 'K', rating } as const } : it)),
    }))
  const carrierIn = alsoLivening({ id: 'carrier-in', kind: 'fuse-carrier', switch: 'switch-27', phase: 'B' })
  const site = (rating: number) => earthedSite(coverOn(), carriers(rating), carrierIn, feedersWith(deaf))

  it('one phase through its fuse until that has blown', () => {
    const story = line(changed(site(20), unlocked('switch-27')), 'carrier-in')
    expect(story).toMatchObject({ cleared: true, clearedBy: 'fuse' })
    const melts = 300 * (story.liveCurrent / 47) ** (-Math.log(30) / Math.log(71 / 47))
    expect(story.duration / (melts + 0.02)).toBeCloseTo(1, 3)
    expect(story.phases[0]!.view.circuit.links).toEqual(['switch-27/blade-B'])
  })

  it('locked out of reach, it does not happen', () => {
    expect(line(site(20), 'carrier-in').clearedBy).toBe('not-live')
  })

  it('the feeder’s relay is first where the fuse is too large: 70 A in 2.5 s', () => {
    const slow = earthedSite(coverOn(), carriers(65), carrierIn, unlocked('switch-27'))
    const story = line(slow, 'carrier-in')
    expect(story.clearedBy).toBe('earth-fault')
    expect(story.duration).toBeCloseTo(inverse(40, 0.2, story.liveCurrent) + 0.06, 2)
  })
})
