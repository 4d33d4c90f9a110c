/**
 * Scenarios, packs and their words that came with this build, read by the same readers as any file from outside.
 */
import type { Pack, ScenarioBase } from '../../engine'
import { readPack } from '../../files/rulePack/read'
import { readScenario } from '../../files/scenario/read'
import type { Words } from '../../text'
import { recordedRuns } from './recordedRuns'

const scenarioTexts = import.meta.glob<string>('../../../scenarios/*/scenario.json', {
  query: '?raw',
  import: 'default',
  eager: true,
})
const scenarioWords = import.meta.glob<string>('../../../scenarios/*/text.en.json', {
  query: '?raw',
  import: 'default',
  eager: true,
})
const packTexts = import.meta.glob<string>('../../../scenarios/packs/*/pack.json', {
  query: '?raw',
  import: 'default',
  eager: true,
})
const packWords = import.meta.glob<string>('../../../scenarios/packs/*/text.en.json', {
  query: '?raw',
  import: 'default',
  eager: true,
})

/** Name of the folder that a file lies in. */
const folderOf = (path: string) => path.split('/').at(-2) ?? ''

const byFolder = (texts: Record<string, string>): ReadonlyMap<string, string> =>
  new Map(Object.entries(texts).map(([path, text]) => [folderOf(path), text]))

const scenarios = byFolder(scenarioTexts)
const packs = byFolder(packTexts)
const wordsOfScenario = byFolder(scenarioWords)
const wordsOfPack = byFolder(packWords)

/** Every scenario and its clean run as they are kept, by place: `<slug>/scenario.json`, for who reads them elsewhere. */
export function scenarioFiles(): Readonly<Record<string, string>> {
  const files = [...scenarios].flatMap(([id, text]) => {
    const clean = cleanRunText(id)
    return [
      [`${id}/scenario.json`, text] as const,
      ...(clean === undefined ? [] : [[`${id}/runs/clean.json`, clean] as const]),
    ]
  })
  return Object.fromEntries(files)
}

/** A scenario or a pack of one's own in place of the shelf's of that id, for one job: their texts as a file has them. */
export interface OwnEdition {
  readonly kind: 'scenario' | 'pack'
  readonly id: string
  readonly file: string
  readonly words: string
}

let own: OwnEdition | undefined

/** From now on this one is read, wherever something of that id is asked for; nothing: what is on the shelf. */
export function layEdition(edition: OwnEdition | undefined): void {
  own = edition
}

const findOwn = (kind: OwnEdition['kind'], id: string): OwnEdition | undefined =>
  own?.kind === kind && own.id === id ? own : undefined

/** File and words as they came with this build, whatever is laid over them; empty where there are none. */
export function shippedTexts(kind: OwnEdition['kind'], id: string): readonly [file: string, words: string] {
  const [files, words] = kind === 'pack' ? [packs, wordsOfPack] : [scenarios, wordsOfScenario]
  return [files.get(id) ?? '', words.get(id) ?? '']
}

export const scenarioIds = [...scenarios.keys()].sort()
export const packIds = [...packs.keys()].sort()

export function requireScenario(id: string): ScenarioBase {
  const read = readScenario(scenarioText(id))
  if (!read.ok) throw new Error(`scenario ${id}: ${read.issues.map((it) => `${it.path} ${it.found}`).join('; ')}`)
  return read.value
}

export function requirePack(id: string): Pack {
  const read = readPack(packText(id))
  if (!read.ok) throw new Error(`pack ${id}: ${read.issues.map((it) => `${it.path} ${it.found}`).join('; ')}`)
  return read.value
}

export const scenarioText = (id: string): string => findOwn('scenario', id)?.file ?? scenarios.get(id) ?? ''
export const packText = (id: string): string => findOwn('pack', id)?.file ?? packs.get(id) ?? ''
export const cleanRunText = (id: string): string | undefined => recordedRuns(id).clean

export const scenarioWordsOf = (id: string): Words => wordsIn(findOwn('scenario', id)?.words ?? wordsOfScenario.get(id))
export const packWordsOf = (id: string): Words => wordsIn(findOwn('pack', id)?.words ?? wordsOfPack.get(id))

/** Words that came with the build were checked by its tests. */
function wordsIn(text: string | undefined): Words {
  if (!text) return {}
  const read = JSON.parse(text) as { words?: Words }
  return read.words ?? (read as unknown as Words)
}
