/** From a pressed act to orders, from wherever it was pressed. */
import type { Value } from '../../../engine'
import { type Afford, type SendingUp, affordsOf, findHandAct, ticked } from '../../stores/affords'
import { isGroup, isSharedOut, membersOf } from '../../stores/groups'
import { jobStore } from '../../stores/jobStore'
import { type Draft, give, goOnUntilFree } from '../../stores/orders'
import { closeSheet, openSheet, rememberLast, viewStore } from '../../stores/viewStore'
import { focusTree } from './focus'

type Values = Readonly<Record<string, Value>>

export function giveAfford(afford: Afford, people: readonly string[], values?: Values): void {
  if (!values && afford.fields.length > 0) {
    openSheet(afford.key)
    return
  }
  const { [ticked]: things, ...figures } = values ?? {}
  const draft: Draft = {
    do: afford.act,
    ...(afford.item === null ? {} : { with: afford.item }),
    ...(afford.on === null ? {} : { on: afford.on }),
    values: figures,
  }
  if (isGroup(afford.on)) giveToEach(draft, afford.on, people, things as readonly string[] | undefined)
  else giveDraft(draft, people)
}

/** To somebody who is busy: when free. */
export function giveDraft(draft: Draft, people: readonly string[]): void {
  if (giveWhenFree(draft, people)) rememberLast(draft)
  closeSheet()
  focusTree()
}

function giveWhenFree(draft: Draft, people: readonly string[]): boolean {
  const isBusy = jobStore.getState().busy.some((doing) => people.includes(doing.who))
  return (!isBusy || goOnUntilFree(people)) && give(draft, people)
}

/** An order on a heading: for each thing in turn, or one thing to each person. */
function giveToEach(draft: Draft, group: string, people: readonly string[], chosen?: readonly string[]): void {
  const { belief } = jobStore.getState()
  const members = chosen ?? (belief ? membersOf(belief, group) : [])
  if (isSharedOut(group)) shareOut(draft, members, people)
  else
    for (const on of members) {
      const who = people.filter((id) => canDo(draft, on, id))
      if (who.length > 0) giveWhenFree({ ...draft, on }, who)
    }
  closeSheet()
  focusTree()
}

/** Each person in turn gets the first that nobody has and that the world lets them use. */
function shareOut(draft: Draft, members: readonly string[], people: readonly string[]): void {
  const left = [...members]
  for (const who of people) {
    const index = left.findIndex((on) => canDo(draft, on, who))
    const on = left[index]
    if (on === undefined) continue
    left.splice(index, 1)
    giveWhenFree({ ...draft, on }, [who])
  }
}

const canDo = (draft: Draft, on: string, who: string): boolean =>
  affordsOf(who, on).some(
    (it) => it.act === draft.do && it.refusal === null && (draft.with === undefined || it.item === draft.with),
  )

/** Tied on now, hauled as soon as it is tied: two recorded acts of two people. */
export function sendUp({ item, ties, hauls }: SendingUp): void {
  if (giveWhenFree({ do: 'tie-on', on: item, values: {} }, [ties]) && goOnUntilFree([ties]))
    giveWhenFree({ do: 'haul', on: item, values: {} }, [hauls])
  closeSheet()
  focusTree()
}

/** Enter on the chosen thing: what the hand of each chosen person would do. False when there is nothing of the kind. */
export function actOnThing(): boolean {
  const { persons, thing } = viewStore.getState()
  const hands = persons.flatMap((who) => {
    const hand = findHandAct(who, thing)
    return hand ? [{ who, hand }] : []
  })
  if (hands.length === 0) return false
  for (const { who, hand } of hands) giveAfford(hand, [who])
  return true
}

/** One key: the newest act that the thing pointed at affords, with its figures. */
export function again(): void {
  const { lasts, persons, thing } = viewStore.getState()
  const who = persons[0]
  if (!who) return
  const affords = affordsOf(who, thing)
  const last = lasts.find((draft) =>
    affords.some(
      (it) => it.act === draft.do && it.refusal === null && (draft.with === undefined || it.item === draft.with),
    ),
  )
  if (!last) return
  giveDraft({ ...last, ...(last.on === undefined || thing === null ? {} : { on: thing }) }, persons)
}

/** One key: an act by its name on what is pointed at. */
export function giveNamed(act: string, values: Values = {}): void {
  const { persons, thing } = viewStore.getState()
  giveNamedTo(act, persons, thing, values)
}

export function giveNamedTo(act: string, people: readonly string[], thing: string | null, values: Values = {}): void {
  const who = people[0]
  if (!who || thing === null) return
  const afford = affordsOf(who, thing).find((it) => it.act === act)
  if (afford)
    giveAfford(afford, people, afford.fields.length > 0 && Object.keys(values).length === 0 ? undefined : values)
}
