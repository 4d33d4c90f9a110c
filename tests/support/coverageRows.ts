/**
 * What of the trade is exercised, by whom: every act, paragraph of the procedure, row of the gear table, defect, event, exposure
 * path and rule, with the scenarios in which it comes up and the tests that name it.
 */
import { readdirSync, readFileSync } from 'node:fs'
import { actions, drawScenario, gearCatalogue, runTimeline, type PackRule, type ScenarioBase } from '../../src/engine'
import { mechanisms } from '../../src/engine/hazard/circuit/livening'
import { exposurePaths } from '../../src/engine/hazard/paths'
import { ruleKinds } from '../../src/engine/rules/kinds'
import { observedRules, rulesWithOccasion } from '../../src/engine/rules/observedRules'
import { readRun } from '../../src/files/run/read'
import type { Run } from '../../src/files/run/run'
import { paragraphs } from './coverage'
import { packOf, scenarioBase, scenarioSlugs } from './record/shelf'
import { usualPack } from './record/usualPack'

export interface CoverageRow {
  readonly name: string
  /** What carries it in the program. */
  readonly by: readonly string[]
  readonly scenarios: readonly string[]
  readonly tests: readonly string[]
}

/** What no place of the shelf has an occasion for, with the reason; tests of its own try it. */
export const withoutOccasion: Readonly<Record<string, string>> = {
  'ask-feeder-in': 'No control room of the shelf takes a crossing circuit out, so that none is put in again.',
}

export type Kind = 'actions' | 'paragraphs' | 'gear' | 'defects' | 'events' | 'paths' | 'rules'

const root = new URL('../../', import.meta.url)
const packIds: readonly string[] = readdirSync(new URL('scenarios/packs/', root)).sort()

interface Played {
  readonly slug: string
  readonly base: ScenarioBase
  readonly runs: readonly Run[]
  readonly acts: ReadonlySet<string>
  /** Rules that found something, had something to look at, or were in force all along, as `pack/rule`. */
  readonly rules: ReadonlySet<string>
}

/** The recorded runs as they lie there. */
function play(slug: string): Played {
  const base = scenarioBase(slug)
  const folder = new URL(`scenarios/${slug}/runs/`, root)
  const runs = readdirSync(folder)
    .sort()
    .flatMap((file) => {
      const read = readRun(readFileSync(new URL(file, folder), 'utf8'), actions, base)
      return read.ok ? [read.value] : []
    })
  return {
    slug,
    base,
    runs,
    acts: new Set(runs.flatMap(({ orders }) => orders.map((it) => it.do))),
    rules: new Set(runs.flatMap((run) => [...foundIn(run), ...askedIn(base, run)])),
  }
}

const foundIn = ({ pack, expect }: Run): readonly string[] =>
  (expect?.findings ?? []).map(([rule]) => `${pack}/${rule}`)

/** Of a run in which nothing is wrong, or that is played by other rules: what gave a rule of its pack something to look at. */
function askedIn(base: ScenarioBase, { pack: id, seed, purpose, orders, expect }: Run): readonly string[] {
  if (expect === undefined || (expect.findings.length > 0 && id === usualPack(base.id))) return []
  const pack = packOf(id)
  const timeline = runTimeline(drawScenario(base, seed, purpose), orders)
  const possible = rulesWithOccasion(timeline, pack)
  const always = pack.rules.filter((rule) => possible.has(rule.id) && waitsForNothing(rule)).map((rule) => rule.id)
  return [...observedRules(timeline, pack), ...always].map((rule) => `${id}/${rule}`)
}

/** No act of its own is waited for: it is in force as long as the job lasts. */
function waitsForNothing({ kind, parameters }: PackRule): boolean {
  const specs = ruleKinds.get(kind)?.parameters ?? {}
  return Object.keys(parameters).every((name) => !['pattern', 'patterns'].includes(specs[name]?.kind ?? ''))
}

