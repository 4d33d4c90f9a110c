/**
 * Opening a conductor at the pole: what either end has afterwards is the circuit's answer, and what a hand on each carries.
 * Volts across a gap that nothing bridges are those of the livening on its far side (hand calculation beside each figure).
 */
import { describe, expect, test } from 'vitest'
import { actions, believe, bodiesAt, type Order, type Site } from '../../../src/engine'
import { english, makeSpeaker } from '../../../src/text'
import { done } from '../../support/cleanStages'
import { exposureOf, storyOf, voltages } from '../hazard/sites'
import { bridged, opened, withJumper } from './gapCases'

const phaseVoltage = 11_000 / Math.sqrt(3)

/** The moment in which the jumper is being undone by hand. */
function opening(site: Site, isOff: boolean) {
  const order: Order = {
    at: site.time,
    who: 'pw',
    do: 'open-jumper',
    on: 'conductor-b',
    values: { how: 'by-hand' },
  }
  const act = actions.get('open-jumper')!
  const now = isOff ? act.joint!(site, order) : site
  return { site: now, bodies: bodiesAt(now, act.contacts!(site, order)) }
}

describe('a jumper undone at the pole', () => {
  test('without a by-pass the crossing’s voltage stands between the hands: path 8', () => {
    const found = exposureOf(storyOf(opening(withJumper(), true)), 'pw', 'across-gap')
    // The far end is at phase voltage, the near end at the site's rise of the same phase through nothing but its earths.
    expect(found.prospectiveVoltage / phaseVoltage).toBeGreaterThan(0.9)
    expect(found.judged).toBeGreaterThan(found.limit)
  })

  test('while it is still on, and by-passed, both hands are on one conductor', () => {
    const before = storyOf(opening(withJumper(), false)).exposures.find((it) => it.person === 'pw')
    expect(before?.path).not.toBe('across-gap')
    const after = exposureOf(storyOf(opening(bridged(), true)), 'pw', 'across-gap')
    // 3 m of 35 mm² copper: 17.241e-9 / 35e-6 * 3 = 1.48 mΩ, two unbrushed clamps of 10 mΩ, 70 A: 1.5 V.
    expect(after.bodyVoltage).toBeGreaterThan(1)
    expect(after.bodyVoltage).toBeLessThan(2)
    expect(after.judged).toBeLessThan(after.limit)
  })

  test('the ends come alive each by itself', () => {
    const at = voltages({ site: opened(), bodies: [] })
    expect(at('conductor-b@pole/far') / phaseVoltage).toBeCloseTo(1, 1)
    expect(at('conductor-b@pole')).toBeLessThan(100)
  })

  test('a detector on the far end feels what the near, earthed end does not have', () => {
    const site: Site = {
      ...opened(),
      livening: { id: 'clash-b', at: opened().time, cleared: false, provedOff: false },
      feedersOut: [],
    }
    const said = (on: string) => done(site, 'pw', 'test', { with: 'D-04', on }).evidence.at(-1)?.says
    expect([said('conductor-b/far'), said('conductor-b')]).toEqual(['test.indicates', 'test.silent'])
  })

  test('the crew knows whether it is on, and what it is called', () => {
    expect(believe(opened()).jumpers).toMatchObject([{ id: 'conductor-b/far', conductor: 'conductor-b', isOpen: true }])
    const speaker = makeSpeaker(english, { 'thing.conductor-b': 'Conductor B' })
    expect(speaker.say('thing.conductor-b/far')).toBe('Conductor B, far end')
    expect(speaker.say('did.clamp', { of: 'conductor-b/far', lead: 'E-07', end: '1', turns: 6 })).toContain(
      'on Conductor B, far end',
    )
  })
})
