// The digest names the engine's sources: a changed letter, a renamed file or a new file gives another one.

import { cpSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { digestEngine, writeEngineDigest } from '../../.ci/digest.mjs'
import { engineDigest } from '../../src/engine/version/engineDigest'
import { root } from '../support/sourceTree'

let copy: string
let original: string
const version = () => join(copy, 'src/engine/version/engineVersion.ts')

beforeEach(() => {
  copy = mkdtempSync(join(tmpdir(), 'digest-'))
  cpSync(join(root, 'src/engine'), join(copy, 'src/engine'), { recursive: true })
  original = digestEngine(copy)
})

afterEach(() => rmSync(copy, { recursive: true, force: true }))

test('it is 64 hexadecimal digits, and what the engine says of itself', () => {
  expect(original).toMatch(/^[0-9a-f]{64}$/)
  expect(engineDigest).toMatch(/^[0-9a-f]{64}$/)
})

test('a changed letter changes it', () => {
  writeFileSync(version(), `${readFileSync(version(), 'utf8')}// a letter more`)
  expect(digestEngine(copy)).not.toBe(original)
})

test('a renamed file and a new file change it', () => {
  renameSync(version(), version().replace('engineVersion', 'renamed'))
  const renamed = digestEngine(copy)
  writeFileSync(version(), '')
  expect(new Set([original, renamed, digestEngine(copy)]).size).toBe(3)
})

test('the line ends of another system do not change it', () => {
  writeFileSync(version(), readFileSync(version(), 'utf8').replaceAll('\n', '\r\n'))
  expect(digestEngine(copy)).toBe(original)
})

test('writing it down does not change it', () => {
  writeEngineDigest(copy)
  expect(digestEngine(copy)).toBe(original)
  expect(readFileSync(join(copy, 'src/engine/version/engineDigest.ts'), 'utf8')).toContain(`'${original}'`)
})