/** Test files by path, with their text. */
function readTests(): readonly (readonly [path: string, text: string])[] {
  return readdirSync(new URL('tests/', root), { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.test\.tsx?$|engine\/rules\/cases\/|Cases\.ts$|qualification\/.*\.json$/.test(path))
    .map((path) => [path, readFileSync(new URL(`tests/${path}`, root), 'utf8')] as const)
}

export function coverageRows(): Readonly<Record<Kind, readonly CoverageRow[]>> {
  const played = scenarioSlugs().map(play)
  const tests = readTests()
  const testsOf = (names: readonly string[]): readonly string[] =>
    tests.filter(([, text]) => names.some((it) => isNamed(text, it))).map(([path]) => path)
  const slugsOf = (isMeant: (it: Played) => boolean): readonly string[] =>
    played.filter(isMeant).map(({ slug }) => slug)
  const row = (name: string, by: readonly string[], isMeant: (it: Played) => boolean): CoverageRow => ({
    name,
    by,
    scenarios: slugsOf(isMeant),
    tests: testsOf(by),
  })
  // Every type and every defect of the catalogue is taken in the hand there, and found; the second in the places themselves.
  const tried = (it: CoverageRow): CoverageRow => ({
    ...it,
    tests: [...new Set(['engine/site/belief.test.ts', 'engine/gear/drawnDefects.test.ts', ...it.tests])],
  })
  return {
    actions: [...actions.values()].map(({ id, covers }) => ({
      ...row(id, [id], ({ acts }) => acts.has(id)),
      by: covers,
    })),
    paragraphs: paragraphs.map((it) => {
      const acts = [...actions.values()].filter(({ covers }) => covers.includes(it)).map(({ id }) => id)
      return row(it, acts, ({ acts: done }) => acts.some((act) => done.has(act)))
    }),
    gear: numbered(45).map((n) => {
      const types = [...gearCatalogue.values()].filter(({ rows }) => rows.includes(n)).map(({ id }) => id)
      return tried(row(`row ${n}`, types, ({ base }) => base.items.some(({ type }) => types.includes(type))))
    }),
    defects: [...gearCatalogue.values()].flatMap((type) =>
      type.defects.map(({ id }) =>
        tried(
          row(`${type.id}/${id}`, [id], ({ base }) =>
            defectsOf(base).some((it) => it.type === type.id && it.defect === id),
          ),
        ),
      ),
    ),
    events: numbered(28).map((n) => {
      const kinds = Object.entries(mechanisms)
        .filter(([, it]) => it.rows.includes(n))
        .map(([kind]) => kind)
      const other = notALivening[n]
      if (other) return row(`event ${n}`, [other.by], ({ base }) => other.isIn(base))
      return row(`event ${n}`, kinds, ({ base }) => base.livenings.some(({ kind }) => kinds.includes(kind)))
    }),
    paths: numbered(22).map((n) => {
      const ids = exposurePaths.filter(({ rows }) => rows.includes(n)).map(({ id }) => id)
      const isMet = ({ expect }: Run): boolean => expect?.exposures.some(({ path }) => ids.includes(path)) ?? false
      const isTold = notSwept[n] ?? ((): boolean => false)
      return row(`path ${n}`, ids, ({ base, runs }) => isTold(base) || runs.some(isMet))
    }),
    rules: packIds.flatMap((pack) =>
      packOf(pack).rules.map(({ id }) => row(`${pack}/${id}`, [id], ({ rules }) => rules.has(`${pack}/${id}`))),
    ),
  }
}

/** Events that come about otherwise than by a livening of their own: what in the program makes them. */
const notALivening: Readonly<
  Record<number, { readonly by: string; readonly isIn: (base: ScenarioBase) => boolean } | undefined>
> = {
  2: { by: 'hungBlades', isIn: (base) => hangs(base) },
  16: { by: 'recloseDeadTimes', isIn: ({ feeders }) => feeders.some((it) => it.recloseDeadTimes.length > 0) },
  23: { by: 'lets go', isIn: () => true },
  24: { by: 'burns open', isIn: () => true },
  28: { by: 'match-pole', isIn: () => true },
}

/** Paths that no sweep lists: livestock has a figure of its own in each livening's story, the arc is told in words. */
const notSwept: Readonly<Record<number, ((base: ScenarioBase) => boolean) | undefined>> = {
  21: ({ livestock }) => livestock !== undefined,
  22: ({ livenings }) => livenings.length > 0,
}

const hangs = ({ switches, draws }: ScenarioBase): boolean =>
  switches.some((it) => it.hungBlades.length > 0) || draws.fixed.some((it) => (it.hungBlades ?? []).length > 0)

const numbered = (last: number): readonly number[] => Array.from({ length: last }, (_, i) => i + 1)

/** As a word of its own: in quotes, or as a key. */
function isNamed(text: string, name: string): boolean {
  return [`'${name}'`, `"${name}"`, ` ${name}:`, `${name}\``, `/${name}'`, `'${name} `, ` ${name}'`, ` ${name} `].some(
    (it) => text.includes(it),
  )
}

function defectsOf(base: ScenarioBase): readonly { readonly type: string; readonly defect: string }[] {
  const typeOf = (id: string): string => base.items.find((it) => it.id === id)?.type ?? ''
  return [
    ...base.items.flatMap(({ type, defects }) => defects.map((defect) => ({ type, defect }))),
    ...base.draws.defects.map(({ item, defect }) => ({ type: typeOf(item), defect })),
  ]
}
