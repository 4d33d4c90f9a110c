/**
 * Small edits of a recorded run, for tables of rules: an act is named as people would name it, `pw test conductor-b`,
 * with `#2` for the second of that name. A name that means no act is an error of the table.
 */
import type { Order } from '../../../src/engine'

export type Edit = (orders: readonly Order[]) => readonly Order[]

/** Places of the acts that a name means: who, act, then any of on, with or a value. */
export function placesOf(orders: readonly Order[], name: string): readonly number[] {
  const [bare = '', nth] = name.split(' #')
  const [who = '*', verb = '', target] = bare.split(' ')
  const places = orders.flatMap((order, i) => {
    const isMeant =
      (who === '*' || order.who === who) && order.do === verb && (target === undefined || isAbout(order, target))
    return isMeant ? [i] : []
  })
  const chosen = nth === undefined ? places : places.slice(Number(nth) - 1, Number(nth))
  if (chosen.length === 0) throw new Error(`the run has no act "${name}"`)
  return chosen
}

function isAbout(order: Order, target: string): boolean {
  return order.on === target || order.with === target || Object.values(order.values).includes(target)
}

const placeOf = (orders: readonly Order[], name: string): number => placesOf(orders, name)[0]!

/** Leaves out every act of that name. */
export const drop =
  (...names: readonly string[]): Edit =>
  (orders) => {
    const gone = names.flatMap((name) => placesOf(orders, name))
    return orders.filter((_, i) => !gone.includes(i))
  }

/** Changes who does it, what with, what on or its values: the first act of that name. */
export const change =
  (name: string, to: Partial<Omit<Order, 'at' | 'do'>> & { readonly do?: string }): Edit =>
  (orders) => {
    const place = placeOf(orders, name)
    return orders.map((order, i) =>
      i === place ? { ...order, ...to, values: { ...order.values, ...to.values } } : order,
    )
  }

/** Every act of that name by somebody else. */
export const by =
  (who: string, ...names: readonly string[]): Edit =>
  (orders) => {
    const places = names.flatMap((name) => placesOf(orders, name))
    return orders.map((order, i) => (places.includes(i) ? { ...order, who } : order))
  }

export const before =
  (name: string, anchor: string): Edit =>
  (orders) =>
    moved(orders, placeOf(orders, name), placeOf(orders, anchor), 0)

export const after =
  (name: string, anchor: string): Edit =>
  (orders) =>
    moved(orders, placeOf(orders, name), placeOf(orders, anchor), 1)

function moved(orders: readonly Order[], from: number, anchor: number, offset: 0 | 1): readonly Order[] {
  const order = orders[from]!
  const at = orders[anchor]!.at
  const place = anchor + offset
  const list = [...orders.slice(0, place), { ...order, at }, ...orders.slice(place)]
  return list.filter((_, i) => i !== (from < place ? from : from + 1))
}

/** An act that the run does not have, before one that it has. */
export const add =
  (order: Omit<Order, 'at' | 'values'> & Partial<Pick<Order, 'values'>>, anchor: string): Edit =>
  (orders) => {
    const place = placeOf(orders, anchor)
    return [...orders.slice(0, place), { values: {}, ...order, at: orders[place]!.at }, ...orders.slice(place)]
  }

/** The same act again at once. */
export const again =
  (name: string): Edit =>
  (orders) => {
    const place = placeOf(orders, name)
    return [...orders.slice(0, place + 1), orders[place]!, ...orders.slice(place + 1)]
  }

/** Time passes before an act and all that follow. */
export const wait =
  (seconds: number, name: string): Edit =>
  (orders) => {
    const place = placeOf(orders, name)
    return orders.map((order, i) => (i >= place ? { ...order, at: order.at + seconds } : order))
  }

export const swapped =
  (a: string, b: string): Edit =>
  (orders) => {
    const [i, j] = [placeOf(orders, a), placeOf(orders, b)]
    const [first, second] = [orders[i]!, orders[j]!]
    return orders.map((order, k) =>
      k === i ? { ...second, at: first.at } : k === j ? { ...first, at: second.at } : order,
    )
  }

export const none: Edit = (orders) => orders
export const all =
  (...edits: readonly Edit[]): Edit =>
  (orders) =>
    edits.reduce((list, edit) => edit(list), orders)
