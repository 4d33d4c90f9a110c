/** The site must be so when an act begins (or has been done), or at the end of the run. */
import type { RuleKind } from '../language/kind'
import { partOf, type Part } from '../language/link'
import { allMatching } from '../language/pattern'
import { whyNot } from '../language/predicate'
import { aboutEntry, aboutMissing } from '../language/raw'
import { readFlag, readPatterns, readText, requireCall } from '../language/read'
import { endOf } from '../language/runView'

export const stateAt: RuleKind = {
  id: 'state-at',
  says: 'the site as it must be when an act begins, when it has been done, or at the end',
  occasion: 'when',
  parameters: {
    when: { kind: 'patterns', optional: true, says: 'the acts' },
    moment: { kind: 'choice', of: ['before', 'after'], optional: true, says: 'before the act (default) or after it' },
    atEnd: { kind: 'flag', optional: true, says: 'asked once, at the end of the run' },
    holds: { kind: 'predicate', about: ['site', 'person', 'act'], says: 'what must hold' },
    apart: {
      kind: 'choice',
      of: ['on', 'with', 'item', 'device'],
      optional: true,
      says: 'deviations on different ones of these are different deviations',
    },
    unless: {
      kind: 'predicate',
      about: ['site', 'person', 'act'],
      optional: true,
      says: 'nothing is asked when this holds',
    },
  },
  find(view, parameters, { predicates }) {
    const call = requireCall(parameters, 'holds')
    const unless = parameters['unless'] === undefined ? undefined : requireCall(parameters, 'unless')
    const side = readText(parameters, 'moment') === 'after' ? 'after' : 'before'
    const apart = readText(parameters, 'apart') as Part | undefined
    const found = allMatching(view, readPatterns(parameters, 'when')).flatMap((entry) => {
      const scope = { view, site: entry[side], person: entry.order.who, entry }
      if (unless !== undefined && whyNot(predicates, unless, scope) === undefined) return []
      const failure = whyNot(predicates, call, scope)
      return failure === undefined
        ? []
        : [aboutEntry(entry, apart === undefined ? '' : (partOf(view, entry, apart) ?? ''), failure)]
    })
    if (!readFlag(parameters, 'atEnd')) return found
    const scope = { view, site: view.timeline.end }
    if (unless !== undefined && whyNot(predicates, unless, scope) === undefined) return found
    const failure = whyNot(predicates, call, scope)
    return failure === undefined ? found : [...found, aboutMissing(endOf(view), '', failure)]
  },
}
