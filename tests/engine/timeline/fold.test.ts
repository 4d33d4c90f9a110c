/** How a run is laid out in time. The rules are those of the design: whole seconds, ends before starts, ties by order. */
import { describe, expect, test } from 'vitest'
import {
  busyAt,
  clockOf,
  extendTimeline,
  openTimeline,
  pauseAt,
  runTimeline,
  siteAt,
  type OpenTimeline,
  type Order,
  type Value,
} from '../../../src/engine'
import { recorded } from '../../support/cleanStages'
import { marrowBend } from '../../support/marrowBend'

const order = (
  at: number,
  who: string,
  act: string,
  values: Readonly<Record<string, Value>> = {},
  on?: string,
): Order => ({
  at,
  who,
  do: act,
  ...(on !== undefined && { on }),
  values,
})

const to = (x: number, y: number): Readonly<Record<string, Value>> => ({ to: { x, y } })
const play = (...orders: readonly Order[]): OpenTimeline => runTimeline(marrowBend(2), orders)
const outcomes = (timeline: OpenTimeline): readonly string[] =>
  timeline.entries.map((it) => it.refusal?.code ?? it.outcome)

describe('time', () => {
  test('an order to a busy person is refused; another person works beside them', () => {
    const timeline = play(
      order(0, 'pic', 'check-crew'),
      order(10, 'pic', 'read-weather'),
      order(10, 'gw', 'watch'),
      order(30, 'pic', 'read-weather'),
    )
    expect(outcomes(timeline)).toEqual(['done', 'read-weather/busy', 'done', 'done'])
    expect(busyAt(timeline, 12)).toEqual([0, 2])
  })

  test('an act that ends at a second has ended before another starts at it', () => {
    const timeline = play(order(0, 'gw', 'book-out', {}, 'E-07'), order(8, 'pw', 'take', {}, 'E-07'))
    expect(outcomes(timeline)).toEqual(['done', 'done'])
    expect(timeline.entries[1]?.before.items['E-07']?.bookedOut).toBe(true)
  })

  test('two people after one thing: the second comes too late and has spent the time', () => {
    const timeline = play(order(0, 'gw', 'take', {}, 'H-1'), order(0, 'so', 'take', {}, 'H-1'))
    expect(outcomes(timeline)).toEqual(['done', 'take/held-by-another'])
    expect(timeline.entries[1]!.end).toBeGreaterThan(0)
    expect(timeline.end.persons['so']?.holds).toEqual([])
  })

  test('two people act at once: both contacts are in one moment', () => {
    const timeline = recorded('overlap-hand-on-lead')
    const both = timeline.moments.filter((moment) => {
      const acts = moment.busy.map((index) => timeline.entries[index]!.order.do)
      return acts.includes('hold-lead') && acts.includes('clamp')
    })
    expect(both.length).toBeGreaterThan(0)
    const [moment] = both
    const gw = moment!.bodies.find((it) => it.person === 'gw')!.contacts
    const pw = moment!.bodies.find((it) => it.person === 'pw')!.contacts
    expect(gw.find((it) => it.limb === 'right-hand')?.on).toEqual({ kind: 'lead', item: 'E-07', end: 'earth' })
    expect(pw.find((it) => it.limb === 'left-hand')?.through).toContain('S-11')
  })

  test('the same acts one after the other share no moment', () => {
    const timeline = recorded('overlap-apart')
    const both = timeline.moments.filter((moment) => {
      const acts = moment.busy.map((index) => timeline.entries[index]!.order.do)
      return acts.includes('hold-lead') && acts.includes('clamp')
    })
    expect(both).toEqual([])
  })

  test('somebody who walks past the pole takes a pace where the way comes nearest to it', () => {
    // From (−7, 1) straight to (7, 1): nearest to the pole at (0, 1).
    const timeline = play(order(0, 'gw', 'walk', to(-7, 1)), order(60, 'gw', 'walk', to(7, 1)))
    const moment = timeline.moments.find((it) => it.busy.includes(1))!
    const feet = moment.bodies.find((it) => it.person === 'gw')!.contacts
    const ground = { kind: 'ground', at: { x: 0, y: 1 }, stance: 'pace' }
    expect(feet.map((it) => [it.limb, it.on])).toEqual([
      ['left-foot', ground],
      ['right-foot', ground],
    ])
  })

  test('moments follow each other without gap or overlap and end in a state of rest', () => {
    const { moments } = recorded('clean')
    moments.slice(1).forEach((moment, i) => expect(moment.from).toBe(moments[i]!.to))
    expect(moments.slice(0, -1).every((it) => it.to > it.from)).toBe(true)
    expect(moments.at(-1)).toMatchObject({ busy: [] })
  })

  test('orders before the clock are a mistake of the caller', () => {
    const timeline = play(order(30, 'pic', 'check-crew'))
    expect(() => extendTimeline(timeline, order(29, 'gw', 'watch'))).toThrow('a whole second from 30')
    expect(() => extendTimeline(timeline, order(30.5, 'gw', 'watch'))).toThrow('a whole second')
  })

  test('the clock: go on stops at each end of an act, then nowhere', () => {
    const timeline = play(order(0, 'pic', 'check-crew'), order(0, 'gw', 'watch'))
    expect([clockOf(timeline), pauseAt(timeline, 0), pauseAt(timeline, 5), pauseAt(timeline, 30)]).toEqual([
      0,
      5,
      30,
      undefined,
    ])
    expect(siteAt(timeline, 4).marks['watching']).toBeUndefined()
    expect(siteAt(timeline, 5).marks['watching']).toBe(5)
    expect(siteAt(timeline, 99).time).toBe(99)
  })
})

