/**
 * Every rule of the shipped pack: one recorded run edited so that it breaks the rule, the nearest edit that keeps it,
 * and the recording itself. Trade facts behind the edits: common practice, no source, unless the pack names one.
 */
import { beforeAll, describe, expect, it } from 'vitest'
import type { Finding, Pack, Scenario, Timeline } from '../../../src/engine'
import { findFindings } from '../../../src/engine/rules/findFindings'
import type { Edit } from '../../support/rules/edits'
import { bucketRun } from '../../support/rules/bucketRun'
import { recorded, shippedPack, shippedWords } from '../../support/rules/recorded'
import { replay, replayer, type Replayer } from '../../support/rules/replay'
import type { CaseRun, RuleCases } from '../../support/rules/ruleCase'
import { toldIn, type Told } from '../../support/rules/told'
import { aloft } from './cases/aloft'
import { bucket } from './cases/bucket'
import { changes } from './cases/changes'
import { ground } from './cases/ground'
import { isolation } from './cases/isolation'
import { nextPole } from './cases/nextPole'
import { office } from './cases/office'
import { rating } from './cases/rating'
import { response } from './cases/response'
import { work } from './cases/work'

const cases: RuleCases = {
  ...office,
  ...isolation,
  ...ground,
  ...aloft,
  ...work,
  ...response,
  ...rating,
  ...nextPole,
  ...bucket,
  ...changes,
}
const pack = shippedPack()
const words = shippedWords()
const runs = {
  clean: recorded('clean'),
  'clean-livened': recorded('clean-livened'),
  'two-earths': recorded('clean-two-earths'),
  bucket: bucketRun(),
}
const again: Record<string, Replayer> = {}

beforeAll(() => {
  for (const [name, { scenario, orders }] of Object.entries(runs)) again[name] = replayer(scenario, orders)
})

const asRun = (it: Edit | CaseRun): CaseRun => (typeof it === 'function' ? { edit: it } : it)

function play(run: CaseRun): { readonly timeline: Timeline; readonly pack: Pack } {
  const of = run.of ?? 'clean'
  const { scenario, orders } = runs[of]
  const edited = run.edit(orders)
  const isSameSite = run.defects === undefined && run.labels === undefined && run.hung === undefined && !run.place
  const timeline = isSameSite ? again[of]!.run(edited) : replay(changed(scenario, run), edited)
  return { timeline, pack: { ...pack, ...run.pack } }
}

function changed(scenario: Scenario, { defects = {}, labels = {}, hung = [], place = (it) => it }: CaseRun): Scenario {
  const items = scenario.items.map((item) => ({
    ...item,
    label: { ...item.label, ...labels[item.id] },
    defects: defects[item.id] === undefined ? item.defects : [...item.defects, defects[item.id]!],
  }))
  const switches = scenario.switches.map((it) => (it.closed ? { ...it, hungBlades: hung } : it))
  return place({ ...scenario, items, switches })
}

const findingsOf = (run: Edit | CaseRun): readonly Finding[] => {
  const { timeline, pack: used } = play(asRun(run))
  return findFindings(timeline, used)
}

it('has a row for every rule and no row for none', () => {
  expect(Object.keys(cases).sort()).toEqual(pack.rules.map(({ id }) => id).sort())
})

it('finds nothing in the recorded clean runs', () => {
  for (const name of ['clean', 'clean-livened'] as const) {
    const { orders } = runs[name]
    expect(findFindings(again[name]!.run(orders), pack), name).toEqual([])
  }
})

describe.each(pack.rules.map((rule) => [rule.id, rule] as const))('%s', (id, rule) => {
  const row = cases[id]

  it('is broken by its row, and only because the pack has it', () => {
    expect(row).toBeDefined()
    const { timeline, pack: used } = play(asRun(row!.breaks))
    const found = findFindings(timeline, used)
    const own = toldIn(found).filter((finding) => finding.rule === id)
    expect(own.length, found.map((it) => it.rule).join(' ')).toBeGreaterThan(0)
    const without = toldIn(findFindings(timeline, { ...used, rules: used.rules.filter((other) => other.id !== id) }))
    expect(without.filter((finding) => finding.rule === id)).toEqual([])
    const others = toldIn(found).filter((finding) => finding.rule !== id)
    expect(without.map(({ rule: name, at }) => `${name} ${at}`)).toEqual(
      expect.arrayContaining(others.map(({ rule: name, at }) => `${name} ${at}`)),
    )
    for (const finding of own) expect(missingFacts(finding, rule.asks, rule.reason)).toEqual([])
  })

  it('is kept by the nearest other run', () => {
    expect(row).toBeDefined()
    expect(toldIn(findingsOf(row!.near)).filter((finding) => finding.rule === id)).toEqual([])
  })
})

/** Placeholders of the rule's sentences for which the finding has no fact. */
function missingFacts(finding: Told, ...keys: readonly string[]): readonly string[] {
  const wanted = keys.flatMap((key) =>
    [...(words[key] ?? '{no-words}').matchAll(/\{(\w+)(?::\w+)?\}/g)].map((match) => match[1] ?? ''),
  )
  return wanted.filter((name) => !(name in finding.facts))
}
