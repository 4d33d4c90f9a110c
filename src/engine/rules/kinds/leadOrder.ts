/**
 * Order of the ends of each lead, read from the clamps that are really on: the dead end (earth, metal) first when it
 * goes on and last when it comes off. Holds for every lead by itself, whatever act moved the clamp.
 */
import type { Clamp } from '../../site/site'
import type { Entry } from '../../timeline/timeline'
import { matchesNames } from '../language/glob'
import type { RuleKind } from '../language/kind'
import { aboutEntry, type RawFinding } from '../language/raw'
import { readList, requireText } from '../language/read'
import { findItemType } from '../language/runView'

export const leadOrder: RuleKind = {
  id: 'lead-order',
  says: 'which end of a lead goes on first, or comes off last',
  parameters: {
    types: { kind: 'names', of: 'gearType', says: 'the leads' },
    deadEnd: { kind: 'literal', says: 'the end that goes on first and comes off last' },
    going: { kind: 'choice', of: ['on', 'off'], says: 'putting on or taking off' },
  },
  find(view, parameters) {
    const types = readList(parameters, 'types')
    const deadEnd = requireText(parameters, 'deadEnd')
    const going = requireText(parameters, 'going')
    return view.done.flatMap((entry) => {
      const moved =
        going === 'on'
          ? movedClamps(entry.before.clamps, entry.after.clamps)
          : movedClamps(entry.after.clamps, entry.before.clamps)
      return moved
        .filter((clamp) => matchesNames(types, findItemType(view, clamp.lead)))
        .flatMap((clamp) => (going === 'on' ? checkOn(entry, clamp, deadEnd) : checkOff(entry, clamp, deadEnd)))
    })
  },
}

/** Clamps that are in `more` and not in `fewer`. */
function movedClamps(fewer: readonly Clamp[], more: readonly Clamp[]): readonly Clamp[] {
  return more.filter((clamp) => !fewer.some((other) => other.lead === clamp.lead && other.end === clamp.end))
}

function checkOn(entry: Entry, clamp: Clamp, deadEnd: string): readonly RawFinding[] {
  if (clamp.end === deadEnd) return []
  const isDeadOn = entry.before.clamps.some((other) => other.lead === clamp.lead && other.end === deadEnd)
  return isDeadOn ? [] : [aboutEntry(entry, clamp.lead, { lead: clamp.lead, end: clamp.end, deadEnd })]
}

function checkOff(entry: Entry, clamp: Clamp, deadEnd: string): readonly RawFinding[] {
  if (clamp.end !== deadEnd) return []
  const left = entry.after.clamps.find((other) => other.lead === clamp.lead)
  return left === undefined ? [] : [aboutEntry(entry, clamp.lead, { lead: clamp.lead, end: left.end, deadEnd })]
}
