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
  if (name === 'aloft') return inOrderOf(belief, 'did.haul', (it) => it.where.kind === 'aloft')
  if (name === 'out') return inOrderOf(belief, 'did.book-out', (it) => it.bookedOut && !it.bookedIn)
  if (name.startsWith('tarp:'))
    return belief.items.filter((it) => it.where.kind === 'tarp' && it.type === name.slice(5)).map((it) => it.id)
  if (name === 'boots') return belief.items.filter((it) => it.type === 'boots').map((it) => it.id)
  return belief.switches.some((it) => it.id === name) ? ['A', 'B', 'C'].map((phase) => `${name}/${phase}`) : []
}

/** Items in the order in which the crew told of them. */
function inOrderOf(
  belief: Belief,
  says: string,
  isMeant: (item: Belief['items'][number]) => boolean,
): readonly string[] {
  const told = belief.evidence.filter((line) => line.says === says).map((line) => line.of)
  return belief.items
    .filter(isMeant)
    .map((it) => it.id)
    .sort((a, b) => told.lastIndexOf(a) - told.lastIndexOf(b))
}

const acts: Readonly<Record<string, readonly string[]>> = {
  conductors: ['look', 'test', 'brush', 'say-dead', 'tug'],
  lv: ['look', 'test'],
  feeders: ['ask-reclose-block', 'ask-reclose-on', 'ask-source-off'],
  aloft: ['lower', 'look'],
  out: ['book-in'],
  boots: ['wear', 'take-off'],
}

/** Several of one kind on the tarp are taken together. */
export const actsOfGroup = (group: string): readonly string[] => {
  const name = group.slice(prefix.length)
  return acts[name] ?? (name.startsWith('tarp:') ? ['take'] : ['look'])
}

/** The kind of gear that a heading on the tarp stands for. */
export const kindOf = (group: string): string | undefined =>
  group.startsWith(`${prefix}tarp:`) ? group.slice(prefix.length + 5) : undefined

/** Which of them is ticked on a list: nothing is ticked at first. */
export const isTicked = (group: string): boolean => group === groupOf('out') || group === groupOf('aloft')

/** One for each person, not each for all. */
export const isSharedOut = (group: string): boolean => group === groupOf('boots')
