/**
 * Where the person is looking: place, chosen crew, chosen thing, what is open. One selection for the site list, the
 * drawings and the scene.
 */
import { createStore } from 'zustand/vanilla'
import type { Draft } from './orders'

export const places = ['depot', 'job-sheet', 'gear', 'site', 'debrief'] as const
/** `figures` and `office` belong to no job: they are reached from the Depot. */
export type PlaceName = (typeof places)[number] | 'figures' | 'office'

export interface View {
  readonly place: PlaceName
  /** Crew members that an order goes to, in the order in which they were marked. */
  readonly persons: readonly string[]
  /** Thing or item that is pointed at; null: nothing in particular. */
  readonly thing: string | null
  /** Row of the site list: a thing may stand in two places. */
  readonly node: string
  /** Action sheet: closed, or open with the act that is being filled in. */
  readonly sheet: { readonly act: string | null } | null
  /** The slip with the acts was put away, until something is chosen; away at first, so that the site is seen whole. */
  readonly isSlipAway: boolean
  readonly folded: readonly string[]
  readonly dialog: 'caution' | 'settings' | 'keys' | 'hint' | null
  /** Next card of the plan. */
  readonly card: number
  /** For *again*: the last acts with their figures, newest first. */
  readonly lasts: readonly Draft[]
  /** On the tarp: who signs the register. */
  readonly keeper: string | null
  /** On the tarp: what was turned over and is not judged yet. */
  readonly inHand: string | null
  readonly drawing: 'drawings' | 'scene'
  /** The Site shows the livening, not the job. */
  readonly isLivening: boolean
}

const start: View = {
  place: 'depot',
  persons: [],
  thing: null,
  node: 'crew',
  sheet: null,
  isSlipAway: true,
  folded: [],
  dialog: null,
  card: 0,
  lasts: [],
  keeper: null,
  inHand: null,
  drawing: 'scene',
  isLivening: false,
}

export const viewStore = createStore<View>(() => start)

const set = viewStore.setState

export const goTo = (place: PlaceName): void => set({ place, sheet: null })

export function choosePersons(persons: readonly string[]): void {
  const { thing, isSlipAway } = viewStore.getState()
  set({ persons, sheet: null, isSlipAway: isSlipAway && thing === null })
}

export function markPerson(id: string): void {
  const { persons } = viewStore.getState()
  if (!persons.includes(id)) set({ persons: [...persons, id] })
}

/** Marks one more, or takes the mark away; the last one stays. */
export function togglePerson(id: string): void {
  const { persons } = viewStore.getState()
  if (!persons.includes(id)) set({ persons: [...persons, id] })
  else if (persons.length > 1) set({ persons: persons.filter((it) => it !== id) })
}

export const chooseThing = (thing: string | null, node: string = thing ?? 'crew'): void =>
  set({ thing, node, sheet: null, isSlipAway: false })

export const openSheet = (act: string | null = null): void => set({ sheet: { act }, isSlipAway: false })

export const closeSheet = (): void => set({ sheet: null })

export const putSlipAway = (): void => set({ sheet: null, isSlipAway: true })

export const takeSlip = (): void => set({ isSlipAway: false })

/** The slip lies beside the picture: something is pointed at, and it was not put away. */
export const isSlipOut = ({ thing, node, isSlipAway }: View): boolean =>
  !isSlipAway && (thing !== null || node === 'crew')

/** How many acts *again* can find. */
const remembered = 8

export const rememberLast = (last: Draft): void =>
  set({ lasts: [last, ...viewStore.getState().lasts].slice(0, remembered) })

export const chooseKeeper = (keeper: string): void => set({ keeper })

export const holdInHand = (inHand: string | null): void => set({ inHand })

export const showDrawing = (drawing: View['drawing']): void => set({ drawing })

export const showDialog = (dialog: View['dialog']): void => set({ dialog })

export function toggleFold(id: string): void {
  const { folded } = viewStore.getState()
  set({ folded: folded.includes(id) ? folded.filter((it) => it !== id) : [...folded, id] })
}

export const showLivening = (isLivening: boolean): void => set({ isLivening })

export const resetView = (persons: readonly string[]): void =>
  set({ ...start, place: 'job-sheet', persons, drawing: viewStore.getState().drawing })
