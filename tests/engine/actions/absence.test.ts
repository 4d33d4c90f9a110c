/** A break in which nobody is there, and what a detector that shows strength tells. Common practice, no source. */
import { describe, expect, test } from 'vitest'
import { believe, type Site } from '../../../src/engine'
import { before, done } from '../../support/cleanStages'
import { clampResistance } from '../../../src/engine/hazard/circuit/clampSeat'
import { pickedUpVoltage } from '../../../src/engine/hazard/pickedUp'
import { withItem } from '../../support/placedItem'
import { besides } from '../../support/networks'
import { bladesClosed, changed, inScenario, person } from '../hazard/sites'
import { everybodyAway } from './peopleCases'

const on = 'conductor-a'
const atWork = (whileAway: Site['scenario']['whileAway']): Site =>
  changed(
    before('untie'),
    inScenario(() => ({ ...(whileAway ? { whileAway } : {}) })),
  )
const seatOn = (site: Site): number =>
  clampResistance(site, site.clamps.find((it) => it.on === on && it.lead === 'E-07')!)

describe('a break', () => {
  test('in which nobody is there: a clamp is turned loose, which nobody knows until it is pulled', () => {
    const site = atWork({ loosens: on, takesBarrier: true })
    const gone = everybodyAway(site)
    expect(gone.clamps).toEqual(site.clamps)
    const back = done(gone, 'pic', 'come-back')
    expect(back.barrier).toBeNull()
    expect(believe(back).clamps).toEqual(believe(gone).clamps)
    // a good seat against a hand-tight one: 0.5 and 5 mΩ (the scenario's and the model's, common practice)
    expect(seatOn(back)).toBeGreaterThan(5 * seatOn(site))
    const up = changed(back, person('pw', site.persons['pw']!), (it) => ({ ...it, away: [] }))
    const pulled = done(up, 'pw', 'tug', { on })
    expect(pulled.evidence.at(-1)?.says).toBe('feel.clamp-turns')
    const firm = done(pulled, 'pw', 'tighten', { on, values: { turns: 3 } })
    expect(seatOn(firm)).toBeCloseTo(seatOn(site), 6)
  })

  test('in which one stays: nothing is touched', () => {
    const site = changed(
      atWork({ loosens: on, takesBarrier: true }),
      person('gw', { place: { kind: 'ground', at: { x: -9, y: 9 } } }),
    )
    const back = done(done(site, 'gw', 'leave-site'), 'gw', 'come-back')
    expect([back.clamps, back.barrier]).toEqual([site.clamps, site.barrier])
  })

  test('what is seen again from the ground after it', () => {
    const back = done(everybodyAway(atWork({ takesBarrier: true })), 'pic', 'come-back')
    expect(done(back, 'pic', 'look-over-again').evidence.at(-2)?.says).toBe('see.no-barrier')
  })
})

describe('a detector that shows strength', () => {
  /** What the circuit beside it lifts the conductor to; the band begins above it, and it is lit from 0.45 of that. */
  const lifted = Number(
    pickedUpVoltage(
      changed(before('test', { on: 'conductor-b' }), inScenario(besides()), bladesClosed('switch-27')),
      'conductor-b',
    ),
  )
  const aloft = (label: Record<string, string>, change: Parameters<typeof changed>[1]): Site =>
    withItem(
      changed(before('test', { on: 'conductor-b' }), inScenario(besides()), change),
      'D-20',
      'hv-detector',
      { kind: 'person', person: 'pw' },
      { label: { ...label, bandLow: 1.5 * lifted } },
    )
  const says = (site: Site): unknown =>
    done(changed(site, person('pw', { holds: ['S-11', 'D-20'] })), 'pw', 'test', {
      with: 'D-20',
      on: 'conductor-b',
    }).evidence.at(-1)?.says

  test('tells a line that a circuit beside it lifts from one that is fed; another only lights', () => {
    const fed = bladesClosed('switch-27', 'B')
    expect(lifted).toBeGreaterThan(100)
    expect(1.5 * lifted).toBeLessThan(6350)
    expect(says(aloft({ shows: 'strength' }, fed))).toBe('test.indicates')
    expect(says(aloft({}, fed))).toBe('test.indicates')
    const beside = bladesClosed('switch-27')
    expect([says(aloft({}, beside)), says(aloft({ shows: 'strength' }, beside))]).toEqual([
      'test.indicates',
      'test.indicates-slowly',
    ])
  })
})
