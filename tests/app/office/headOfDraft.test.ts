/** A draft as a job: played and graded on its own texts, marked, never scored; the shelf's edition is untouched. */
import { readFileSync } from 'node:fs'
import { afterEach, expect, it } from 'vitest'
import { layEdition, requirePack, requireScenario, scenarioWordsOf } from '../../../src/app/storage/library'
import { beginJob } from '../../../src/app/storage/replayJob'
import { findRule } from '../../../src/app/storage/findRule'
import { draftOfTexts } from '../../../src/app/stores/office/draft'
import { headOfDraft } from '../../../src/app/stores/office/headOfDraft'
import { headFor } from '../../../src/app/stores/headFor'
import { change, clearBoard, officeStore, openShipped } from '../../../src/app/stores/office/officeStore'

afterEach(() => {
  clearBoard()
  layEdition(undefined)
})

it('a scenario: its soil, its words and its name, marked; then the shelf again', () => {
  openShipped({ kind: 'scenario', id: 'marrow-bend' })
  change(['file', 'soil', 'layers', 0, 'resistivityOhmM'], 777)
  change(['words', 'words', 'scenario.name'], 'Dry Bend')
  const head = headOfDraft(officeStore.getState().draft!, '', 4)
  expect(head).toMatchObject({ scenario: 'marrow-bend', title: 'Dry Bend, own edition', purpose: 'practise', seed: 4 })
  expect(beginJob(head).scenario.soil.layers[0]?.resistivity).toBe(777)
  expect(scenarioWordsOf('marrow-bend')['scenario.name']).toBe('Dry Bend')
  const shelfs = headFor('marrow-bend', 1, 'practise')
  expect(shelfs.own).toBeUndefined()
  expect(beginJob(shelfs).scenario.soil.layers[0]?.resistivity).toBe(100)
  expect(requireScenario('marrow-bend').soil.layers[0]?.resistivity).toBe(100)
})

it('a pack: its severities, on the scenario whose runs are shown; rules looked up are of the edition that lies there', () => {
  openShipped({ kind: 'pack', id: 'concrete-rod' })
  const rules = officeStore.getState().draft!.file.rules as readonly { readonly id: string }[]
  const severity = ['file', 'rules', rules.findIndex((it) => it.id === 'nobody-on-lead'), 'severity']
  expect(findRule('concrete-rod', 'nobody-on-lead')?.severity).toBe('critical')
  change(severity, 'major')
  const head = headOfDraft(officeStore.getState().draft!, 'marrow-bend', 4)
  expect(head).toMatchObject({ scenario: 'marrow-bend', pack: 'concrete-rod', purpose: 'practise' })
  expect(head.packName).toMatch(/, own edition$/)
  beginJob(head)
  expect(findRule('concrete-rod', 'nobody-on-lead')?.severity).toBe('major')
  beginJob(headFor('marrow-bend', 1, 'practise'))
  expect(findRule('concrete-rod', 'nobody-on-lead')?.severity).toBe('critical')
})

it('an id that the shelf does not have can be tried too', () => {
  const texts = ['scenario.json', 'text.en.json'].map((name) => readFileSync(`scenarios/marrow-bend/${name}`, 'utf8'))
  const read = draftOfTexts([texts[0]!.replace('"id": "marrow-bend"', '"id": "own-bend"'), texts[1]!], null)
  const head = headOfDraft((read as Extract<typeof read, { draft: object }>).draft, '', 4)
  expect(beginJob(head).scenario.id).toBe('own-bend')
  expect(requirePack(head.pack).id).toBe(head.pack)
})
