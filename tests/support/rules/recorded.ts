/** The recorded runs and the shipped packs, read the way the program reads them. */
import { readFileSync } from 'node:fs'
import { actions, drawScenario, type Order, type Pack, type Scenario } from '../../../src/engine'
import { readPack } from '../../../src/files/rulePack/read'
import { readRun } from '../../../src/files/run/read'
import { readWords } from '../../../src/files/words/read'
import { marrowBendBase } from '../marrowBend'

const root = new URL('../../../scenarios/', import.meta.url)

export interface Recorded {
  readonly scenario: Scenario
  readonly orders: readonly Order[]
}

export function recorded(name: string): Recorded {
  const base = marrowBendBase()
  const read = readRun(readFileSync(new URL(`marrow-bend/runs/${name}.json`, root), 'utf8'), actions, base)
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 2))
  return { scenario: drawScenario(base, read.value.seed, read.value.purpose), orders: read.value.orders }
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
