/**
 * Headings of the site list that stand for several things. An order on a heading is given for each of them in turn, for
 * acts whose order among them does not matter; each is its own recorded action.
 */
import type { Belief } from '../../engine'

const prefix = 'all/'

export const isGroup = (thing: string | null): thing is string => thing?.startsWith(prefix) ?? false

export const groupOf = (name: string): string => prefix + name

/** Things of a heading, in order of the list. */
export function membersOf(belief: Belief, group: string): readonly string[] {
  const name = group.slice(prefix.length)
  if (name === 'conductors') return belief.conductors.map((it) => it.id)
  if (name === 'lv') return [...belief.sheet.lv.wires].sort((a, b) => a.x - b.x).map((it) => it.id)
  if (name === 'feeders') return belief.sheet.feeders.map((it) => it.id)
  if (name === 'aloft') return belief.items.filter((it) => it.where.kind === 'aloft').map((it) => it.id)
  if (name === 'tarp') return belief.items.filter((it) => it.where.kind === 'tarp').map((it) => it.id)
  if (name === 'out') return belief.items.filter((it) => it.bookedOut && !it.bookedIn).map((it) => it.id)
  if (name === 'boots') return belief.items.filter((it) => it.type === 'boots').map((it) => it.id)
  return belief.switches.some((it) => it.id === name) ? ['A', 'B', 'C'].map((phase) => `${name}/${phase}`) : []
}

const acts: Readonly<Record<string, readonly string[]>> = {
  conductors: ['look', 'test', 'brush', 'say-dead', 'tug'],
  lv: ['look', 'test'],
  feeders: ['ask-reclose-block', 'ask-reclose-on', 'ask-source-off'],
  aloft: ['lower', 'look'],
  tarp: ['look'],
  out: ['book-in'],
  boots: ['wear', 'take-off'],
}

export const actsOfGroup = (group: string): readonly string[] => acts[group.slice(prefix.length)] ?? ['look']

/** One for each person, not each for all. */
export const isSharedOut = (group: string): boolean => group === groupOf('boots')
