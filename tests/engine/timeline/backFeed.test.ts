/** A back-feed as the visible livening: what is heard of it, and that the acts which take its way prevent it. */
import { describe, expect, test } from 'vitest'
import {
  extendTimeline,
  openTimeline,
  runTimeline,
  type OpenTimeline,
  type Order,
  type Scenario,
} from '../../../src/engine'
import { recorded } from '../../support/cleanStages'
import { marrowBend } from '../../support/marrowBend'
import { setComesOn, smallSet, smallTransformer } from '../hazard/backFeedSites'

const scenario: Scenario = {
  ...marrowBend(2),
  transformers: [smallTransformer],
  embedded: [smallSet],
  livenings: [...marrowBend(2).livenings, setComesOn],
  visible: { trigger: 'hand-on-conductor', livening: 'set-on', fallback: 90_000 },
}

const cleanOrders = (): readonly Order[] => recorded('clean').entries.map((it) => it.order)

function play(orders: readonly Order[]): OpenTimeline {
  return orders.reduce((timeline, order) => {
    return timeline.struck || timeline.prevented ? timeline : extendTimeline(timeline, order)
  }, openTimeline(scenario))
}

/** The acts one after the other, a minute or more apart, before the job begins. */
function first(...acts: readonly Omit<Order, 'at' | 'values'>[]): readonly Order[] {
  return acts.map((act, i) => ({
    at: 600 * i,
    values: act.do === 'take-carriers-out' ? { leave: 'bagged' } : {},
    ...act,
  }))
}

const later = (seconds: number): readonly Order[] => cleanOrders().map((it) => ({ ...it, at: it.at + seconds }))

describe('a set that comes on behind a transformer', () => {
  test('strikes a crew that left it its way: a hum and a running set, no flash', () => {
    const timeline = runTimeline(scenario, cleanOrders())
    expect(timeline.struck).toMatchObject({ livening: 'set-on' })
    const signs = timeline.end.evidence.filter((it) => it.says.startsWith('livening.'))
    expect([...new Set(signs.map((it) => it.says))]).toEqual(['livening.set-runs', 'livening.hum'])
    expect(new Set(signs.map((it) => it.who)).size).toBe(4)
  })

  test('does not happen once the carriers are taken away and bagged, and that is credited', () => {
    const acts = first(
      { who: 'so', do: 'book-out', on: 'S-12' },
      { who: 'so', do: 'take', on: 'S-12' },
      { who: 'so', do: 'walk', on: 't1' },
      { who: 'so', do: 'take-carriers-out', on: 't1' },
      { who: 'so', do: 'walk', on: 'truck' },
      { who: 'so', do: 'put-down', on: 'S-12' },
    )
    const timeline = play([...acts, ...later(3600)])
    expect(timeline.entries.slice(0, 6).map((it) => it.refusal?.code ?? 'done')).toEqual(acts.map(() => 'done'))
    expect(timeline.struck).toBeNull()
    expect(timeline.prevented).toEqual({ livening: 'set-on', why: 'carriers-out' })
  })
})