describe('withdrawal', () => {
  test('within the second it leaves nothing; a second later it is too late', () => {
    const quick = play(
      order(0, 'pic', 'walk', to(1, 1)),
      order(0, 'pic', 'withdraw', { index: 0 }),
      order(0, 'pic', 'check-crew'),
    )
    expect(outcomes(quick)).toEqual(['withdrawn', 'done', 'done'])
    expect(quick.end.persons['pic']?.place).toEqual(openTimeline(marrowBend(2)).end.persons['pic']?.place)
    const late = play(order(0, 'pic', 'walk', to(1, 1)), order(1, 'pic', 'withdraw', { index: 0 }))
    expect(outcomes(late)).toEqual(['done', 'withdraw/too-late'])
    expect(late.end.persons['pic']?.place).toEqual({ kind: 'ground', at: { x: 1, y: 1 } })
  })

  test('there is nothing to withdraw in what was refused, is over or never was', () => {
    const timeline = play(
      order(0, 'pic', 'look', {}, 'switch-27'),
      order(0, 'pic', 'withdraw', { index: 0 }),
      order(0, 'pic', 'withdraw', { index: 7 }),
    )
    expect(outcomes(timeline)).toEqual(['look/not-in-sight', 'withdraw/too-late', 'withdraw/too-late'])
  })
})

describe('replay', () => {
  test.each(['clean', 'clean-livened', 'overlap-hand-on-lead'])(
    '%s: replay, step by step and from JSON are one and the same',
    (name) => {
      const live = recorded(name)
      const orders = live.entries.map((it) => it.order)
      const again = runTimeline(live.scenario, JSON.parse(JSON.stringify(orders)) as readonly Order[])
      expect(JSON.stringify(again)).toBe(JSON.stringify(live))
    },
  )

  test('a cut at any place gives the beginning of the whole', () => {
    const live = recorded('clean')
    const orders = live.entries.map((it) => it.order)
    for (const cut of [1, 57, 200, 300]) {
      const part = runTimeline(live.scenario, orders.slice(0, cut))
      const whole = orders.slice(cut).reduce(extendTimeline, part)
      expect(JSON.stringify(whole.end)).toBe(JSON.stringify(live.end))
    }
  })
})
