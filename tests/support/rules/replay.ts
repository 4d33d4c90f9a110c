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

/** Keeps the recorded run after each of its orders, so that an edited one is only run from its first difference on. */
export function replayer(scenario: Scenario, recorded: readonly Order[]): (orders: readonly Order[]) => OpenTimeline {
  const steps: Progress[] = [begin(scenario)]
  for (const order of recorded) steps.push(goOn(steps[steps.length - 1]!, order))
  return (orders) => {
    let same = 0
    while (same < recorded.length && orders[same] === recorded[same]) same++
    return orders.slice(same).reduce(goOn, steps[same]!).timeline
  }
}
