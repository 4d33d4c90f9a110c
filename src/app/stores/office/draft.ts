/** A pack or a scenario on the board: its file and its words as they are being changed, whether or not they are right. */
import type { Issue } from '../../../files/issue'
import { fileText } from '../../../files/canonical'
import { readJson } from '../../../files/json/readJson'
import { readPack } from '../../../files/rulePack/read'
import { packFormat } from '../../../files/rulePack/schema'
import { readScenario } from '../../../files/scenario/read'
import { scenarioFormat } from '../../../files/scenario/schema'
import { missingWords, wordsOfPack, wordsOfScenario } from '../../../files/words/needed'
import { readWords, wordsFormat } from '../../../files/words/read'
import { isObject } from '../../../files/form/formNode'
import type { Step } from './place'
import { placeText, type Place, stepsOf } from './place'

export type DraftKind = 'scenario' | 'pack'

type Json = Readonly<Record<string, unknown>>

export interface Draft {
  readonly kind: DraftKind
  readonly file: Json
  readonly words: Json
}

/** An issue as `check` prints it, and where its field stands. */
export interface DraftIssue extends Issue {
  readonly place: Place
}

const emptyWords: Json = { format: wordsFormat, version: 1, language: 'en', words: {} }

const kindOf = (file: unknown): DraftKind | 'words' | undefined => {
  const format = isObject(file) ? file.format : undefined
  return format === scenarioFormat
    ? 'scenario'
    : format === packFormat
      ? 'pack'
      : format === wordsFormat
        ? 'words'
        : undefined
}

/**
 * Files from outside, on the board: a scenario or a pack, its words, or both. What is no JSON, or of no such format, is
 * refused; what is wrong inside is shown in the form. Words alone go to what is on the board already.
 */
export function draftOfTexts(
  texts: readonly string[],
  before: Draft | null,
): { readonly draft: Draft; readonly issues?: undefined } | { readonly issues: readonly Issue[] } {
  const read = texts.map((text) => readJson(text))
  const values = read.flatMap((it) => (it.ok ? [it.value] : []))
  const file = values.find((it) => kindOf(it) === 'scenario' || kindOf(it) === 'pack') as Json | undefined
  const words = values.find((it) => kindOf(it) === 'words') as Json | undefined
  const kind = kindOf(file) ?? before?.kind
  const faults = read.flatMap((it) => (it.ok ? [] : it.issues))
  const strangers = values.filter((it) => kindOf(it) === undefined)
  const issues = [
    ...faults,
    ...strangers.map(
      (it): Issue => ({
        path: '$.format',
        found: JSON.stringify(isObject(it) ? (it.format ?? null) : null),
        allowed: [scenarioFormat, packFormat, wordsFormat].join(', '),
      }),
    ),
  ]
  if (issues.length > 0) return { issues }
  if ((!file && !before) || kind === undefined || kind === 'words')
    return { issues: [{ path: '$', found: 'words alone', allowed: 'a scenario or a pack with them' }] }
  return { draft: { kind, file: file ?? before!.file, words: words ?? (file ? emptyWords : before!.words) } }
}

export const draftText = (draft: Draft, which: 'file' | 'words'): string => fileText(draft[which])

/** Everything that is wrong with it, at once: what `check` says of the two files. */
export function issuesOf({ kind, file, words }: Draft): readonly DraftIssue[] {
  const text = JSON.stringify(file)
  const said = readWords(JSON.stringify(words))
  const read = kind === 'pack' ? needed(readPack(text), wordsOfPack) : needed(readScenario(text), wordsOfScenario)
  const missing = said.ok ? missingWords(read.keys, said.value) : said.issues
  return [...at('file', read.issues), ...at('words', missing)]
}

function needed<T>(
  read: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly issues: readonly Issue[] },
  keysOf: (value: T) => readonly string[],
): { readonly issues: readonly Issue[]; readonly keys: readonly string[] } {
  return read.ok ? { issues: [], keys: keysOf(read.value) } : { issues: read.issues, keys: [] }
}

const at = (file: Step, issues: readonly Issue[]): readonly DraftIssue[] =>
  issues.map((it) => ({ ...it, place: [file, ...stepsOf(it.path)] }))

export interface Change {
  readonly place: Place
  readonly name: string
  readonly before: unknown
  readonly now: unknown
}

/** What differs from the edition that it was made from, field by field; entries of lists are told apart by their ids. */
export function changesOf(before: Draft, now: Draft): readonly Change[] {
  return [...compare(['file'], before.file, now.file), ...compare(['words'], before.words, now.words)]
}

function compare(place: Place, before: unknown, now: unknown, name = placeText(place)): readonly Change[] {
  if (JSON.stringify(before) === JSON.stringify(now)) return []
  if (isObject(before) && isObject(now)) {
    const keys = [...new Set([...Object.keys(before), ...Object.keys(now)])]
    return keys.flatMap((key) => compare([...place, key], before[key], now[key], inside(name, key)))
  }
  const [was, is] = [byId(before), byId(now)]
  const isSameLength = Array.isArray(before) && Array.isArray(now) && before.length === now.length
  if (isSameLength && (was === undefined || is === undefined) && now.every(isObject))
    return now.flatMap((it, i) => compare([...place, i], before[i], it, `${name}[${i}]`))
  if (was === undefined || is === undefined) return [{ place, name, before, now }]
  const ids = [...new Set([...was.keys(), ...is.keys()])]
  const order = isSameOrder(was, is) ? [] : [{ place, name, before: [...was.keys()], now: [...is.keys()] }]
  const inEach = ids.flatMap((id) =>
    compare([...place, ...(is.has(id) ? [[...is.keys()].indexOf(id)] : [])], was.get(id), is.get(id), `${name} ${id}`),
  )
  return [...order, ...inEach]
}

const inside = (name: string, key: string): string => (name === 'file' || name === 'words' ? key : `${name}.${key}`)

/** The entries of a list by their ids, where each has its own. */
function byId(value: unknown): ReadonlyMap<string, unknown> | undefined {
  if (!Array.isArray(value)) return undefined
  const ids = value.map((it: unknown) => (isObject(it) && typeof it.id === 'string' ? it.id : undefined))
  if (ids.includes(undefined) || new Set(ids).size < ids.length) return undefined
  return new Map(value.map((it: unknown, i) => [ids[i]!, it]))
}

function isSameOrder(was: ReadonlyMap<string, unknown>, is: ReadonlyMap<string, unknown>): boolean {
  const both = (of: ReadonlyMap<string, unknown>, other: ReadonlyMap<string, unknown>) =>
    [...of.keys()].filter((id) => other.has(id)).join(' ')
  return both(was, is) === both(is, was)
}
