/** What a lead has to stand, by hand from the values of the sheet, and the section that asks for. */
import { describe, expect, it } from 'vitest'
import { drawScenario, type Scenario } from '../../../src/engine'
import { askedArea, faultDuties } from '../../../src/engine/site/faultDuty'
import { scenarioBase } from '../../support/record/shelf'

const place = (slug: string): Scenario => drawScenario(scenarioBase(slug), 1, 'practise')
const highfell = place('highfell-crossing')
const dutyOf = (scenario: Scenario, id: string) => faultDuties(scenario).find(({ feeder }) => feeder === id)!

describe('the duty of a feeder at the work', () => {
  it('between conductors: the crossing 33 kV circuit', () => {
    // Flat row, 1.2 m: mean distance 1.2 · ∛2 = 1.512 m, j0.0628 ln(1.512/0.0058) = j0.350 Ω/km beside 0.2 Ω/km, 1.5 km;
    // 45 m of section 0.6 + j0.365 Ω/km; 0.1 + j1.3 Ω of source: 0.427 + j1.841 Ω, 1.890 Ω; 19 053 V.
    const { between, shots } = dutyOf(highfell, 'fx')
    expect(between.current / (19_053 / 1.89)).toBeCloseTo(1, 2)
    // IEC 60255-151 A: 0.2 · 0.14/(16.8^0.02 - 1) = 0.482 s, and 0.06 s of breaker
    expect(between.time).toBeCloseTo(0.542, 2)
    expect(shots).toBe(3)
  })

  it('to earth: the neutral resistor takes most of it', () => {
    // 10 Ω + 0.5 Ω of station earth + source + line with earth return (0.25 + j0.75 Ω/km): about 11 + j2.5 Ω
    const { toEarth } = dutyOf(highfell, 'fx')
    expect(toEarth.current).toBeGreaterThan(1600)
    expect(toEarth.current).toBeLessThan(1750)
  })

  it('a single wire has no other fault than to earth; where the neutral is not earthed there is none', () => {
    const wire = dutyOf(place('bellweather-farm'), 's3')
    expect(wire.between).toEqual(wire.toEarth)
    const coil = dutyOf(place('coldmere-col'), 'f8')
    expect(coil.toEarth).toEqual({ current: 0, time: 0 })
    expect(coil.between.current).toBeGreaterThan(1000)
  })

  it('what its relay does not see lasts to the horizon; a fuse may be quicker than the relay', () => {
    const feeders = highfell.feeders.map((it) => ({ ...it, overcurrent: { ...it.overcurrent, pickup: 20_000 } }))
    expect(dutyOf({ ...highfell, feeders }, 'fx').between.time).toBe(highfell.horizon)
    const fused = feeders.map((it) => ({ ...it, fuses: { link: 'K' as const, rating: 100 } }))
    // a 100 K link melts below 0.1 s at 10 kA (ANSI C37.42); with one period of arc
    expect(dutyOf({ ...highfell, feeders: fused }, 'fx').between.time).toBeLessThan(0.1)
  })
})

describe('the section asked for', () => {
  it('25 mm² is too thin under the 33 kV circuit and 70 is not, even with all shots', () => {
    // 10.08 kA √0.542 s/199.4 A√s per mm² = 37.2; three shots √3 of it
    const { area, duty } = askedArea(highfell, 'conductors')
    expect(area).toBeCloseTo(37.2, 1)
    expect(duty?.feeder).toBe('fx')
    expect(askedArea(highfell, 'conductors', ({ shots }) => shots).area / area).toBeCloseTo(Math.sqrt(3), 9)
  })

  it('without the crossing the own feeder asks, and with none in service nothing does', () => {
    const own = askedArea(highfell, 'conductors', ({ feeder }) => (feeder === 'fx' ? 0 : 1))
    expect(own.duty?.feeder).toBe('f1')
    // 1.586 kA √0.561 s/199.4
    expect(own.area).toBeCloseTo(5.96, 1)
    expect(askedArea(highfell, 'conductors', () => 0)).toEqual({ duty: undefined, area: 0 })
  })

  it('a bond on the metalwork carries the fault to earth only', () => {
    expect(askedArea(highfell, 'metalwork').area).toBeLessThan(askedArea(highfell, 'conductors').area / 5)
  })
})
