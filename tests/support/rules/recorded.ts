/** The recorded runs and the shipped packs, read the way the program reads them. */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { actions, drawScenario, type Order, type Pack, type Scenario } from '../../../src/engine'
import { readPack } from '../../../src/files/rulePack/read'
import { readRun } from '../../../src/files/run/read'
import { readWords } from '../../../src/files/words/read'
import { scenarioBase } from '../record/shelf'

const root = new URL('../../../scenarios/', import.meta.url)

export interface Recorded {
  readonly scenario: Scenario
  readonly orders: readonly Order[]
  /** Under whose rules it was recorded. */
  readonly pack: string
}

export function recorded(name: string, slug = 'marrow-bend'): Recorded {
  const base = scenarioBase(slug)
  const read = readRun(readFileSync(new URL(`${slug}/runs/${name}.json`, root), 'utf8'), actions, base)
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 2))
  const { seed, purpose, orders, pack } = read.value
  return { scenario: drawScenario(base, seed, purpose), orders, pack }
}

/** Recorded runs of every scenario in which nothing is to be found: those that are called clean. */
export function cleanRuns(): readonly { readonly slug: string; readonly name: string }[] {
  return readdirSync(root, { withFileTypes: true })
    .filter((it) => it.isDirectory() && existsSync(new URL(`${it.name}/runs/`, root)))
    .flatMap(({ name: slug }) =>
      readdirSync(new URL(`${slug}/runs/`, root))
        .filter((file) => /^clean.*\.json$/.test(file))
        .map((file) => ({ slug, name: file.replace('.json', '') })),
    )
}

export function shippedPack(id = 'concrete-rod'): Pack {
  const read = readPack(readFileSync(new URL(`packs/${id}/pack.json`, root), 'utf8'))
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 2))
  return read.value
}

export function shippedWords(id = 'concrete-rod'): Readonly<Record<string, string>> {
  const read = readWords(readFileSync(new URL(`packs/${id}/text.en.json`, root), 'utf8'))
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 2))
  return read.value.words
}
