/** How fields are called. Units: the endings of the keys as scenarios/README.md and the SI write them. */
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { entryName, labelOf, rangeOf } from '../../../src/app/panels/office/labels'
import { findSection, sectionsOf } from '../../../src/app/panels/office/sections'
import { draftOfTexts, type Draft } from '../../../src/app/stores/office/draft'
import { formOf } from '../../../src/files/form/formOf'
import { scenarioSchema } from '../../../src/files/scenario/schema'
import { fieldsOf } from '../../support/formPlaces'

const number = { kind: 'number', low: 0, high: 10, isWhole: false } as const
const text = { kind: 'text', most: 10, allowed: '' } as const

describe('a label', () => {
  it.each([
    ['heightM', 'Height, m'],
    ['resistivityOhmM', 'Resistivity, Ωm'],
    ['resistanceOhmPerM', 'Resistance, Ω/m'],
    ['windMPerS', 'Wind, m/s'],
    ['areaMm2', 'Area, mm²'],
    ['thighM2', 'Thigh, m²'],
    ['pickupA', 'Pickup, A'],
    ['ratingVA', 'Rating, VA'],
    ['networkCapacitanceF', 'Network capacitance, F'],
    ['frequencyHz', 'Frequency, Hz'],
    ['workingLoadKg', 'Working load, kg'],
    ['takesS', 'Takes, s'],
    ['xM', 'East, m'],
    ['permittivity', 'Permittivity'],
  ])('%s: %s', (key, label) => expect(labelOf(key, number)).toBe(label))

  it('of what holds no figure has no unit', () => expect(labelOf('bandM', text)).toBe('Band m'))

  it('shows no ending of a key as a word of its own', () => {
    const labels = fieldsOf(formOf(scenarioSchema)).map(({ path, node }) => labelOf(path.split('.').at(-1)!, node))
    expect(labels.length).toBeGreaterThan(150)
    expect(
      labels.filter((it) => / (m|v|a|s|ohm|hz|kg|mm2|m2|f|va)( per [ms])?$/i.test(it) && !it.includes(', ')),
    ).toEqual([])
  })
})

it.each([
  [number, '0 to 10'],
  [{ ...number, isWhole: true }, 'whole, 0 to 10'],
  [{ ...number, high: Infinity }, 'from 0'],
  [{ ...number, low: -Infinity }, 'at most 10'],
  [text, ''],
] as const)('a range is told: %#', (node, told) => expect(rangeOf(node)).toBe(told))

it.each([
  [{ id: 'E-07', type: 'earth-lead' }, 'E-07, earth-lead'],
  [{ item: 'BT-42', defect: 'leak-right' }, 'BT-42, leak-right'],
  [{ id: 'clash-a', kind: 'clash' }, 'clash-a, clash'],
  [{ resistivityOhmM: 100, thicknessM: 1 }, 'Entry 3, 100, 1'],
])('an entry is named by what tells it apart: %#', (value, name) => expect(entryName(value, 2)).toBe(name))

const read = (...paths: readonly string[]): Draft => {
  const { draft } = draftOfTexts(
    paths.map((path) => readFileSync(`scenarios/${path}`, 'utf8')),
    null,
  ) as { draft: Draft }
  return draft
}

describe.each([
  ['a scenario', read('marrow-bend/scenario.json', 'marrow-bend/text.en.json')],
  ['a pack', read('packs/concrete-rod/pack.json', 'packs/concrete-rod/text.en.json')],
])('headings of %s', (_name, draft) => {
  const sections = sectionsOf(draft)

  it('hold every field of its files', () => {
    const shown = sections.flatMap((it) => it.fields.map(({ key }) => `${it.file}.${key}`))
    const keys = (['file', 'words'] as const).flatMap((file) => Object.keys(draft[file]).map((key) => `${file}.${key}`))
    expect(keys.filter((key) => !shown.includes(key) && !/[.](format|version)$/.test(key))).toEqual([])
  })

  it('are where a field of it is looked for', () => {
    for (const { id, file, fields, element } of sections.filter((it) => it.element === undefined))
      for (const { key } of fields)
        expect(findSection(draft, [file, key]).section, `${file}.${key} ${element}`).toBe(id)
  })

  it('show a key that no form knows', () => {
    const strange = { ...draft, file: { ...draft.file, colour: 'red' } }
    const { section } = findSection(strange, ['file', 'colour'])
    expect(sectionsOf(strange).find((it) => it.id === section)?.hasStrangers).toBe(true)
  })
})

it('the sentence of a rule is found in the rule', () => {
  const draft = read('packs/concrete-rod/pack.json', 'packs/concrete-rod/text.en.json')
  const rules = draft.file.rules as readonly { readonly id: string; readonly element: string }[]
  const at = rules.findIndex((it) => it.id === 'crew-checked')
  expect(findSection(draft, ['words', 'words', 'crew-checked.asks'])).toEqual({
    section: `element ${rules[at]!.element}`,
    within: ['file', 'rules', at],
  })
})
