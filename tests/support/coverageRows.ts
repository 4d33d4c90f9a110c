/**
 * What of the trade is exercised, by whom: every paragraph of the procedure, row of the gear table, defect, event, exposure
 * path and rule, with the scenarios in which it comes up and the tests that name it.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { actions, demonstrate, drawScenario, gearCatalogue, type ScenarioBase } from '../../src/engine'
import { mechanisms } from '../../src/engine/hazard/circuit/livening'
import { exposurePaths } from '../../src/engine/hazard/paths'
import { observedRules } from '../../src/engine/rules/observedRules'
import { readRun } from '../../src/files/run/read'
import type { Run } from '../../src/files/run/run'
import { paragraphs } from './coverage'
import { packOf, scenarioBase, scenarioSlugs } from './record/shelf'

export interface CoverageRow {
  readonly name: string
  /** What carries it in the program. */
  readonly by: readonly string[]
  readonly scenarios: readonly string[]
  readonly tests: readonly string[]
}

export type Kind = 'paragraphs' | 'gear' | 'defects' | 'events' | 'paths' | 'rules'

const root = new URL('../../', import.meta.url)
const packIds: readonly string[] = readdirSync(new URL('scenarios/packs/', root)).sort()

interface Played {
  readonly slug: string
  readonly base: ScenarioBase
  readonly runs: readonly Run[]
  readonly acts: ReadonlySet<string>
  /** Rules that found something to look at, as `pack/rule`. */
  readonly rules: ReadonlySet<string>
}

/** Recorded runs as they lie there, and the job as it is shown by every pack, quiet and with the line coming alive. */
function play(slug: string): Played {
  const base = scenarioBase(slug)
  const folder = new URL(`scenarios/${slug}/runs/`, root)
  const files = existsSync(folder) ? readdirSync(folder) : []
  const runs = files.flatMap((file) => {
    const read = readRun(readFileSync(new URL(file, folder), 'utf8'), actions, base)
    return read.ok ? [read.value] : []
  })
  const shown = [1, 2].flatMap((seed) => packIds.map((pack) => show(base, pack, seed)))
  return {
    slug,
    base,
    runs,
    acts: new Set([...runs.flatMap(({ orders }) => orders.map((it) => it.do)), ...shown.flatMap(({ acts }) => acts)]),
    rules: new Set([...runs.flatMap(foundIn), ...shown.flatMap(({ rules }) => rules)]),
  }
}

const foundIn = ({ pack, expect }: Run): readonly string[] =>
  (expect?.findings ?? []).map(([rule]) => `${pack}/${rule}`)

/** Nothing when it is stuck: the soak says why. */
function show(base: ScenarioBase, id: string, seed: number): Readonly<Record<'acts' | 'rules', readonly string[]>> {
  const pack = packOf(id)
  try {
    const { timeline, orders } = demonstrate(drawScenario(base, seed, 'practise'), pack)
    const rules = [...observedRules(timeline, pack)].map((rule) => `${id}/${rule}`)
    return { acts: orders.map((it) => it.do), rules }
  } catch {
    return { acts: [], rules: [] }
  }
}

/** Test files by path, with their text. */
function readTests(): readonly (readonly [path: string, text: string])[] {
  return readdirSync(new URL('tests/', root), { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.test\.tsx?$|engine\/rules\/cases\/|Cases\.ts$|qualification\/.*\.json$/.test(path))
    .map((path) => [path, readFileSync(new URL(`tests/${path}`, root), 'utf8')] as const)
}

/** @param isPlayed false: quick, without a word on scenarios */
export function coverageRows(isPlayed = true): Readonly<Record<Kind, readonly CoverageRow[]>> {
  const played = isPlayed ? scenarioSlugs().map(play) : []
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
  const ofCatalogue = (it: CoverageRow): CoverageRow => ({
    ...it,
    tests: [...new Set([...it.tests, 'engine/gear/catalogue.test.ts'])],
  })
  return {
    paragraphs: paragraphs.map((it) => {
      const acts = [...actions.values()].filter(({ covers }) => covers.includes(it)).map(({ id }) => id)
      return row(it, acts, ({ acts: done }) => acts.some((act) => done.has(act)))
    }),
    // Each entry of the catalogue with each of its defects is held to the contract, and flipped in the test of belief.
    gear: numbered(45).map((n) => {
      const types = [...gearCatalogue.values()].filter(({ rows }) => rows.includes(n)).map(({ id }) => id)
      return ofCatalogue(row(`row ${n}`, types, ({ base }) => base.items.some(({ type }) => types.includes(type))))
    }),
    defects: [...gearCatalogue.values()].flatMap((type) =>
      type.defects.map(({ id }) =>
        ofCatalogue(
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
      return row(`path ${n}`, ids, ({ runs }) => runs.some(isMet))
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
