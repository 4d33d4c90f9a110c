/** When the visible livening strikes, what prevents it, what it leaves. Conditions are those of the design. */
import { describe, expect, test } from 'vitest'
import {
  extendTimeline,
  openTimeline,
  runTimeline,
  triggers,
  type OpenTimeline,
  type Order,
  type Scenario,
} from '../../../src/engine'
import { recorded } from '../../support/cleanStages'
import { marrowBend } from '../../support/marrowBend'

const cleanOrders = (): readonly Order[] => recorded('clean').entries.map((it) => it.order)

const withTrigger = (trigger: string, fallback = 90_000): Scenario => ({
  ...marrowBend(2),
  visible: { trigger, livening: 'clash-b', fallback },
})

/** The act in progress by the person whom the trigger is about, when it strikes in the clean job. */
const strikesDuring: Readonly<Record<string, readonly [who: string, act: string]>> = {
  'first-clamp-going-on': ['pw', 'clamp'],
  'bond-end-in-hand': ['pw', 'bond-metal'],
  'hand-on-conductor': ['pw', 'untie'],
  'ground-worker-inside': ['gw', 'lay-lead'],
  'cover-coming-off': ['pw', 'remove-cover'],
}

/** Orders until it strikes: what follows would be refused, for its acts were broken off. */
function untilStruck(scenario: Scenario): OpenTimeline {
  let timeline = openTimeline(scenario)
  for (const order of cleanOrders()) {
    if (timeline.struck) break
    timeline = extendTimeline(timeline, order)
  }
  return timeline
}

describe('triggers', () => {
  test('there are six', () => expect(triggers.size).toBe(6))

  test.each(Object.entries(strikesDuring))(
    '%s strikes in the clean job while the worker is at it',
    (trigger, [who, act]) => {
      const timeline = untilStruck(withTrigger(trigger))
      const struck = timeline.struck!
      const moment = timeline.moments[struck.moment]!
      expect(moment.from).toBe(struck.at)
      expect(moment.to).toBe(struck.at + 1)
      const busy = moment.busy.map((index) => timeline.entries[index]!.order)
      expect(busy.some((it) => it.who === who && it.do === act)).toBe(true)
      expect(moment.site.livening).toBeNull()
    },
  )

  test('last-clamp-on strikes when one conductor clamp is left of three', () => {
    const timeline = untilStruck(withTrigger('last-clamp-on'))
    const { site } = timeline.moments[timeline.struck!.moment]!
    expect(site.clamps.filter((it) => it.on.startsWith('conductor')).map((it) => it.on)).toEqual(['conductor-a'])
  })

  test('the drawn one: left hand on B, right hand on the arm, thigh at the covered pole', () => {
    const timeline = recorded('clean-livened')
    const moment = timeline.moments[timeline.struck!.moment]!
    const contacts = moment.bodies.find((it) => it.person === 'pw')!.contacts
    expect(contacts.find((it) => it.limb === 'left-hand')?.on).toEqual({ kind: 'conductor', id: 'conductor-b' })
    expect(contacts.find((it) => it.limb === 'right-hand')?.on).toEqual({ kind: 'metalwork', id: 'arm' })
    expect(contacts.find((it) => it.limb === 'thigh')?.through).toContain('C-15')
  })

  test('the fallback counts from the first permit', () => {
    const permit = recorded('clean').end.marks['permit-taken']!
    // The trigger itself comes 3000 s and more after the permit.
    expect(untilStruck(withTrigger('cover-coming-off', 500)).struck?.at).toBe(permit + 500)
  })
})

describe('prevention', () => {
  test('with the crossing taken out it does not happen, and that is said', () => {
    const scenario = { ...withTrigger('hand-on-conductor'), control: { takesCrossingOut: true, blocksReclose: true } }
    const timeline = runTimeline(scenario, cleanOrders())
    expect(timeline.struck).toBeNull()
    expect(timeline.prevented).toEqual({ livening: 'clash-b', why: 'crossing-taken-out' })
  })

  test('a locked switch on local does not close', () => {
    const scenario: Scenario = {
      ...marrowBend(2),
      visible: { trigger: 'hand-on-conductor', livening: 'switch-31-closed', fallback: 90_000 },
    }
    expect(runTimeline(scenario, cleanOrders()).prevented).toEqual({
      livening: 'switch-31-closed',
      why: 'switch-locked',
    })
  })

  test('asking for the reclose to be blocked prevents nothing', () => {
    expect(untilStruck(withTrigger('hand-on-conductor')).prevented).toBeNull()
  })
})

describe('what it leaves', () => {
  const timeline = recorded('clean-livened')
  const at = timeline.struck!.at

  test('whoever was at something breaks it off; a second later everybody has seen and heard', () => {
    const broken = timeline.entries.filter((it) => it.refusal?.code.endsWith('/interrupted'))
    expect(broken.map((it) => [it.order.do, it.end])).toEqual([['untie', at + 1]])
    const news = timeline.end.evidence.filter((it) => it.says.startsWith('livening.'))
    expect(news.map((it) => [it.at, it.who])).toEqual(
      ['gw', 'pic', 'pw', 'so'].flatMap((who) => [
        [at + 1, who],
        [at + 1, who],
      ]),
    )
  })

  test('lead, bond and rod carried it; the stick and the cover did not', () => {
    const faulted = Object.values(timeline.end.items)
      .filter((it) => it.faulted)
      .map((it) => it.id)
    expect(faulted).toEqual(['B-02', 'E-07', 'R-1'])
  })

  test('the work goes on: it is declared safe anew and finished', () => {
    expect(timeline.entries.find((it) => it.start > at && it.order.do === 'declare-safe')?.outcome).toBe('done')
    expect(timeline.end.insulator).toBe('replaced')
    expect(timeline.end.paper).toMatchObject({ permit: 'returned', closed: true })
  })

  test('it strikes once', () => {
    expect(timeline.end.livening).toMatchObject({ id: 'clash-b', at, provedOff: true })
    expect(timeline.end.evidence.filter((it) => it.says === 'livening.flash')).toHaveLength(4)
  })
})
