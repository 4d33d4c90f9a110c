/**
 * The drawing office: what is on the board, what was undone, where the eye is. The draft is kept in this browser at every
 * change, and the page can be left at any time.
 */
import { createStore } from 'zustand/vanilla'
import type { Issue } from '../../../files/issue'
import { shippedTexts } from '../../storage/library'
import { type Draft, type DraftKind, draftOfTexts } from './draft'
import {
  type Board,
  type OtherBoard,
  keepBoard,
  otherBoards,
  ownBoard,
  takeBoard,
  throwAway,
  watchBoards,
} from './keptBoards'
import { type Place, placeText, valueAt, withValue } from './place'

/** Where a draft came from. */
export interface Origin {
  readonly kind: DraftKind
  readonly id: string
}

export interface Office {
  readonly draft: Draft | null
  /** The edition of the shelf that it was made from; null: it came as a file of another id. */
  readonly origin: Origin | null
  readonly past: readonly Draft[]
  readonly future: readonly Draft[]
  /** Of the last change: more of the same is one step back. */
  readonly last: string | null
  /** A file that could not be opened. */
  readonly refused: readonly Issue[]
  readonly section: string
  readonly unfolded: ReadonlySet<string>
  /** Field that is to be gone to. */
  readonly goal: string | null
  readonly isKept: boolean
  /** Another tab works on what was this board: this tab's draft is kept apart from it. */
  readonly isApart: boolean
  readonly others: readonly OtherBoard[]
  /** Which variant is tried, as written. */
  readonly seed: string
}

const none: Office = {
  draft: null,
  origin: null,
  past: [],
  future: [],
  last: null,
  refused: [],
  section: '',
  unfolded: new Set(),
  goal: null,
  isKept: true,
  isApart: false,
  others: [],
  seed: '1',
}

/** Steps that can be undone. */
const most = 200

export const officeStore = createStore<Office>(() => ({ ...none, ...onBoard(ownBoard()), others: otherBoards() }))

const set = officeStore.setState

officeStore.subscribe((office, before) => {
  if (office.draft !== before.draft) keepIt(office)
})

function keepIt({ draft, origin, isApart }: Office): void {
  const kept = keepBoard(draft && { draft, origin })
  set({ isKept: kept.isKept, isApart: isApart || kept.isApart, others: otherBoards() })
}

watchBoards((what) => {
  const office = officeStore.getState()
  if (what === 'own' && office.draft) keepIt(office)
  else set({ others: otherBoards() })
})

function onBoard(board: Board | undefined): Pick<Office, 'draft' | 'origin'> {
  return { draft: board?.draft ?? null, origin: board?.origin ? originOf(board.draft.kind, board.origin) : null }
}

/** What lay here stays kept beside it. */
export function takeOther({ name }: OtherBoard): void {
  const board = takeBoard(name)
  if (board) set({ ...none, ...onBoard(board), others: otherBoards() })
}

export function throwOther({ name }: OtherBoard): void {
  throwAway(name)
  set({ others: otherBoards() })
}

function originOf(kind: DraftKind, file: { readonly id?: unknown }): Origin | null {
  const id = String(file.id)
  return shippedTexts(kind, id)[0] === '' ? null : { kind, id }
}

/** An edition of the shelf as it came with this build. */
export function shippedDraft({ kind, id }: Origin): Draft {
  const read = draftOfTexts(shippedTexts(kind, id), null)
  if (read.issues) throw new Error(`${kind} ${id} of the shelf cannot be read`)
  return read.draft
}

const putOnBoard = (draft: Draft): void => set({ ...none, ...kept(), draft, origin: originOf(draft.kind, draft.file) })

export const openShipped = (origin: Origin): void => putOnBoard(shippedDraft(origin))

export async function openFiles(files: readonly File[]): Promise<void> {
  const { draft: before } = officeStore.getState()
  const read = draftOfTexts(await Promise.all(files.map((it) => it.text())), before)
  if (read.issues) set({ refused: read.issues })
  else putOnBoard(read.draft)
}

export const clearBoard = (): void => set({ ...none, ...kept() })

/** What does not go with a draft. */
function kept(): Pick<Office, 'isKept' | 'isApart' | 'others'> {
  const { isKept, isApart, others } = officeStore.getState()
  return { isKept, isApart, others }
}

/** @param isTyping more of it on the same field is one step back */
export function change(place: Place, value: unknown, isTyping = false): void {
  const { draft, past, last } = officeStore.getState()
  if (!draft) return
  const next = withValue(draft, place, value) as Draft
  const name = isTyping ? placeText(place) : null
  const isMore = name !== null && name === last
  set({ draft: next, past: isMore ? past : [...past, draft].slice(-most), future: [], last: name })
}

/** Everywhere in a list but at its end, what follows moves up. */
export function moveEntry(place: Place, by: -1 | 1): void {
  const index = place.at(-1)
  const list = valueAt(officeStore.getState().draft, place.slice(0, -1))
  if (!Array.isArray(list) || typeof index !== 'number') return
  const to = index + by
  if (to < 0 || to >= list.length) return
  change(place.slice(0, -1), list.with(index, list[to]).with(to, list[index]))
}

export function undo(): void {
  const { draft, past, future } = officeStore.getState()
  const before = past.at(-1)
  if (draft && before) set({ draft: before, past: past.slice(0, -1), future: [draft, ...future], last: null })
}

export function redo(): void {
  const { draft, past, future } = officeStore.getState()
  const [next, ...later] = future
  if (draft && next) set({ draft: next, past: [...past, draft], future: later, last: null })
}

export const chooseSeed = (seed: string): void => set({ seed })

export const showSection = (section: string): void => set({ section })

export function fold(place: Place, isOpen: boolean): void {
  const unfolded = new Set(officeStore.getState().unfolded)
  if (isOpen) unfolded.add(placeText(place))
  else unfolded.delete(placeText(place))
  set({ unfolded })
}

/** Opens everything that the field lies in; the page then moves the eye there. */
export function goTo(place: Place, section = officeStore.getState().section, within: Place = []): void {
  const around = [place, within].flatMap((it) => it.map((_, i) => placeText(it.slice(0, i + 1))))
  set({ section, unfolded: new Set([...officeStore.getState().unfolded, ...around]), goal: placeText(place) })
}

export const reached = (): void => set({ goal: null })
