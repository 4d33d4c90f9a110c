/**
 * The act that is being filled in, and the ways an act offers: the form of the slip and the hands in the picture set the
 * same entries, so that an order is the same whichever way it was written.
 */
import { createStore } from 'zustand/vanilla'
import type { Afford } from './affords'
import type { Entries } from './entries'

export interface OpenForm {
  readonly afford: Afford
  readonly entries: Entries
  /** Of these fields; the others stay as written. */
  readonly change: (entries: Entries) => void
}

/** A lead can be laid out by more than one way: each is an order of its own. */
export interface Offer {
  readonly item: string
  readonly ways: readonly { readonly choice: string; readonly name: string }[]
  readonly give: (choice: string) => void
}

export interface Forms {
  readonly form: OpenForm | null
  readonly offer: Offer | null
}

export const formStore = createStore<Forms>(() => ({ form: null, offer: null }))

export const openForm = (form: OpenForm): void => formStore.setState({ form })
export const closeForm = (): void => formStore.setState({ form: null })
export const showOffer = (offer: Offer | null): void => formStore.setState({ offer })
