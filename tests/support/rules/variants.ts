/** Every run that differs from a recorded one by a single act: left out, swapped, repeated, done by somebody else. */
import type { Order } from '../../../src/engine'

export interface Variant {
  readonly edit: 'drop' | 'swap' | 'repeat' | 'by-other'
  /** Place of the act in the recorded run. */
  readonly index: number
  readonly name: string
  readonly orders: readonly Order[]
}

/** @param crew ids: somebody else is who stands before in it, of the first the last */
export function listVariants(orders: readonly Order[], crew: readonly string[]): readonly Variant[] {
  const otherOf = (who: string): string => crew.at(crew.indexOf(who) - 1) ?? who
  return orders.flatMap((order, index) => {
    const name = nameOf(order)
    const variants: Variant[] = [
      { edit: 'drop', index, name, orders: orders.filter((_, i) => i !== index) },
      { edit: 'repeat', index, name, orders: [...orders.slice(0, index + 1), order, ...orders.slice(index + 1)] },
      {
        edit: 'by-other',
        index,
        name,
        orders: orders.map((it, i) => (i === index ? { ...it, who: otherOf(it.who) } : it)),
      },
    ]
    const next = orders.findIndex((it, i) => i > index && it.who === order.who)
    const later = orders[next]
    if (later === undefined) return variants
    const swapped = orders.map((it, i) =>
      i === index ? { ...later, at: it.at } : i === next ? { ...order, at: it.at } : it,
    )
    return [...variants, { edit: 'swap', index, name: `${name} <> ${nameOf(later)}`, orders: swapped }]
  })
}

function nameOf({ who, do: verb, on, with: held, values }: Order): string {
  const said = Object.keys(values).length === 0 ? '' : JSON.stringify(values)
  return [who, verb, on, held, said].filter((part) => part !== undefined && part !== '').join(' ')
}
