// README and DEVELOPERS are read first, so they are checked like code: what they promise and what they map is there.

import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { foldersBelow, read, root } from '../support/sourceTree'

const readme = read('README.md')
const developers = read('DEVELOPERS.md')

describe('the README', () => {
  const [title, job = ''] = readme.split(/\n\n+/)

  test('opens with the job in one paragraph', () => {
    expect(title).toBe('# Earths On')
    for (const word of ['isolate', 'permit', 'barrier', 'rod', 'prove dead', 'earth every conductor', 'bond']) {
      expect(job).toContain(word)
    }
  })

  test('gives the two commands, and they exist', () => {
    const { scripts } = JSON.parse(read('package.json'))
    for (const name of ['start', 'test']) {
      expect(readme).toContain(`\`npm ${name}\``)
      expect(scripts).toHaveProperty(name)
    }
  })

  test('says what a pass is not', () => {
    expect(readme).toContain('not a field authorisation')
    expect(readme).toMatch(/employer.s rules, local codes and licensed practice decide/)
  })
})

test.each([
  ['README.md', readme],
  ['DEVELOPERS.md', developers],
])('every link and every named file of %s is there', (_name, text) => {
  const links = [...text.matchAll(/\]\((?!https?:)([^)#]+)/g)].map(([, path]) => path!)
  const named = [...text.matchAll(/`((?:src|tests|scenarios|[.]ci)\/[\w./-]+)`/g)].map(([, path]) => path!)
  expect([...links, ...named].filter((path) => !existsSync(join(root, path)))).toEqual([])
})

test('every npm script that the papers name exists', () => {
  const { scripts } = JSON.parse(read('package.json'))
  const named = [...`${readme}${developers}`.matchAll(/npm run (?:-s )?([\w-]+)/g)].map(([, name]) => name!)
  expect(named.length).toBeGreaterThan(3)
  expect(named.filter((name) => !(name in scripts))).toEqual([])
})

test('the folder map of DEVELOPERS is the tree', () => {
  const isMapped = (path: string) => /^src\/([^/]+|(engine|app)\/[^/]+|engine\/physics\/[^/]+)$/.test(path)
  expect(mappedFolders()).toEqual(foldersBelow('src').filter(isMapped))
})

test('the door of DEVELOPERS is the engine’s door', () => {
  const section = developers.split('## The door')[1]?.split('\n## ')[0] ?? ''
  const told = [...section.matchAll(/`(\w+)`/g)].map(([, name]) => name!)
  const names = [...read('src/engine/index.ts').matchAll(/\{([^}]*)\}/g)].flatMap(([, list]) =>
    list!.split(',').map((name) => name.trim().replace(/^type /, '')),
  )
  expect(told.sort()).toEqual(names.filter((name) => name !== '').sort())
})

test('each word has one meaning in the terms of DEVELOPERS', () => {
  const section = developers.split('## Terms')[1]?.split('\n## ')[0] ?? ''
  const words = [...section.matchAll(/^\| ([^|]+?) \|/gm)].flatMap(([, cell]) => cell!.split(', ')).slice(1)
  const terms = words.filter((word) => !word.startsWith('---'))
  expect(terms.length).toBeGreaterThan(25)
  expect(terms.filter((term, index) => terms.indexOf(term) !== index)).toEqual([])
})

/** Reads the indented list that follows the line `src/`. */
function mappedFolders(): string[] {
  const map = /^```\nsrc\/\n([\s\S]*?)^```/m.exec(developers)?.[1] ?? ''
  const parents = ['src']
  const folders: string[] = []
  for (const line of map.trimEnd().split('\n')) {
    const [, indent = '', name = ''] = /^( +)([\w-]+)\//.exec(line) ?? []
    const depth = indent.length / 2
    parents[depth] = name
    folders.push(parents.slice(0, depth + 1).join('/'))
  }
  return folders.sort()
}
