// What no tool looks for: what lies at the top, how long files are, what they are called, what was left behind.

import { expect, test } from 'vitest'
import { filesBelow, read, topLevelNames } from '../support/sourceTree'

const topLevel = [
  ...['.ci', '.git', '.gitignore', '.npmrc', 'DEVELOPERS.md', 'LICENSE', 'README.md', 'index.html'],
  ...['package-lock.json', 'package.json', 'public', 'scenarios', 'src', 'tests', 'tsconfig.json', 'vite.config.ts'],
]
const code = /\.(ts|tsx|mjs|css)$/
const sources = filesBelow('src').filter((path) => code.test(path))
const tests = filesBelow('tests').filter((path) => code.test(path))
const scripts = filesBelow('.ci')

const linesOf = (path: string) => read(path).split('\n').length

test('nothing lies at the top that does not belong there', () => {
  expect(topLevelNames().filter((name) => !topLevel.includes(name))).toEqual([])
})

test('no source is longer than 400 lines, no test than 600', () => {
  const isCatalogue = (path: string) => path.startsWith('src/text/') || path.startsWith('src/engine/gear/')
  expect(sources.filter((path) => !isCatalogue(path) && linesOf(path) > 400)).toEqual([])
  expect(tests.filter((path) => linesOf(path) > 600)).toEqual([])
})

test('files are named after what they hold', () => {
  const drawers = /(^|\/)(utils?|helpers?|managers?|data|info|misc|common)(\/|\.|$)/i
  const camelCase = /^[a-z][A-Za-z0-9]*(\.d)?\.(ts|mjs|css)$/
  const pascalCase = /^[A-Z][A-Za-z0-9]*\.tsx$/
  const isWellNamed = (path: string) => {
    const name = path.split('/').at(-1)!
    return name === 'main.tsx' || camelCase.test(name) || pascalCase.test(name)
  }
  expect(sources.filter((path) => drawers.test(path))).toEqual([])
  expect(sources.filter((path) => !isWellNamed(path))).toEqual([])
})

test('every source says first what it is for', () => {
  const isOpened = (path: string) => path.endsWith('index.ts') || /^\s*(\/\/|\/\*)/.test(read(path))
  expect(sources.filter((path) => !isOpened(path))).toEqual([])
})

test('no path of somebody’s machine is written down', () => {
  const machine = new RegExp(`(^|[^a-z.])/(${['work', 'tmp', 'root', 'farm', 'home', 'Users'].join('|')})/`, 'm')
  const words = [...filesBelow('scenarios').filter((path) => path.endsWith('.json')), 'README.md', 'DEVELOPERS.md']
  expect([...sources, ...tests, ...scripts, ...words].filter((path) => machine.test(read(path)))).toEqual([])
})

test('nothing is marked as left for later', () => {
  const later = /\b(todo|fixme|lorem|not implemented|coming soon)\b/i
  expect([...sources, ...scripts].filter((path) => later.test(read(path)))).toEqual([])
})

test('no test is skipped or alone, and each expects something', () => {
  const testFiles = tests.filter((path) => /\.test\.tsx?$/.test(path))
  const isSwitchedOff = /\b(it|test|describe)\.(skip|only|todo|skipIf|runIf)\b/
  const self = 'tests/architecture/hygiene.test.ts'
  expect(testFiles.filter((path) => path !== self && isSwitchedOff.test(read(path)))).toEqual([])
  // describePack expects for the pack that it is given
  const doesExpect = /\bexpect|\bassert|\bfc\.|^describePack\(/m
  expect(testFiles.filter((path) => !doesExpect.test(read(path)))).toEqual([])
})

test('every package is pinned exactly', () => {
  const { dependencies, devDependencies } = JSON.parse(read('package.json')) as Record<string, Record<string, string>>
  const loose = Object.entries({ ...dependencies, ...devDependencies }).filter(
    ([, range]) => !/^\d+\.\d+\.\d+$/.test(range),
  )
  expect(loose).toEqual([])
})
