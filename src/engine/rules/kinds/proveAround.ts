/**
 * A tester is proved before and after each series of tests with it. A series ends with the next proving of the same
 * tester, or with the first act that relies on what it said. `side` says which proving the rule asks for.
 */
import type { RuleKind } from '../language/kind'
import { matchesAny, type Pattern } from '../language/pattern'
import { aboutEntry, aboutMissing, type RawFinding } from '../language/raw'
import { readNumber, readPatterns, requireText } from '../language/read'
import { endOf, type RunView } from '../language/runView'
import type { Entry } from '../../timeline/timeline'

export const proveAround: RuleKind = {
  id: 'prove-around',
  says: 'a tester proved before and after each series of tests',
  occasion: 'test',
  wanted: 'prove',
  parameters: {
    prove: { kind: 'patterns', least: 1, says: 'the proving' },
    test: { kind: 'patterns', least: 1, says: 'the tests' },
    relies: { kind: 'patterns', least: 1, says: 'acts that rely on the tests' },
    side: { kind: 'choice', of: ['before', 'after'], says: 'which proving' },
    within: { kind: 'number', least: 1, optional: true, says: 'seconds between proving and test' },
  },
  find(view, parameters) {
    const rule = {
      prove: readPatterns(parameters, 'prove'),
      test: readPatterns(parameters, 'test'),
      relies: readPatterns(parameters, 'relies'),
      within: readNumber(parameters, 'within') ?? Infinity,
    }
    const side = requireText(parameters, 'side')
    return listSeries(view, rule).flatMap((series) =>
      side === 'before' ? checkBefore(series, rule) : checkAfter(view, series),
    )
  },
}

interface Rule {
  readonly prove: readonly Pattern[]
  readonly test: readonly Pattern[]
  readonly relies: readonly Pattern[]
  readonly within: number
}

interface Series {
  readonly tester: string
  readonly tests: readonly Entry[]
  readonly provedBefore: Entry | undefined
  /** What ended it: the proving, or the act that relied on it unproved; undefined when the run ended first. */
  readonly ended: { readonly by: 'proving' | 'reliance'; readonly entry: Entry } | undefined
}

/** Series by tester, in order of their first test. */
function listSeries(view: RunView, rule: Rule): readonly Series[] {
  const series: Series[] = []
  const open = new Map<string, Entry[]>()
  const proved = new Map<string, Entry | undefined>()
  const start = new Map<string, Entry | undefined>()
  const close = (tester: string, ended: Series['ended']): void => {
    const tests = open.get(tester) ?? []
    if (tests.length > 0) series.push({ tester, tests, provedBefore: start.get(tester), ended })
    open.delete(tester)
  }
  for (const entry of view.done) {
    const tester = entry.order.with ?? ''
    if (matchesAny(view, rule.prove, entry)) {
      close(tester, { by: 'proving', entry })
      proved.set(tester, entry)
    } else if (matchesAny(view, rule.test, entry)) {
      if (!open.has(tester)) start.set(tester, proved.get(tester))
      open.set(tester, [...(open.get(tester) ?? []), entry])
    } else if (matchesAny(view, rule.relies, entry)) {
      for (const each of [...open.keys()]) {
        close(each, { by: 'reliance', entry })
        proved.delete(each)
      }
    }
  }
  for (const tester of [...open.keys()]) close(tester, undefined)
  return series
}

function checkBefore(series: Series, rule: Rule): readonly RawFinding[] {
  const first = series.tests[0]
  if (first === undefined) return []
  const proving = series.provedBefore
  const gap = proving === undefined ? Infinity : first.start - proving.end
  if (gap <= rule.within) return []
  return [
    aboutEntry(first, series.tester, { tester: series.tester, side: 'before', ...(gap === Infinity ? {} : { gap }) }),
  ]
}

function checkAfter(view: RunView, series: Series): readonly RawFinding[] {
  if (series.ended?.by === 'proving') return []
  const facts = { tester: series.tester, side: 'after', tests: series.tests.length }
  const touches = series.tests.map(({ index }) => index)
  if (series.ended === undefined) return [{ ...aboutMissing(endOf(view), series.tester, facts), touches }]
  return [{ ...aboutEntry(series.ended.entry, series.tester, facts), touches }]
}
