/**
 * Runs a list of orders again after it was edited. Each keeps its own second; where a person is still busy, it and all
 * that follow come later by as much, so that an edit is never refused only because it shifted something.
 */
import { extendTimeline, openTimeline, type OpenTimeline, type Order, type Scenario } from '../../../src/engine'

interface Progress {
  readonly timeline: OpenTimeline
  readonly late: number
  readonly free: Readonly<Record<string, number>>
}

const begin = (scenario: Scenario): Progress => ({ timeline: openTimeline(scenario), late: 0, free: {} })

function goOn({ timeline, late, free }: Progress, order: Order): Progress {
  const due = order.at + late
  const at = Math.max(due, free[order.who] ?? 0)
  const next = extendTimeline(timeline, { ...order, at })
  const end = next.entries[next.entries.length - 1]?.end ?? at
  return { timeline: next, late: late + at - due, free: { ...free, [order.who]: end } }
}

export function replay(scenario: Scenario, orders: readonly Order[]): OpenTimeline {
  return orders.reduce(goOn, begin(scenario)).timeline
}

export interface Replayer {
  /** The edited run, run from its first difference on. */
  run(orders: readonly Order[]): OpenTimeline
  /** The same, but no further than the first refusal: undefined then. */
  runUnrefused(orders: readonly Order[]): OpenTimeline | undefined
}

/** Keeps the recorded run after each of its orders. */
export function replayer(scenario: Scenario, recorded: readonly Order[]): Replayer {
  const steps: Progress[] = [begin(scenario)]
  for (const order of recorded) steps.push(goOn(steps[steps.length - 1]!, order))
  const sameUntil = (orders: readonly Order[]): number => {
    let same = 0
    while (same < recorded.length && orders[same] === recorded[same]) same++
    return same
  }
  return {
    run: (orders) => orders.slice(sameUntil(orders)).reduce(goOn, steps[sameUntil(orders)]!).timeline,
    runUnrefused(orders) {
      const same = sameUntil(orders)
      let progress = steps[same]!
      for (const order of orders.slice(same)) {
        progress = goOn(progress, order)
        if (progress.timeline.entries.slice(same).some((entry) => entry.outcome === 'refused')) return undefined
      }
      return progress.timeline
    },
  }
}
