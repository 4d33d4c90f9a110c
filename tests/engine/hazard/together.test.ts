/**
 * People in one circuit, and joints that are being made: each case with the direction, or the figure by hand, that must
 * come out. Phase voltage 6351 V, rod 81.2 Ω at 5.7 kV, a body above 1 kV 575 Ω hand to hand (5 %, dry).
 */
import { describe, expect, it } from 'vitest'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import { stampInstant } from '../../../src/engine/hazard/stamped/stampInstant'
import { sweep } from '../../../src/engine/hazard/sweep'
import { magnitude, subtract } from '../../../src/engine/math/complex'
import { factor, isUnsolvable } from '../../../src/engine/physics/network'
import type { Site } from '../../../src/engine/site/site'
import type { LiveMoment } from '../../../src/engine/hazard/liven'
import { actions } from '../../../src/engine/actions/registry'
import { runTimeline } from '../../../src/engine/timeline/fold'
import {
  bondOn,
  changed,
  clampOn,
  coverOn,
  defect,
  earthedSite,
  exposureOf,
  isolatedSite,
  leftHandOnB,
  momentOf,
  othersBooted,
  person,
  standsAt,
  storyOf,
  touching,
  withRod,
  workerAloft,
} from './sites'
import { recorded } from '../../support/rules/recorded'

const gwOnLead = touching('gw', 'right-hand', { kind: 'lead', item: 'E-07', end: 'earth' })
const leatherShoes = person('gw', { wears: [] })

describe('a clamp going on', () => {
  const earthEnd = isolatedSite(
    withRod,
    clampOn('E-07', 'earth', 'rod/R-1'),
    othersBooted,
    workerAloft,
    leatherShoes,
    standsAt('gw', -3.5, 0.6),
  )
  const touchingJaw = changed(earthEnd, clampOn('E-07', '1', 'conductor-b'))
  const bodies = momentOf(earthEnd, gwOnLead).bodies

  it('before the jaw touches nothing reaches who holds the lead, then 5.6 A: 3.5 kV over body and ground', () => {
    const before = storyOf({ site: earthEnd, bodies }).exposures.find((it) => it.person === 'gw')
    expect(before?.bodyCurrent ?? 0).toBeLessThan(0.001)
    const found = exposureOf(storyOf({ site: touchingJaw, bodies }), 'gw')
    // hand and two feet: 0.75 of 575 Ω; two discs of 100/(4·0.08) = 313 Ω in parallel, each raising the other a little
    const ohm = 0.75 * 575 + 313 / 2 + 30
    // the line behind it gives way a little too: at most a tenth less
    expect(found.bodyCurrent / (found.prospectiveVoltage / ohm)).toBeGreaterThan(0.9)
    expect(found.bodyCurrent / (found.prospectiveVoltage / ohm)).toBeLessThan(1)
    expect(found.bodyCurrent).toBeCloseTo(5.6, 0)
  })

  it('the sweep takes the moment both ways and keeps the worse', () => {
    const { scenario } = earthEnd
    const moment = { from: 5, site: earthEnd, bodies }
    const worst = (also: readonly Site[]) =>
      sweep({ scenario, moments: [{ ...moment, also }] }).worst.find((it) => it.person === 'gw')
    expect(worst([])?.verdict ?? 'below').toBe('below')
    expect(worst([touchingJaw])).toMatchObject({ at: 5, path: 'hand-lead-feet', verdict: 'above' })
  })

  it('every act on a joint says what it changes, and the recorded run is in both states while it lasts', () => {
    const changing = [
      ...['clamp', 'clamp-by-hand', 'unclamp', 'unclamp-by-hand', 'clamp-earth-end', 'unclamp-earth-end'],
      ...['bond-metal', 'bond-line', 'unbond-metal', 'unbond-line', 'drive-rod'],
    ]
    for (const id of changing) expect(actions.get(id)?.joint, id).toBeDefined()
    const { scenario, orders } = recorded('clean')
    const { entries, moments } = runTimeline(scenario, orders)
    for (const entry of entries.filter((it) => it.outcome === 'done' && changing.includes(it.order.do))) {
      const during = moments.filter((it) => it.busy.includes(entry.index))
      expect(during.length, entry.order.do).toBeGreaterThan(0)
      const { clamps, rods } = entry.after
      for (const { also = [] } of during) {
        const made = also.map((it) => ({ clamps: it.clamps, rods: it.rods }))
        expect(made, entry.order.do).toContainEqual({ clamps, rods })
      }
    }
  })
})

