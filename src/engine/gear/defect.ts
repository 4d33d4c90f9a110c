/** How a catalogue entry writes down what can be wrong with an item, and what only looks wrong. */
import type { FoundBy, GearDefect, PassSource } from './gearType'

/** Of a criterion that the trade keeps and nobody wrote down. */
export const commonPractice: PassSource = { source: 'common practice, no source', sure: 'practice' }

type Changes = GearDefect['changes']

/** Wrong, and seen when it is turned over or felt when it is tested. */
export function defect(type: string, foundBy: 'look' | 'test', id: string, changes: Changes): GearDefect {
  return { id, foundBy, evidence: `gear.${type}.${foundBy}.${id}`, changes }
}

/**
 * The same at each of several ends, each a defect of its own: `worn-jaw-1` at end 1. At the `usual` end its id is the
 * plain one.
 */
export function endDefects(
  type: string,
  foundBy: Exclude<FoundBy, 'label'>,
  id: string,
  changes: Changes,
  ends: readonly string[],
  usual?: string,
): readonly GearDefect[] {
  return ends.map((end) => ({
    ...defect(type, foundBy, id, changes),
    id: end === usual ? id : `${id}-${end}`,
    end,
  }))
}

/** Wrong by what is printed on it: the label itself is the evidence and nothing comments it. */
export function labelDefect(id: string, changes: Changes): GearDefect {
  return { id, foundBy: 'label', evidence: 'gear.label', changes }
}

/** Looks like something and is nothing. */
export function harmlessMark(type: string, id: string): GearDefect {
  return { id, foundBy: 'look', evidence: `gear.${type}.look.${id}`, changes: {} }
}
