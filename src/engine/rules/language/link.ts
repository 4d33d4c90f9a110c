/**
 * Which part of two acts must be the same for one to answer the other: `["on","with"]` = the thing of the first, the tool of the second.
 * `device` is the switch that a blade belongs to.
 */
import type { Entry } from '../../timeline/timeline'
import { findItemOf, type RunView } from './runView'

export type Part = 'on' | 'with' | 'who' | 'item' | 'device'
export type Link = readonly [Part, Part]
export const parts: readonly Part[] = ['on', 'with', 'who', 'item', 'device']

export function partOf(view: RunView, entry: Entry, part: Part): string | undefined {
  if (part === 'item') return findItemOf(view, entry)
  if (part === 'device') return entry.order.on?.split('/')[0]
  return part === 'who' ? entry.order.who : entry.order[part]
}

export function isLinked(view: RunView, links: readonly Link[], first: Entry, second: Entry): boolean {
  return links.every(([a, b]) => {
    const part = partOf(view, first, a)
    return part !== undefined && part === partOf(view, second, b)
  })
}
