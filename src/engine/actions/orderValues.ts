/** Values of an order that checkOrder has already looked at. */
import type { GroundPoint } from '../site/place'
import type { ItemId, ThingId } from '../site/scenario'
import { invariant } from '../units/invariant'
import type { Order } from './action'

export function numberIn(order: Order, name: string): number {
  const value = order.values[name]
  invariant(typeof value === 'number', `a number ${name}`, value)
  return value
}

export function choiceIn(order: Order, name: string): string {
  const value = order.values[name]
  invariant(typeof value === 'string', `a choice ${name}`, value)
  return value
}

export function listIn(order: Order, name: string): readonly string[] {
  const value = order.values[name]
  invariant(Array.isArray(value), `a list ${name}`, value)
  return value as readonly string[]
}

export function findPointIn(order: Order, name: string): GroundPoint | undefined {
  const value = order.values[name]
  return typeof value === 'object' && 'x' in value ? value : undefined
}

export function pointIn(order: Order, name: string): GroundPoint {
  const point = findPointIn(order, name)
  invariant(point, `a point ${name}`, order.values[name])
  return point
}

export function outlineIn(order: Order, name: string): readonly GroundPoint[] {
  const value = order.values[name]
  invariant(Array.isArray(value), `an outline ${name}`, value)
  return value as readonly GroundPoint[]
}

export function itemIn(order: Order): ItemId {
  invariant(order.with !== undefined, 'an item', order.do)
  return order.with
}

export function thingIn(order: Order): ThingId {
  invariant(order.on !== undefined, 'a thing', order.do)
  return order.on
}
