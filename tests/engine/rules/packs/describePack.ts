/**
 * A further pack tried rule by rule, as cases.test.ts tries the first one: a run edited so that it breaks the rule, the
 * nearest edit that keeps it, and the pack's own clean run. Edits are of that clean run. Trade facts behind them:
 * common practice, no source, unless the pack names one.
 */
import { beforeAll, describe, expect, it } from 'vitest'
import type { Order, Pack, Scenario, Timeline } from '../../../../src/engine'
import { findFindings } from '../../../../src/engine/rules/findFindings'
import { change, type Edit } from '../../../support/rules/edits'
import { bucketRun } from '../../../support/rules/bucketRun'
import { recorded, shippedPack, shippedWords } from '../../../support/rules/recorded'
import { replay, replayer, type Replayer } from '../../../support/rules/replay'
import type { CaseRun, RuleCases } from '../../../support/rules/ruleCase'
import { toldIn, type Told } from '../../../support/rules/told'

export type PackCases = Readonly<
  Record<string, { readonly breaks: Edit | CaseRun; readonly near: Edit | CaseRun } | undefined>
>

/** The barrier so many metres from pole and rod, and well round the stay anchor. */
export function barrierAt(metres: number): Edit {
  const [west, east, south] = [-metres, 2.6 + metres, -metres - 2.35 - 1]
  const outline = [
    { x: west, y: Math.min(south, -6) },
    { x: east, y: Math.min(south, -6) },
    { x: east, y: metres },
    { x: west, y: metres },
  ]
  return change('gw set-barrier', { values: { outline } })
}

/** Rows of the first pack's tables for the rules that this one has under the same id. */
export function sharedRows(pack: string, ...tables: readonly RuleCases[]): PackCases {
  const ids = new Set(shippedPack(pack).rules.map(({ id }) => id))
  const all = tables.flatMap((table) => Object.entries(table))
  return Object.fromEntries(all.filter(([id]) => ids.has(id)))
}

/** @param untried rules without a row; the list is held to be exactly right */
export function describePack(id: string, cleanRun: string, cases: PackCases, untried: readonly string[] = []): void {
  const pack = shippedPack(id)
  const words = shippedWords(id)
  const runs = {
    clean: recorded(cleanRun),
    'clean-livened': recorded('clean-livened'),
    'two-earths': recorded('clean-two-earths'),
    bucket: bucketRun(),
  }
  const again: Record<string, Replayer> = {}

  beforeAll(() => {
    for (const [name, { scenario, orders }] of Object.entries(runs)) again[name] = replayer(scenario, orders)
  })

  function play(run: CaseRun): { readonly timeline: Timeline; readonly pack: Pack } {
    const of = run.of ?? 'clean'
    const { scenario, orders } = runs[of]
    const edited: readonly Order[] = run.edit(orders)
    const isSameSite = !run.defects && !run.labels && !run.hung && !run.place
    const timeline = isSameSite ? again[of]!.run(edited) : replay(changed(scenario, run), edited)
    return { timeline, pack: { ...pack, ...run.pack } }
  }

  it('has a row for every rule but those named, and no row for none', () => {
    expect([...Object.keys(cases), ...untried].sort()).toEqual(pack.rules.map((rule) => rule.id).sort())
  })

  it('finds nothing in its own clean run', () => {
    expect(findFindings(again['clean']!.run(runs.clean.orders), pack)).toEqual([])
  })

  describe.each(pack.rules.filter((rule) => !untried.includes(rule.id)).map((rule) => [rule.id, rule] as const))(
    '%s',
    (ruleId, rule) => {
      const row = cases[ruleId]

      it('is broken by its row, and only because the pack has it', () => {
        expect(row).toBeDefined()
        const { timeline, pack: used } = play(asCase(row!.breaks))
        const found = findFindings(timeline, used)
        const own = toldIn(found).filter((finding) => finding.rule === ruleId)
        expect(own.length, found.map((it) => it.rule).join(' ')).toBeGreaterThan(0)
        const without = findFindings(timeline, { ...used, rules: used.rules.filter((other) => other.id !== ruleId) })
        expect(toldIn(without).filter((finding) => finding.rule === ruleId)).toEqual([])
        for (const finding of own) expect(missingFacts(words, finding, rule.asks, rule.reason)).toEqual([])
      })

      it('is kept by the nearest other run', () => {
        expect(row).toBeDefined()
        const { timeline, pack: used } = play(asCase(row!.near))
        expect(toldIn(findFindings(timeline, used)).filter((finding) => finding.rule === ruleId)).toEqual([])
      })
    },
  )
}

const asCase = (it: Edit | CaseRun): CaseRun => (typeof it === 'function' ? { edit: it } : it)

function changed(scenario: Scenario, { defects = {}, labels = {}, hung = [], place = (it) => it }: CaseRun): Scenario {
  const items = scenario.items.map((item) => ({
    ...item,
    label: { ...item.label, ...labels[item.id] },
    defects: defects[item.id] === undefined ? item.defects : [...item.defects, defects[item.id]!],
  }))
  const switches = scenario.switches.map((it) => (it.closed ? { ...it, hungBlades: hung } : it))
  return place({ ...scenario, items, switches })
}

/** Placeholders of the rule's sentences for which the finding has no fact. */
function missingFacts(words: Readonly<Record<string, string>>, finding: Told, ...keys: readonly string[]): string[] {
  const wanted = keys.flatMap((key) =>
    [...(words[key] ?? '{no-words}').matchAll(/\{(\w+)(?::\w+)?\}/g)].map((match) => match[1] ?? ''),
  )
  return wanted.filter((name) => !(name in finding.facts))
}
