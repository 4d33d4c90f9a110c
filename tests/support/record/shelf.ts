/** Scenarios and packs as they lie in the folders, read by the program's own readers. */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import type { Pack, ScenarioBase } from '../../../src/engine'
import { readPack } from '../../../src/files/rulePack/read'
import { readScenario } from '../../../src/files/scenario/read'

const folder = new URL('../../../scenarios/', import.meta.url)

/** Every folder with a scenario in it, by name. */
export function scenarioSlugs(): readonly string[] {
  return readdirSync(folder)
    .filter((slug) => existsSync(new URL(`${slug}/scenario.json`, folder)))
    .sort()
}

export const scenarioText = (slug: string): string => readFileSync(new URL(`${slug}/scenario.json`, folder), 'utf8')
export const packText = (id: string): string => readFileSync(new URL(`packs/${id}/pack.json`, folder), 'utf8')

/** @throws Error with every issue of the file */
export function scenarioBase(slug: string): ScenarioBase {
  const read = readScenario(scenarioText(slug))
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 2))
  return read.value
}

/** @throws Error with every issue of the file */
export function packOf(id: string): Pack {
  const read = readPack(packText(id))
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 2))
  return read.value
}
