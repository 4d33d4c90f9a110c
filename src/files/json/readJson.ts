/**
 * Text to value, strictly: the whole of RFC 8259 and nothing beside it, with a limit on size and depth, no key twice, no
 * key that means something to the language, no number that is not finite. All faults at once, each with its path.
 * Syntax, positions and paths come from jsonc-parser; the value itself from JSON.parse.
 */
import { printParseErrorCode, visit, type ParseErrorCode } from 'jsonc-parser'
import { foundText, jsonPath, refuse, type Issue, type Read } from '../issue'

export const sizeLimit = 4_000_000
export const depthLimit = 64
/** More would not be read; the first ones are enough to see what is wrong. */
const issueLimit = 200

const reservedKeys = ['__proto__', 'constructor', 'prototype']

/** @param limit most characters; exports of long runs may be given more than the shipped files need */
export function readJson(text: string, limit = sizeLimit): Read<unknown> {
  if (text.length > limit) {
    return refuse({ path: '$', found: `${text.length} characters`, allowed: `at most ${limit} characters` })
  }
  // A parser that calls itself for each level would run out of stack before it could complain.
  const deep = firstTooDeep(text)
  if (deep !== undefined) {
    return refuse({
      path: '$',
      found: `nested deeper than ${depthLimit} at character ${deep}`,
      allowed: `at most ${depthLimit} levels`,
    })
  }
  const issues = faultsOf(text)
  if (issues.length > 0) return { ok: false, issues: issues.slice(0, issueLimit) }
  try {
    return { ok: true, value: JSON.parse(text) as unknown }
  } catch (error) {
    // The two readers disagree about a corner of the grammar; the stricter one decides.
    return refuse({ path: '$', found: error instanceof Error ? error.message : 'a fault', allowed: 'JSON' })
  }
}

function firstTooDeep(text: string): number | undefined {
  let depth = 0
  let isInString = false
  for (let i = 0; i < text.length; i++) {
    const character = text[i]
    if (isInString) {
      if (character === '\\') i++
      else if (character === '"') isInString = false
    } else if (character === '"') isInString = true
    else if (character === '[' || character === '{') {
      depth++
      if (depth > depthLimit) return i
    } else if (character === ']' || character === '}') depth--
  }
  return undefined
}

function faultsOf(text: string): readonly Issue[] {
  const issues: Issue[] = []
  const keys: Set<string>[] = []
  visit(
    text,
    {
      onObjectBegin: () => {
        keys.push(new Set())
      },
      onObjectEnd: () => {
        keys.pop()
      },
      onObjectProperty: (key, _offset, _length, line, _character, pathOf) => {
        const here = keys.at(-1)
        const path = (): string => jsonPath([...pathOf(), key])
        if (reservedKeys.includes(key))
          issues.push({ path: path(), found: `the key "${key}"`, allowed: 'any other key' })
        if (here?.has(key))
          issues.push({ path: path(), found: `"${key}" again, line ${line + 1}`, allowed: 'each key once' })
        here?.add(key)
      },
      onLiteralValue: (value: unknown, offset, length, _line, _character, pathOf) => {
        if (typeof value !== 'number' || Number.isFinite(value)) return
        issues.push({
          path: jsonPath(pathOf()),
          found: foundText(text.slice(offset, offset + length)),
          allowed: 'a finite number',
        })
      },
      onError: (code: ParseErrorCode, offset, length, line, character) => {
        const found =
          offset >= text.length ? 'the end of the text' : foundText(text.slice(offset, offset + Math.max(length, 1)))
        issues.push({
          path: '$',
          found: `${found} at line ${line + 1}, column ${character + 1}`,
          allowed: allowedFor(code),
        })
      },
    },
    { disallowComments: true, allowTrailingComma: false },
  )
  return issues
}

function allowedFor(code: ParseErrorCode): string {
  const words = printParseErrorCode(code)
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
  return `JSON without this fault: ${words}`
}
