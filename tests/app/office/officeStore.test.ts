/** The board: back and forth, typing is one step, nothing is lost when the page is left. */
import { afterEach, describe, expect, it } from 'vitest'
import {
  change,
  clearBoard,
  goTo,
  moveEntry,
  officeStore,
  openFiles,
  openShipped,
  redo,
  undo,
} from '../../../src/app/stores/office/officeStore'
import { keep } from '../../../src/app/storage/keep'
import { valueAt } from '../../../src/app/stores/office/place'
import { issuesOf } from '../../../src/app/stores/office/draft'

afterEach(clearBoard)

const at = (...place: readonly (string | number)[]): unknown => valueAt(officeStore.getState().draft, place)
const wind = ['file', 'weather', 'windMPerS'] as const

describe('steps', () => {
  it('back and forth, and a new change ends the way forth', () => {
    openShipped({ kind: 'scenario', id: 'marrow-bend' })
    change(wind, 7)
    change(wind, 9)
    undo()
    expect(at(...wind)).toBe(7)
    undo()
    expect(at(...wind)).toBe(4)
    redo()
    expect(at(...wind)).toBe(7)
    change(wind, 1)
    redo()
    expect(at(...wind)).toBe(1)
  })

  it('typing into one field is one step, into the next another', () => {
    openShipped({ kind: 'scenario', id: 'marrow-bend' })
    for (const figure of [1, 12, 123]) change(['file', 'soil', 'layers', 0, 'resistivityOhmM'], figure, true)
    for (const figure of [5, 52]) change(['file', 'soil', 'layers', 1, 'resistivityOhmM'], figure, true)
    undo()
    expect([
      at('file', 'soil', 'layers', 0, 'resistivityOhmM'),
      at('file', 'soil', 'layers', 1, 'resistivityOhmM'),
    ]).toEqual([123, 300])
    undo()
    expect(at('file', 'soil', 'layers', 0, 'resistivityOhmM')).toBe(100)
  })

  it('an entry moves by one, and not beyond its list', () => {
    openShipped({ kind: 'pack', id: 'concrete-rod' })
    const [first, second] = at('file', 'elements') as readonly string[]
    moveEntry(['file', 'elements', 0], 1)
    expect((at('file', 'elements') as readonly string[]).slice(0, 2)).toEqual([second, first])
    moveEntry(['file', 'elements', 0], -1)
    expect(at('file', 'elements', 0)).toBe(second)
  })
})

it('every change is kept at once, with where it came from; a cleared board leaves nothing', () => {
  openShipped({ kind: 'scenario', id: 'marrow-bend' })
  change(wind, 11)
  expect(keep.read('office-draft')).toMatchObject({
    draft: { kind: 'scenario', file: { weather: { windMPerS: 11 } }, words: { language: 'en' } },
    origin: { kind: 'scenario', id: 'marrow-bend' },
  })
  clearBoard()
  expect(keep.read('office-draft')).toBeUndefined()
})

it('a field that is gone to has everything around it open', () => {
  openShipped({ kind: 'scenario', id: 'marrow-bend' })
  goTo(['file', 'feeders', 2, 'earthFault', 'pickupA'], 'network')
  const { section, unfolded, goal } = officeStore.getState()
  expect(section).toBe('network')
  expect(goal).toBe('file.feeders[2].earthFault.pickupA')
  expect([...unfolded]).toEqual(
    expect.arrayContaining(['file.feeders', 'file.feeders[2]', 'file.feeders[2].earthFault']),
  )
})

it('a file that cannot be opened leaves the board as it was', async () => {
  openShipped({ kind: 'scenario', id: 'marrow-bend' })
  const before = officeStore.getState().draft
  await openFiles([new File(['no JSON'], 'scenario.json')])
  expect(officeStore.getState().refused.length).toBeGreaterThan(0)
  expect(officeStore.getState().draft).toBe(before)
  expect(issuesOf(before!)).toEqual([])
})
