/** Writes a run down as a policy gives its orders: each at the first second at which the person is free. */
import {
  clockOf,
  extendTimeline,
  openTimeline,
  type OpenTimeline,
  type Order,
  type Scenario,
  type Site,
  type Value,
} from '../../../src/engine'

export interface Details {
  readonly with?: string
  readonly on?: string
  readonly values?: Readonly<Record<string, Value>>
}

export interface Recorder {
  /** Orders it when the person is free. Throws when the world refuses: a policy knows what it wants. */
  order(who: string, act: string, details?: Details): void
  /** The same, and the world is expected to refuse or to break it off. */
  tryOrder(who: string, act: string, details?: Details): void
  /** Lets time pass until these people, or all, are free. */
  wait(...who: readonly string[]): void
  site(): Site
  timeline(): OpenTimeline
  orders(): readonly Order[]
}

export function record(scenario: Scenario): Recorder {
  let timeline = openTimeline(scenario)
  let clock = clockOf(timeline)
  const orders: Order[] = []

  const freeAt = (who: string): number =>
    timeline.entries
      .filter((it) => it.order.who === who && it.outcome !== 'withdrawn')
      .reduce((last, it) => Math.max(last, it.end), clock)

  const give = (who: string, act: string, { values = {}, ...rest }: Details): void => {
    clock = Math.max(clock, freeAt(who))
    const order: Order = { at: clock, who, do: act, ...rest, values }
    timeline = extendTimeline(timeline, order)
    orders.push(order)
  }

  return {
    order(who, act, details = {}) {
      give(who, act, details)
      const entry = timeline.entries.at(-1)
      if (entry?.outcome === 'refused') {
        throw new Error(`second ${clock}: ${JSON.stringify(entry.order)} refused: ${JSON.stringify(entry.refusal)}`)
      }
    },
    tryOrder: (who, act, details = {}) => give(who, act, details),
    wait(...who) {
      const all = who.length > 0 ? who : Object.keys(timeline.end.persons)
      clock = Math.max(clock, ...all.map(freeAt))
    },
    site: () => timeline.end,
    timeline: () => timeline,
    orders: () => orders,
  }
}
