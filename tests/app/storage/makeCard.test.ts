// The Depot's cards against the files they are made of: read here as plain JSON, not by the program's reader.

import { expect, test } from 'vitest'
import { makeCard } from '../../../src/app/storage/makeCard'
import { filesBelow, read } from '../../support/sourceTree'

interface File {
  readonly id: string
  readonly feeders: readonly { readonly voltageV: number }[]
  readonly switches: readonly { readonly label: string }[]
  readonly pole: { readonly number: string; readonly heightM: number; readonly buttLengthM: number }
  readonly crew: readonly { readonly arrivesAtS?: number }[]
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
    crew: file.crew.filter((it) => it.arrivesAtS === undefined).length,
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

// What stands on and beside each pole, read off the summaries by hand.
test.each([
  ['bellweather-farm', 'wood', 'concrete-rod', ['transformer', 'own-source', 'earth-return']],
  ['coldmere-col', 'wood', 'concrete-rod', ['beside', 'coil']],
  ['kestrel-flat', 'wood', 'concrete-rod', []],
  ['marrow-bend', 'concrete', 'concrete-rod', ['low-voltage', 'crossing', 'stay']],
  ['rustmesa-junction', 'wood', 'multi-ground', ['neutral-wire', 'bucket']],
  ['saltbridge-road', 'double', 'concrete-rod', ['low-voltage', 'lamps', 'transformer', 'own-source']],
])('%s is found by its pole, its rules and what it has', (slug, poleKind, pack, traits) => {
  const [scenario, words, run] = ['scenario.json', 'text.en.json', 'runs/clean.json'].map((name) =>
    read(`scenarios/${slug}/${name}`),
  )
  const card = makeCard(scenario!, words!, run)
  expect(card).toMatchObject({ poleKind, pack })
  expect(card.traits).toEqual(expect.arrayContaining(traits))
  if (traits.length === 0) expect(card.traits).toEqual([])
})

test('a scenario that cannot be read stops the build with its faults', () => {
  const broken = read('scenarios/marrow-bend/scenario.json').replace('"heightM": 8.4', '"heightM": -8.4')
  expect(() => makeCard(broken, read('scenarios/marrow-bend/text.en.json'), undefined)).toThrow(/pole\.heightM/)
})
