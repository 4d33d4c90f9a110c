// Each ban of .ci/eslint.config.mjs is tried on a line that breaks it, and on the line that should be written instead.

import { ESLint } from 'eslint'
import { describe, expect, test } from 'vitest'
import { root } from '../support/sourceTree'

const eslint = new ESLint({ cwd: root, overrideConfigFile: '.ci/eslint.config.mjs' })

async function complaints(path: string, source: string): Promise<string[]> {
  const [result] = await eslint.lintText(source, { filePath: path })
  return (result?.messages ?? []).map(({ ruleId, message }) => ruleId ?? message)
}

describe('in the engine', () => {
  test.each([
    ['a clock', 'export const now = Date.now()', 'no-restricted-globals'],
    ['a locale', "export const f = new Intl.NumberFormat('en')", 'no-restricted-globals'],
    ['the browser', 'export const w = window', 'no-restricted-globals'],
    ['node', 'export const p = process.argv', 'no-restricted-globals'],
    ['chance', 'export const r = Math.random()', 'no-restricted-syntax'],
    ['a function whose bits differ', 'export const s = Math.sin(1)', 'no-restricted-syntax'],
    ['the same by another way', "export const s = Math['sin'](1)", 'no-restricted-syntax'],
    ['the same taken out first', 'export const { sin } = Math', 'no-restricted-syntax'],
    ['a power', 'export const p = 2 ** 0.5', 'no-restricted-syntax'],
    ['a power in place', 'let p = 2; p **= 0.5; export { p }', 'no-restricted-syntax'],
    ['the order of keys', 'export function f(o: object) { for (const k in o) return k }', 'no-restricted-syntax'],
    ['words', 'export const w = (1).toFixed(2)', 'no-restricted-properties'],
    ['an order by locale', "export const o = 'a'.localeCompare('b')", 'no-restricted-properties'],
    ['the console', "console.log('x')", 'no-console'],
    ['a function longer than a screen', `export function f() {\n${'  f()\n'.repeat(90)}}`, 'max-lines-per-function'],
    ['a file over 400 lines', 'export {}\n'.repeat(401), 'max-lines'],
  ])('%s is refused', async (_what, source, rule) => {
    expect(await complaints('src/engine/site/probe.ts', source)).toContain(rule)
  })

  test('the exact functions and an ordered loop are fine', async () => {
    const source = [
      'export const x = Math.sqrt(2) + Math.max(1, 2) + Math.imul(3, 4) + Math.PI',
      'export const keys = (load: Record<string, number>) => Object.keys(load).sort()',
      '',
    ].join('\n')
    expect(await complaints('src/engine/site/probe.ts', source)).toEqual([])
  })
})

/** Where promises are watched, the linter reads the types of the whole program first. */
const withTypes = { timeout: 90_000 }

test('the app and the files do not write to the console, the command line may', withTypes, async () => {
  expect(await complaints('src/app/main.tsx', "console.log('x')")).toContain('no-console')
  expect(await complaints('src/files/probe.ts', "console.log('x')")).toContain('no-console')
  expect(await complaints('src/cli/qualify.ts', "console.log('x')")).toEqual([])
})

test('a promise that nobody waits for is refused where something can go wrong', withTypes, async () => {
  const source = 'async function save() {}\nexport function f() { save() }'
  for (const path of ['src/app/main.tsx', 'src/cli/qualify.ts']) {
    expect(await complaints(path, source)).toContain('@typescript-eslint/no-floating-promises')
  }
})

test('the rooms between engine and app know no browser and no node', async () => {
  for (const room of ['files', 'text', 'reports', 'records']) {
    expect(await complaints(`src/${room}/probe.ts`, 'export const d = document')).toContain('no-restricted-globals')
    expect(await complaints(`src/${room}/probe.ts`, 'export const b = Buffer')).toContain('no-restricted-globals')
  }
})
