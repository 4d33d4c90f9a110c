import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { qualify } from '../../src/cli/qualify'

const item = {
  id: 'class-1',
  model: 'insulation',
  basis: 'published',
  source: 'IEC 60903: class 1 is proved at 10 kV',
  inputs: { item: 'glove', class: '1' },
  expected: { proofTestV: 10_000 },
  tolerance: { relative: 0.001 },
}

let folder = ''
let said: string[] = []
let complained: string[] = []

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'qualify-'))
  said = []
  complained = []
  vi.spyOn(console, 'log').mockImplementation((line: string) => void said.push(line))
  vi.spyOn(console, 'error').mockImplementation((line: string) => void complained.push(line))
})

afterEach(() => {
  vi.restoreAllMocks()
  rmSync(folder, { recursive: true })
})

function write(name: string, cases: readonly unknown[]): string {
  const file = join(folder, name)
  writeFileSync(file, JSON.stringify({ format: 'earths-on/qualification', version: 1, cases }))
  return file
}

it('exits 0 when all pass, in files and in folders', () => {
  const file = write('a.json', [item])
  expect(qualify([file, folder])).toBe(0)
  const line = 'passed  class-1  insulation  IEC 60903: class 1 is proved at 10 kV'
  expect(said).toEqual([line, line, '2 passed, 0 failed'])
})

it('exits 1 when one fails', () => {
  expect(qualify([write('a.json', [item, { ...item, id: 'wrong', expected: { proofTestV: 9_000 } }])])).toBe(1)
  expect(said.at(-1)).toBe('1 passed, 1 failed')
})

it('exits 2 and runs nothing when any file cannot be used, with the issues of all', () => {
  const sound = write('a.json', [item])
  const twice = write('b.json', [item, item])
  expect(qualify([sound, twice, join(folder, 'missing.json')])).toBe(2)
  expect(said).toEqual([])
  expect(complained).toHaveLength(2)
  expect(complained[0]).toContain('$.cases[1].id')
})

it('exits 2 for an empty folder and for an option', () => {
  expect(qualify([folder])).toBe(2)
  expect(qualify(['--fast'])).toBe(2)
})

it('gives the results as JSON when asked', () => {
  expect(qualify(['--json', write('a.json', [item])])).toBe(0)
  expect(said.map((line) => JSON.parse(line) as unknown)).toEqual([
    [
      {
        id: 'class-1',
        model: 'insulation',
        source: item.source,
        passed: true,
        reasons: [],
        values: [{ path: 'proofTestV', expected: 10_000, tolerance: { relative: 0.001 }, got: 10_000, isMet: true }],
      },
    ],
  ])
})
