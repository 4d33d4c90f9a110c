/** A second of a run by what is done then, so that a run may be recorded anew: `untie`, `clamp/conductor-b`, `take-permit!` (its end). */
import type { Timeline } from '../../src/engine'

export function secondOf(timeline: Timeline, name: string): number {
  const isEnd = name.endsWith('!')
  const [, act, on] = /^([^/]+)(?:\/(.+))?$/.exec(name.replace(/!$/, '')) ?? []
  const entry = timeline.entries.find(
    ({ order, outcome }) =>
      outcome === 'done' && order.do === act && (on === undefined || order.on === on || order.with === on),
  )
  if (!entry) throw new Error(`nobody does ${name} in this run`)
  return isEnd ? entry.end : Math.floor((entry.start + entry.end) / 2)
}
