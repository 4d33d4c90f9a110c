/**
 * Lines of one and of two conductors. A single wire with earth return by one loop: 12.7 kV behind 20 + j61 Ω of isolating
 * transformer, 2 Ω at the station, 4.6 km of wire with earth return, the rod of the site.
 */
import { describe, expect, it } from 'vitest'
import { section } from '../../../src/engine/hazard/circuit/section'
import { supply } from '../../../src/engine/hazard/circuit/supply'
import { solveInstant } from '../../../src/engine/hazard/instant'
import { add, complex, magnitude, scale } from '../../../src/engine/math/complex'
import { believe } from '../../../src/engine'
import { allThings } from '../../../src/engine/actions/things'
import { liveVoltage } from '../../../src/engine/site/liveness'
import { startSite } from '../../../src/engine/site/startSite'
import { marrowBend } from '../../support/marrowBend'
import { singleWire, spur } from '../../support/networks'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import {
  bladesClosed,
  clampOn,
  exposureOf,
  inScenario,
  isolatedSite,
  leftHandOnB,
  momentOf,
  othersBooted,
  sharedCache,
  storyOf,
  touching,
  unlocked,
  voltages,
  withRod,
  workerAloft,
  type Change,
} from './sites'

/** Modified Carson in 300 Ω·m at 50 Hz, ohm per metre: De = 658.87 √(300/50). */
const ownImpedance = complex(
  0.0006 + (2 * Math.PI * 50 * 4e-7 * Math.PI) / 8,
  50 * 4e-7 * Math.PI * Math.log((658.87 * Math.sqrt(6)) / 0.0034),
)

describe('one wire, the earth its return', () => {
  const wire = inScenario(singleWire)
  const rodOn = [withRod, clampOn('E-07', 'earth', 'rod/R-1')] as const
  const site = (...changes: readonly Change[]) => isolatedSite(wire, workerAloft, othersBooted, ...changes)
  const loop = add(scale(ownImpedance, 4_600), complex(20 + 2 + 81.2, 61))

  it('earthed and closed onto: one loop through wire, rod and the station’s earth', () => {
    const story = storyOf(
      momentOf(site(...rodOn, clampOn('E-07', '1', 'conductor-b'), bladesClosed('switch-27', 'B'))),
      'none',
    )
    expect(story.liveCurrent / (12_700 / magnitude(loop))).toBeCloseTo(1, 2)
    expect(story.siteRise / ((81.2 * 12_700) / magnitude(loop))).toBeCloseTo(1, 2)
    expect(story.clearedBy).toBe('earth-fault')
  })

  it('without earths it stands at its full voltage, stated to earth', () => {
    const at = voltages(momentOf(site(bladesClosed('switch-27', 'B'))), 'none')
    expect(at('conductor-b@pole') / 12_700).toBeCloseTo(1, 2)
    expect(liveVoltage(site(bladesClosed('switch-27', 'B')), 'conductor-b')).toBe(12_700)
  })

  it('closed by mistake: one blade, and the worker in the loop', () => {
    const hands = momentOf(site(unlocked('switch-27')), leftHandOnB)
    const worker = exposureOf(storyOf(hands, 'switch-27-closed'), 'pw')
    // half a body of 575 Ω hand to hand, 200 Ω of concrete and some 50 Ω of butt against hundreds of ohm of loop
    expect(worker.bodyCurrent).toBeGreaterThan(10)
    expect(worker.zone).toBe('AC-4.3')
  })

  it('floats on its own capacitance when nothing is joined to it: solvable, at nothing', () => {
    const answer = solveInstant(momentOf(site()), 'none', declaredCorner, { cache: sharedCache })
    expect(answer.kind).toBe('instant')
    expect(voltages(momentOf(site()), 'none')('conductor-b@pole')).toBeLessThan(1)
  })

  it('there is no other conductor anywhere in its elements, and no blade where there is none', () => {
    const scenario = { ...marrowBend(1), ...singleWire(marrowBend(1)) }
    const written = JSON.stringify([section(scenario), supply(scenario, scenario.feeders[0]!)])
    expect(written).toContain('conductor-b@pole')
    expect(written).not.toMatch(/conductor-[ac]|-A"|-C"/)
    const start = startSite(scenario)
    expect(start.switches['switch-27']?.blades).toEqual({ A: 'open', B: 'closed', C: 'open' })
    expect(believe(start).conductors.map((it) => it.id)).toEqual(['conductor-b'])
    expect(allThings(start).filter((it) => it.startsWith('switch-27'))).toEqual(['switch-27', 'switch-27/B'])
  })
})

describe('a spur of two conductors', () => {
  const two = inScenario(spur)
  const set: Change = (site) =>
    [
      withRod,
      clampOn('E-07', 'earth', 'rod/R-1'),
      clampOn('E-07', '1', 'conductor-a'),
      clampOn('E-07', '2', 'conductor-c'),
    ].reduce((now, on) => on(now), site)
  const site = (...changes: readonly Change[]) => isolatedSite(two, workerAloft, othersBooted, set, ...changes)

  it('closed onto a complete set: phase to phase, E(A) - E(C) over twice the loop; the site rises to half a phase', () => {
    const story = storyOf(momentOf(site(unlocked('switch-27'))), 'switch-27-closed')
    // own less mutual impedance, 1.5 m apart, 4.6 km; De cancels
    const pair = complex(0.0006, 50 * 4e-7 * Math.PI * Math.log(1.5 / 0.0034))
    const one = add(scale(pair, 4_600), complex(0.12, 1.2))
    const current = 11_000 / (2 * magnitude(one))
    // the set's cable between A and C, about a milliohm a metre, and what goes to earth
    expect(story.liveCurrent / current).toBeCloseTo(1, 1)
    expect(story.clearedBy).toBe('overcurrent')
    // (E(A) + E(C))/2 is half of phase voltage; the rod takes it through the neutral's 6.35 Ω
    expect(story.siteRise / (11_000 / Math.sqrt(3))).toBeGreaterThan(0.4)
    expect(story.siteRise / (11_000 / Math.sqrt(3))).toBeLessThan(0.5)
  })

  it('one of the two left off: at about 1.5 times phase voltage to the other', () => {
    const off: Change = (it) => ({ ...it, clamps: it.clamps.filter((clamp) => clamp.end !== '2') })
    const hands = [
      touching('pw', 'left-hand', { kind: 'conductor', id: 'conductor-a' }),
      touching('pw', 'right-hand', { kind: 'conductor', id: 'conductor-c' }),
    ]
    const story = storyOf(momentOf(site(off, unlocked('switch-27')), ...hands), 'switch-27-closed')
    const worker = exposureOf(story, 'pw')
    expect(worker.path).toBe('hand-hand')
    // A held near 0.9 of its voltage by 81 Ω of rod, C at its own: between √3 and what the rise leaves of it
    expect(worker.prospectiveVoltage / (11_000 / Math.sqrt(3))).toBeGreaterThan(1.5)
    expect(worker.prospectiveVoltage / (11_000 / Math.sqrt(3))).toBeLessThan(1.8)
  })
})
