/**
 * Jumpers taken out at another pole of the section: what lies beyond is a section of its own. The ways are worked by hand;
 * the current of a clash is the pinned one of marrow-bend, 11 kV phase over 91 Ω (pinnedFigures.test.ts).
 */
import { describe, expect, test } from 'vitest'
import { actions, believe, type Site } from '../../../src/engine'
import { findRemovedCause } from '../../../src/engine/site/liveningTraits'
import { liveVoltage } from '../../../src/engine/site/liveness'
import type { Livening } from '../../../src/engine/site/scenario'
import { done } from '../../support/cleanStages'
import { hanging, tiedBack, withPoint } from '../actions/gapCases'
import { bladesClosed, changed, earthsOn, inScenario, isolatedSite, momentOf, storyOf, voltages } from './sites'

const phaseVoltage = 11_000 / Math.sqrt(3)
const back: Livening = {
  id: 'back',
  kind: 'jumper-back',
  feeder: 'fx',
  phase: 'B',
  impedance: 0.1,
  at: 'jumpers-118',
}

const place = (): Site =>
  withPoint(
    true,
    isolatedSite(
      earthsOn,
      inScenario(({ livenings }) => ({ livenings: [...livenings, back] })),
    ),
  )

const out = (): Site => hanging(place())
const safe = (): Site => tiedBack(place())
const of = (site: Site, id: string): Livening => site.scenario.livenings.find((it) => it.id === id)!

describe('jumpers out between the pole and the crossing', () => {
  test('the crossing’s conductor lifts the piece beyond to its own voltage and the pole to nothing', () => {
    const at = voltages(momentOf(out()))
    expect(at('conductor-b@crossing') / phaseVoltage).toBeCloseTo(1, 2)
    expect(at('conductor-b@jumpers-118/far') / phaseVoltage).toBeCloseTo(1, 2)
    // Nothing joins the pole to it: no coupling between two pieces of the section that follow each other.
    expect(at('conductor-b@pole')).toBeLessThan(1)
    expect(at('conductor-b@jumpers-118')).toBeLessThan(1)
  })

  test('a tail that hangs swings back: the same 70 A as without the gap', () => {
    const story = storyOf(momentOf(out()), 'back')
    const clash = storyOf(momentOf(place()), 'clash-b')
    // 0.1 Ω more in a loop of 91 Ω.
    expect(story.liveCurrent / clash.liveCurrent).toBeGreaterThan(0.998)
    expect(story.liveCurrent).toBeLessThan(clash.liveCurrent)
  })

  test('what stands, and what the tails and a guard take away', () => {
    expect(findRemovedCause(place(), back)).toBe('jumpers-on')
    expect(findRemovedCause(out(), back)).toBeUndefined()
    expect(findRemovedCause(safe(), back)).toBe('tails-tied-back')
    expect(findRemovedCause({ ...out(), guardedFrom: ['fx'] }, back)).toBe('crossing-guarded')
    expect(findRemovedCause(out(), of(out(), 'clash-b'))).toBeUndefined()
    expect(findRemovedCause(safe(), of(safe(), 'clash-b'))).toBe('jumpers-out')
    expect(findRemovedCause(safe(), of(safe(), 'clash-ab'))).toBe('jumpers-out')
  })

  test('a feeder behind a closed switch beyond the gap does not reach the pole, one before it does', () => {
    const { switches } = place().scenario
    const [beyond, before] = [switches.find((it) => it.along > 20)!, switches.find((it) => it.along < 0)!]
    const fed = (site: Site, at: string) => changed(site, bladesClosed(at, 'A', 'B', 'C'))
    expect(liveVoltage(fed(place(), beyond.id), 'conductor-b')).toBeCloseTo(phaseVoltage, 3)
    expect(liveVoltage(fed(out(), beyond.id), 'conductor-b')).toBe(0)
    expect(liveVoltage(fed(out(), before.id), 'conductor-b')).toBeCloseTo(phaseVoltage, 3)
    // The circuit agrees with the blades.
    expect(voltages(momentOf(fed(out(), beyond.id)), 'none')('conductor-b@pole')).toBeLessThan(1)
  })

  test('an earth beyond the gap earths nothing here', () => {
    const earth = { item: 'X', resistance: 1 }
    const atEnd = (site: Site): Site => {
      const end = site.scenario.switches.find((it) => it.along > 20)!.id
      return { ...site, switches: { ...site.switches, [end]: { ...site.switches[end]!, earth } } }
    }
    const loop = (site: Site): number => storyOf(momentOf(site), 'back').liveCurrent
    // 1 Ω beside the site's 91 Ω takes nearly all of it: of 6351 V over some 4 Ω of line and source and 6.35 Ω of neutral.
    expect(loop(atEnd(out()))).toBeGreaterThan(400)
    // Through the near piece alone, with no fault beyond, the earth there is not in the loop.
    const near = out().scenario.switches.find((it) => it.along < 0)!.id
    const lit = changed(atEnd(out()), bladesClosed(near, 'B'))
    const joined = changed(atEnd(place()), bladesClosed(near, 'B'))
    const current = (site: Site): number => storyOf(momentOf(site), 'none').liveCurrent
    expect(current(lit)).toBeLessThan(current(joined) / 3)
  })

  test('on the other side of the pole it cuts off what lies there', () => {
    const other = changed(
      isolatedSite(earthsOn),
      inScenario(({ control }) => ({
        sectionJumpers: [{ id: 'jumpers-116', number: 'P116', along: -60 }],
        control: { ...control, takesJumpersOut: true },
      })),
    )
    const gone = done(other, 'pic', 'ask-jumpers-out', { on: 'jumpers-116', values: { message: 'jumpers-out' } })
    const before = gone.scenario.switches.find((it) => it.along < -60)!
    const at = voltages(momentOf(changed(gone, bladesClosed(before.id, 'B'))), 'none')
    expect(at('conductor-b@jumpers-116/far') / phaseVoltage).toBeCloseTo(1, 2)
    expect(at('conductor-b@pole')).toBeLessThan(1)
    expect(findRemovedCause(gone, of(gone, 'clash-b'))).toBeUndefined()
  })

  test('the crew may choose it, and knows what it was told and saw', () => {
    expect(believe(out()).sheet.place.sectionJumpers).toEqual([{ id: 'jumpers-118', number: 'P118', along: 20 }])
    const spec = actions.get('answer-livening')!.values!['control']!
    const choices = (site: Site) => (spec.kind === 'choice' ? spec.of(site) : [])
    expect(choices(place())).toContain('jumpers-out')
    expect(choices(isolatedSite())).toEqual(['block-reclose', 'nothing', 'take-out'])
  })
})
