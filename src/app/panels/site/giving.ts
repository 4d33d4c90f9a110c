/** From a pressed act to an order, from wherever it was pressed. */
import type { Value } from '../../../engine'
import { type Afford, affordsOf, findHandAct } from '../../stores/affords'
import { jobStore } from '../../stores/jobStore'
import { type Draft, give, goOnUntilFree } from '../../stores/orders'
import { closeSheet, openSheet, rememberLast, viewStore } from '../../stores/viewStore'

export function giveAfford(afford: Afford, people: readonly string[], values?: Readonly<Record<string, Value>>): void {
  if (!values && afford.fields.length > 0) {
    openSheet(afford.key)
    return
  }
  const draft: Draft = {
    do: afford.act,
    ...(afford.item === null ? {} : { with: afford.item }),
    ...(afford.on === null ? {} : { on: afford.on }),
    values: values ?? {},
  }
  giveDraft(draft, people)
}

/** To somebody who is busy: when free. */
export function giveDraft(draft: Draft, people: readonly string[]): void {
  const isBusy = jobStore.getState().busy.some((doing) => people.includes(doing.who))
  if (isBusy && !goOnUntilFree(people)) return
  if (give(draft, people)) rememberLast(draft)
  closeSheet()
  focusTree()
}

/** Enter on the chosen thing: what the hand would do, or else to the sheet. */
export function actOnThing(): void {
  const { persons, thing } = viewStore.getState()
  const who = persons[0]
  if (!who) return
  const hand = findHandAct(who, thing)
  if (hand) giveAfford(hand, persons)
  else focusActs()
}

/** One key: the last act with its figures on what is pointed at now. */
export function again(): void {
  const { last, persons, thing } = viewStore.getState()
  if (!last) return
  giveDraft({ ...last, ...(last.on === undefined || thing === null ? {} : { on: thing }) }, persons)
}

/** One key: an act by its name on what is pointed at. */
export function giveNamed(act: string, values: Readonly<Record<string, Value>> = {}): void {
  const { persons, thing } = viewStore.getState()
  const who = persons[0]
  if (!who || thing === null) return
  const afford = affordsOf(who, thing).find((it) => it.act === act)
  if (afford) giveAfford(afford, persons, afford.fields.length > 0 && Object.keys(values).length === 0 ? undefined : values)
}

export function focusTree(): void {
  requestAnimationFrame(() => document.querySelector<HTMLElement>('[role="treeitem"][aria-selected="true"], [role="row"][aria-selected="true"]')?.focus())
}

export function focusActs(): void {
  requestAnimationFrame(() => document.querySelector<HTMLElement>('.slip .act:not([aria-disabled])')?.focus())
}
