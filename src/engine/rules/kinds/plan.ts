/**
 * My plan, graded as a plan: cards `verb:item:place` that must be on it, and their order. What was then done on the
 * site is for other rules.
 */
import type { Entry } from '../../timeline/timeline'
import { matchesName } from '../language/glob'
import type { RuleKind } from '../language/kind'
import { allMatching } from '../language/pattern'
import { aboutEntry, type RawFinding } from '../language/raw'
import { readList, readPatterns, requireText } from '../language/read'

export const plan: RuleKind = {
  id: 'plan',
  says: 'the cards of the written plan and their order',
  occasion: 'written',
  parameters: {
    written: { kind: 'patterns', least: 1, says: 'the act of writing the plan' },
    value: { kind: 'names', of: 'any', says: 'which of its values holds the cards' },
    cards: { kind: 'names', of: 'any', says: 'cards, first to last; * stands for anything' },
    ask: { kind: 'choice', of: ['present', 'order'], says: 'that they are there, or their order' },
  },
  find(view, parameters) {
    const cards = readList(parameters, 'cards')
    const written = allMatching(view, readPatterns(parameters, 'written'))
    const last = written[written.length - 1]
    if (last === undefined) return []
    const given = last.order.values[requireText(parameters, 'value')]
    const lines = Array.isArray(given) ? given.filter((line) => typeof line === 'string') : []
    return requireText(parameters, 'ask') === 'present'
      ? findAbsent(last, lines, cards)
      : findTurned(last, lines, cards)
  },
}

function findAbsent(entry: Entry, lines: readonly string[], cards: readonly string[]): readonly RawFinding[] {
  return cards
    .filter((card) => !lines.some((line) => matchesName(card, line)))
    .map((card) => aboutEntry(entry, card, { card, act: actOf(card) }))
}

const actOf = (card: string): string => card.split(':')[0] ?? ''

/** Every line of an earlier card stands above every line of a later one. */
function findTurned(entry: Entry, lines: readonly string[], cards: readonly string[]): readonly RawFinding[] {
  const steps = lines.map((line) => cards.findIndex((card) => matchesName(card, line)))
  const turned = steps.findIndex(
    (step, i) => step >= 0 && steps.slice(i + 1).some((later) => later >= 0 && later < step),
  )
  const card = lines[turned]
  return card === undefined ? [] : [aboutEntry(entry, '', { card, act: actOf(card) })]
}