describe('a lead that no clamp holds between two people', () => {
  // the worker's bare right hand on its end 1, the left on B; the ground worker in shoes holds its other end
  const site = isolatedSite(workerAloft, coverOn(), othersBooted, leatherShoes, standsAt('gw', -3.5, 0.6))
  const endInHand = touching('pw', 'right-hand', { kind: 'lead', item: 'E-07', end: '1' })

  it('both are in series: 6351 V over a hand-to-hand body, 0.75 of another and the ground under two feet', () => {
    const story = storyOf(momentOf(site, leftHandOnB, endInHand, gwOnLead))
    const ohm = 575 + 0.75 * 575 + 313 / 2 + 30
    for (const id of ['pw', 'gw']) {
      const found = exposureOf(story, id)
      expect(found.bodyCurrent, id).toBeGreaterThan(0.9 * (6_351 / ohm))
      expect(found.bodyCurrent, id).toBeLessThan(1.1 * (6_351 / ohm))
    }
    expect(exposureOf(story, 'pw').path).toBe('hand-hand')
    // with the ground worker's hand away the lead comes to the conductor's voltage through the other's body
    expect(exposureOf(story, 'gw').prospectiveVoltage).toBeGreaterThan(0.95 * 6_351)
  })

  it('one of them alone closes nothing', () => {
    const pw = exposureOf(storyOf(momentOf(site, leftHandOnB, endInHand)), 'pw')
    expect(pw.bodyCurrent).toBeLessThan(0.001)
    const gw = storyOf(momentOf(site, gwOnLead)).exposures.find((it) => it.person === 'gw')
    expect(gw?.bodyCurrent ?? 0).toBeLessThan(0.001)
  })

  it('is the circuit with both stamped in: each contact’s current is that of its element', () => {
    checkStamped(momentOf(site, leftHandOnB, endInHand, gwOnLead))
  })
})

describe('people feel each other', () => {
  const noEarths = isolatedSite(workerAloft, othersBooted, leatherShoes, standsAt('gw', -0.2, 0.3))

  it('who stands at the butt gets a step from the current that another’s body puts into it', () => {
    // B touched with a bare thigh and no earths: some 7 A through about 50 Ω of butt raise it by hundreds of volts
    const story = storyOf(momentOf(noEarths, leftHandOnB))
    const worker = exposureOf(story, 'pw')
    expect(worker.bodyCurrent).toBeGreaterThan(5)
    const away = storyOf(momentOf(noEarths)).exposures.find((it) => it.person === 'gw')
    expect(away?.bodyCurrent ?? 0).toBeLessThan(0.001)
    expect(exposureOf(story, 'gw').bodyCurrent).toBeGreaterThan(0.05)
  })

  it('the answer is the circuit with everybody stamped in', () => {
    checkStamped(momentOf(noEarths, leftHandOnB))
    checkStamped(
      momentOf(
        earthedSite(bondOn, standsAt('gw', -3.5, 0.6), leatherShoes, defect('BT-42', 'nail-hole-left')),
        leftHandOnB,
        gwOnLead,
      ),
    )
  })
})

describe('a stick in both hands', () => {
  const onB = { kind: 'conductor', id: 'conductor-b' } as const
  const current = (...hands: ('left-hand' | 'right-hand')[]) => {
    const site = isolatedSite(workerAloft, othersBooted, defect('S-11', 'wet-core'))
    const active = hands.map((hand) => touching('pw', hand, onB, 'S-11'))
    return exposureOf(storyOf(momentOf(site, ...active)), 'pw').bodyCurrent
  }

  it('is one resistance: 6.35 kV over 500 kΩ is 13 mA, with one hand as with two', () => {
    const one = current('left-hand')
    expect(one).toBeCloseTo(6_351 / 500_000, 3)
    expect(current('left-hand', 'right-hand') / one).toBeCloseTo(1, 2)
  })
})

function checkStamped(moment: LiveMoment): void {
  const instant = stampInstant(moment, 'clash-b', declaredCorner)
  if (isUnsolvable(instant)) throw new Error(instant.node)
  const whole = factor(instant.circuit)
  if (isUnsolvable(whole)) throw new Error(whole.node)
  const solution = whole.solve()
  if (isUnsolvable(solution)) throw new Error(solution.node)
  let most = 0
  for (const { contacts } of instant.bodies) {
    for (const { element, current } of contacts) {
      const apart = magnitude(subtract(solution.current(element), current))
      expect(apart, element).toBeLessThan(1e-4 * magnitude(current) + 1e-9)
      most = Math.max(most, magnitude(current))
    }
  }
  expect(most).toBeGreaterThan(1)
}

describe('feet beside a rod', () => {
  const bare = (x: number, y: number) => {
    const site = earthedSite(person('gw', { wears: [] }), standsAt('gw', x, y))
    return exposureOf(storyOf(momentOf(site)), 'gw').prospectiveVoltage
  }

  it('a stance across the rod is not a stance on level ground: one foot at it, the other outward', () => {
    // beside a rod the ground falls by half its rise within some decimetres: at the rod it is the steepest of all
    expect(bare(-3.5, 0.1)).toBeGreaterThan(bare(-3.5, 1))
    expect(bare(-3.5, 0)).toBeGreaterThan(bare(-3.5, 1))
    expect(bare(-3.5, 0)).toBeGreaterThan(1_000)
  })
})
