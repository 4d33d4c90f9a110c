/** What is chosen at the Depot. It stays while one looks at another sheet, and follows the job that is open. */
import { createStore } from 'zustand/vanilla'
import type { FolderCard } from '../storage/makeCard'
import { packShelf } from '../storage/packShelf'
import { findCard, shelf } from '../storage/shelf'
import type { JobHead, Purpose } from './jobStore'

/** What a place must have to stand on the list; empty: any. */
export interface Wanted {
  readonly words: string
  readonly pole: FolderCard['poleKind'] | ''
  readonly trait: FolderCard['traits'][number] | ''
  readonly pack: string
}

export interface Depot {
  readonly scenario: string
  readonly purpose: Purpose
  readonly seed: string
  readonly part: string
  readonly pack: string
  readonly wanted: Wanted
}

export const anyPlace: Wanted = { words: '', pole: '', trait: '', pack: '' }

const packOf = (card: FolderCard | undefined): string => card?.pack ?? packShelf[0]?.id ?? ''

export const depotStore = createStore<Depot>(() => ({
  scenario: shelf[0]?.id ?? '',
  purpose: 'practise',
  seed: '1',
  part: 'beginning',
  pack: packOf(shelf[0]),
  wanted: anyPlace,
}))

export const setDepot = (some: Partial<Omit<Depot, 'scenario'>>): void => depotStore.setState(some)

/** With it come the rules that it is meant for; a part that cannot be prepared there becomes the beginning. */
export function chooseScenario(id: string): void {
  const card = findCard(id)
  if (!card) return
  const { part } = depotStore.getState()
  const isPrepared = card.parts.some((it) => it === part)
  depotStore.setState({ scenario: id, pack: packOf(card), ...(isPrepared ? {} : { part: 'beginning' }) })
}

export const want = (some: Partial<Wanted>): void =>
  depotStore.setState({ wanted: { ...depotStore.getState().wanted, ...some } })

/** Whoever comes back finds the job that is open chosen; the seed of a scored run is the assessor's. */
export function followJob({ scenario, pack, purpose, seed, startsAt }: JobHead): void {
  chooseScenario(scenario)
  depotStore.setState({ pack, ...(purpose === 'practise' ? { purpose, seed: String(seed), part: startsAt } : {}) })
}
