// The Depot's cards against the files they are made of: read here as plain JSON, not by the program's reader.

import { expect, test } from 'vitest'
import { makeCard } from '../../../src/app/storage/makeCard'
import { filesBelow, read } from '../../support/sourceTree'

interface File {
  readonly id: string
  readonly feeders: readonly { readonly voltageV: number }[]
  readonly switches: readonly { readonly label: string }[]
  readonly pole: { readonly number: string; readonly heightM: number; readonly buttLengthM: number }
  readonly crew: readonly unknown[]
  readonly items: readonly unknown[]
}

const folders = filesBelow('scenarios')
  .filter((path) => path.endsWith('/scenario.json'))
  .map((path) => path.replace(/\/scenario\.json$/, ''))

test.each(folders)('the card of %s says what its files say', (folder) => {
  const [scenario, words] = [read(`${folder}/scenario.json`), read(`${folder}/text.en.json`)]
  const card = makeCard(scenario, words, undefined)
  const file = JSON.parse(scenario) as File
  const told = (JSON.parse(words) as { words: Record<string, string> }).words
  expect(card).toMatchObject({
    id: file.id,
    voltage: file.feeders[0]!.voltageV,
    switches: file.switches.map((it) => it.label),
    pole: file.pole.number,
    crew: file.crew.length,
    items: file.items.length,
    parts: ['beginning'],
  })
  expect(card.poleLength).toBeCloseTo(file.pole.heightM + file.pole.buttLengthM, 9)
  expect(card.words['scenario.name']).toBe(told['scenario.name'])
  expect(Object.keys(card.words).every((key) => key.startsWith('scenario.'))).toBe(true)
})

test('a clean run that is there prepares the parts of the job', () => {
  const [scenario, words, run] = ['scenario.json', 'text.en.json', 'runs/clean.json'].map((name) =>
    read(`scenarios/marrow-bend/${name}`),
  )
  expect(makeCard(scenario!, words!, run).parts).toEqual([
    'beginning',
    'gear',
    'isolated',
    'below-lv',
    'earths-on',
    'work-done',
  ])
})

test('a scenario that cannot be read stops the build with its faults', () => {
  const broken = read('scenarios/marrow-bend/scenario.json').replace('"heightM": 8.4', '"heightM": -8.4')
  expect(() => makeCard(broken, read('scenarios/marrow-bend/text.en.json'), undefined)).toThrow(/pole\.heightM/)
})
