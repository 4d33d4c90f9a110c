/**
 * Boards as this browser keeps them. A tab works on one of them by name; where another tab has changed that one meanwhile,
 * this tab goes on under a name of its own, so that neither draft is lost.
 */
import { isObject } from '../../../files/form/formNode'
import { keep } from '../../storage/keep'
import type { Draft } from './draft'

export interface Board {
  readonly draft: Draft
  readonly origin: { readonly id: string } | null
}

/** A board that is kept besides this tab's. */
export interface OtherBoard extends Pick<Draft, 'kind'> {
  readonly name: string
  readonly id: string
}

const first = 'office-draft'
/** Where this tab remembers which board is its own, also after a reload. */
const ownKey = 'earths-on/board'

/** Of each tab; a browser may refuse it. */
function findSession(): Storage | undefined {
  try {
    return globalThis.sessionStorage
  } catch {
    return undefined
  }
}

const session = findSession()

let name = session?.getItem(ownKey) ?? first
/** As this tab read or wrote it last: anything else there is another tab's. */
let seen = keep.readText(name)

function moveTo(next: string): void {
  name = next
  seen = keep.readText(next)
  session?.setItem(ownKey, next)
}

function freeName(): string {
  const taken = keep.names(first)
  for (let number = 2; ; number++) if (!taken.includes(`${first}-${number}`)) return `${first}-${number}`
}

export const ownBoard = (): Board | undefined => boardIn(name)

function boardIn(of: string): Board | undefined {
  const kept = keep.read(of)
  if (!isObject(kept) || !isObject(kept.draft)) return undefined
  const { kind, file, words } = kept.draft
  if ((kind !== 'pack' && kind !== 'scenario') || !isObject(file) || !isObject(words)) return undefined
  return { draft: { kind, file, words }, origin: isObject(kept.origin) ? { id: String(kept.origin.id) } : null }
}

export const otherBoards = (): readonly OtherBoard[] =>
  keep.names(first).flatMap((each) => {
    const board = each === name ? undefined : boardIn(each)
    return board ? [{ name: each, kind: board.draft.kind, id: String(board.draft.file.id) }] : []
  })

/** Null: the board was cleared. @returns whether it is kept, and whether another tab's was found where this one was */
export function keepBoard(board: Board | null): { readonly isKept: boolean; readonly isApart: boolean } {
  const isApart = keep.readText(name) !== seen
  if (isApart) moveTo(freeName())
  if (!board) keep.remove(name)
  const isKept = board === null || keep.write(name, board)
  seen = keep.readText(name)
  return { isKept, isApart }
}

/** From now on this tab works on that one. */
export function takeBoard(of: string): Board | undefined {
  moveTo(of)
  return ownBoard()
}

export const throwAway = (of: string): void => keep.remove(of)

/** @param onChange another tab has changed this tab's own board, or one of the others */
export function watchBoards(onChange: (what: 'own' | 'other') => void): void {
  globalThis.addEventListener?.('storage', () => onChange(keep.readText(name) === seen ? 'other' : 'own'))
}
