/** Two tabs of one browser on the same draft: neither overwrites the other, and both are told. */
import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import type * as office from '../../../src/app/stores/office/officeStore'

type Tab = typeof office

/** What two tabs share. */
const local = new Map<string, string>()
const listeners: (readonly [tab: number, listener: () => void])[] = []
let opened = 0

const storageOver = (map: Map<string, string>) => ({
  getItem: (key: string) => map.get(key) ?? null,
  setItem: (key: string, value: string) => void map.set(key, value),
  removeItem: (key: string) => void map.delete(key),
  key: (index: number) => [...map.keys()][index] ?? null,
  get length() {
    return map.size
  },
})

/** A page loaded anew, with what its tab remembers. */
async function openTab(remembered = new Map<string, string>()): Promise<Tab> {
  const number = ++opened
  vi.resetModules()
  vi.stubGlobal('localStorage', storageOver(local))
  vi.stubGlobal('sessionStorage', storageOver(remembered))
  vi.stubGlobal('addEventListener', (_: string, listener: () => void) => listeners.push([number, listener]))
  return import('../../../src/app/stores/office/officeStore')
}

/** The browser tells every tab but the one that wrote. */
const toldBy = (writer: number): void => {
  for (const [tab, listener] of listeners) if (tab !== writer) listener()
}

const wind = ['file', 'weather', 'windMPerS'] as const
const windOf = ({ officeStore }: Tab): unknown =>
  (officeStore.getState().draft?.file as { weather?: { windMPerS?: number } } | undefined)?.weather?.windMPerS

beforeEach(() => {
  local.clear()
  listeners.length = 0
  opened = 0
})
afterEach(() => vi.unstubAllGlobals())

it('the tab that was written over keeps its draft apart, and says so', async () => {
  const one = await openTab()
  one.openShipped({ kind: 'scenario', id: 'marrow-bend' })
  one.change(wind, 7)
  const two = await openTab()
  expect(windOf(two)).toBe(7)
  two.change(wind, 9)
  toldBy(2)
  expect([windOf(one), windOf(two)]).toEqual([7, 9])
  expect(one.officeStore.getState().isApart).toBe(true)
  expect(two.officeStore.getState().isApart).toBe(false)
  toldBy(1)
  expect(two.officeStore.getState().others.map(({ id }) => id)).toEqual(['marrow-bend'])
  one.change(wind, 5)
  two.change(wind, 3)
  expect(
    [...local.values()].map((it) => (JSON.parse(it) as { draft: { file: { weather: object } } }).draft.file.weather),
  ).toMatchObject([{ windMPerS: 3 }, { windMPerS: 5 }])
})

it('without being told it is noticed at the next change', async () => {
  const one = await openTab()
  one.openShipped({ kind: 'scenario', id: 'marrow-bend' })
  const two = await openTab()
  two.openShipped({ kind: 'pack', id: 'two-earths' })
  one.change(wind, 7)
  expect(one.officeStore.getState().isApart).toBe(true)
  expect(local.size).toBe(2)
})

it('loaded anew each goes on with its own; a draft kept beside it can be taken or thrown away', async () => {
  const [ofOne, ofTwo] = [new Map<string, string>(), new Map<string, string>()]
  const one = await openTab(ofOne)
  one.openShipped({ kind: 'scenario', id: 'marrow-bend' })
  const two = await openTab(ofTwo)
  two.change(wind, 9)
  toldBy(2)
  one.change(wind, 7)
  const again = await openTab(ofOne)
  expect(windOf(again)).toBe(7)
  again.takeOther(again.officeStore.getState().others[0]!)
  expect(windOf(again)).toBe(9)
  again.throwOther(again.officeStore.getState().others[0]!)
  expect(again.officeStore.getState().others).toEqual([])
  expect(local.size).toBe(1)
})

it('clearing the board in one tab leaves the other tab its draft', async () => {
  const one = await openTab()
  one.openShipped({ kind: 'scenario', id: 'marrow-bend' })
  const two = await openTab()
  two.change(wind, 9)
  one.clearBoard()
  expect(windOf(await openTab())).toBe(9)
})
