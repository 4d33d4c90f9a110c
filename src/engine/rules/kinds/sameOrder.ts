/**
 * A list worked through in an order that is known: things booked in as they were booked out, feeders asked for as the
 * diagram lists them. Things that are not on the list, and what is taken up again, are passed over; each person is asked by
 * himself.
 */
import type { Entry } from '../../timeline/timeline'
import { namedSets } from '../language/each'
import type { RuleKind } from '../language/kind'
import { partOf, type Part } from '../language/link'
import { allMatching, findFirst } from '../language/pattern'
import { aboutEntry, type RawFinding } from '../language/raw'
import { readPatterns, readText, requireText } from '../language/read'

export const sameOrder: RuleKind = {
  id: 'same-order',
  says: 'acts that follow a list, line by line',
  isSequence: true,
  parameters: {
    of: { kind: 'patterns', least: 1, says: 'the acts' },
    part: { kind: 'choice', of: ['on', 'with', 'who', 'item', 'device'], says: 'what stands on the list' },
    as: { kind: 'patterns', optional: true, says: 'the acts that made the list' },
    list: { kind: 'names', of: 'set', optional: true, says: 'or a set, in the order of the scenario' },
    from: { kind: 'patterns', optional: true, says: 'only acts after the first of these' },
    to: { kind: 'patterns', optional: true, says: 'only acts before the first of these' },
  },
  find(view, parameters) {
    const part = requireText(parameters, 'part') as Part
    const name = readText(parameters, 'list')
    const makers = allMatching(view, readPatterns(parameters, 'as'))
    const made = makers.map((entry) => partOf(view, entry, part) ?? '')
    const list = name === undefined ? made : (namedSets.get(name)?.members(view.timeline.scenario) ?? [])
    const from = readPatterns(parameters, 'from')
    const to = readPatterns(parameters, 'to')
    const begins = from.length === 0 ? -Infinity : findFirst(view, from)?.end
    if (begins === undefined) return []
    const ends = (to.length === 0 ? undefined : findFirst(view, to, begins))?.start ?? Infinity
    const acts = allMatching(view, readPatterns(parameters, 'of')).filter((it) => it.start >= begins && it.end <= ends)
    const lines = acts
      .map((entry) => ({ entry, line: list.indexOf(partOf(view, entry, part) ?? '') }))
      .filter(({ line }) => line >= 0)
    return Object.keys(view.timeline.end.persons).flatMap((who) =>
      findTurned(firstOfEach(lines.filter(({ entry }) => entry.order.who === who)), name === undefined ? makers : []),
    )
  },
}

interface Line {
  readonly entry: Entry
  /** Place on the list. */
  readonly line: number
}

const firstOfEach = (lines: readonly Line[]): readonly Line[] =>
  lines.filter(({ line }, i) => lines.findIndex((it) => it.line === line) === i)

/** @param makers acts that made the list, line by line */
function findTurned(lines: readonly Line[], makers: readonly Entry[]): readonly RawFinding[] {
  const at = lines.findIndex(({ line }, i) => line < (lines[i - 1]?.line ?? line))
  const [before, turned] = [lines[at - 1], lines[at]]
  if (before === undefined || turned === undefined) return []
  const touches = [before.line, turned.line].flatMap((line) => makers[line]?.index ?? [])
  return [{ ...aboutEntry(turned.entry, turned.entry.order.do), touches: [before.entry.index, ...touches] }]
}
