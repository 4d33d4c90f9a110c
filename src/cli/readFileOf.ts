/** A file of any format that the program reads, told by its first key. */
import { actions } from '../engine'
import { foundText, refuse, type Read } from '../files/issue'
import { readJson } from '../files/json/readJson'
import { readQualification } from '../files/qualification/readQualification'
import { qualificationFormat } from '../files/qualification/schema'
import { readPack } from '../files/rulePack/read'
import { packFormat } from '../files/rulePack/schema'
import { readRun } from '../files/run/read'
import { runFormat } from '../files/run/run'
import { readScenario } from '../files/scenario/read'
import { scenarioFormat } from '../files/scenario/schema'
import { readWords, wordsFormat } from '../files/words/read'

const readers = new Map<string, (text: string) => Read<unknown>>([
  [scenarioFormat, readScenario],
  [packFormat, readPack],
  [runFormat, (text: string) => readRun(text, actions)],
  [wordsFormat, readWords],
  [qualificationFormat, readQualification],
])

export function readFileOf(text: string): Read<unknown> {
  const json = readJson(text)
  if (!json.ok) return json
  const format = (json.value as { readonly format?: unknown } | null)?.format
  const read = typeof format === 'string' ? readers.get(format) : undefined
  return read
    ? read(text)
    : refuse({ path: '$.format', found: foundText(format), allowed: `one of ${[...readers.keys()].join(', ')}` })
}
