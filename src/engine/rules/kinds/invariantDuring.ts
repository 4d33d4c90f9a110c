/**
 * Something that holds at every moment of a stretch: while certain acts are in progress, or from one act to another,
 * or through the whole run; for the site or for every person by himself.
 */
import type { RuleKind } from '../language/kind'
import { findFirst, findLast, matchesAny } from '../language/pattern'
import { holds, whyNot, type Scope } from '../language/predicate'
import type { RawFinding } from '../language/raw'
import { readCall, readList, readPatterns, readText, requireCall } from '../language/read'
import { findRole, type RunView } from '../language/runView'
import type { Parameters } from '../language/kind'
import type { Moment } from '../../timeline/timeline'

export const invariantDuring: RuleKind = {
  id: 'invariant-during',
  says: 'what must hold at every moment of a stretch',
  parameters: {
    during: { kind: 'patterns', optional: true, says: 'while one of these acts is in progress' },
    from: { kind: 'patterns', optional: true, says: 'from the end of the first of these' },
    to: { kind: 'patterns', optional: true, says: 'to the start of the last of these' },
    each: { kind: 'choice', of: ['site', 'crew'], says: 'asked once, or of every person' },
    roles: { kind: 'names', of: 'role', optional: true, says: 'only of these roles' },
    where: {
      kind: 'predicate',
      about: ['site', 'person', 'moment'],
      optional: true,
      says: 'asked only of whom this holds',
    },
    holds: { kind: 'predicate', about: ['site', 'person', 'moment'], says: 'what must hold' },
  },
  find(view, parameters, { predicates }) {
    const call = requireCall(parameters, 'holds')
    const where = readCall(parameters, 'where')
    return listMoments(view, parameters).flatMap((moment) =>
      listScopes(view, parameters, moment)
        .filter((scope) => where === undefined || holds(predicates, where, scope))
        .flatMap((scope) => {
          const failure = whyNot(predicates, call, scope)
          return failure === undefined ? [] : [describe(moment, scope.person, failure)]
        }),
    )
  },
}

function listMoments(view: RunView, parameters: Parameters): readonly Moment[] {
  const during = readPatterns(parameters, 'during')
  const from = readPatterns(parameters, 'from')
  const to = readPatterns(parameters, 'to')
  const begins = from.length === 0 ? -Infinity : findFirst(view, from)?.end
  if (begins === undefined) return []
  const last = to.length === 0 ? undefined : findLast(view, to)
  const ends = last === undefined || last.start < begins ? Infinity : last.start
  return view.timeline.moments.filter(
    (moment) =>
      moment.from >= begins && moment.from < ends && (during.length === 0 || isBusyWith(view, during, moment)),
  )
}

function isBusyWith(view: RunView, during: ReturnType<typeof readPatterns>, moment: Moment): boolean {
  return moment.busy.some((index) => {
    const entry = view.timeline.entries[index]
    return entry !== undefined && view.begun.includes(entry) && matchesAny(view, during, entry)
  })
}

function listScopes(view: RunView, parameters: Parameters, moment: Moment): readonly Scope[] {
  if (readText(parameters, 'each') === 'site') return [{ view, site: moment.site, moment }]
  const roles = readList(parameters, 'roles')
  return Object.keys(moment.site.persons)
    .filter((person) => roles.length === 0 || roles.includes(findRole(view, person) ?? ''))
    .map((person) => ({ view, site: moment.site, moment, person }))
}

function describe(moment: Moment, person: string | undefined, failure: RawFinding['facts']): RawFinding {
  const base = { at: moment.from, entry: moment.busy[0] ?? -1, subject: person ?? '' }
  return person === undefined
    ? { ...base, facts: failure }
    : { ...base, who: person, facts: { who: person, ...failure } }
}
