/**
 * Whether an order can be carried out: first its form (who, what with, on what, values within what is physically
 * possible), then what the action itself asks of the world. Orders come from outside: nothing here throws.
 */
import { isHere, isHurt } from '../site/presence'
import { findItem, findPerson } from '../site/questions'
import type { Site } from '../site/site'
import type { Action, Order, Refusal, Value, ValueSpec } from './action'
import { refuse } from './refuse'
import { actions } from './registry'

/** Longest lists that an order may carry. */
const mostCorners = 60
const mostCards = 200

/** Metres from the pole beyond which nothing of the site is. */
const farthest = 2000

export function checkOrder(site: Site, order: Order): Refusal | undefined {
  const action = actions.get(order.do)
  if (!action) return refuse(order, 'unknown-action')
  if (!findPerson(site, order.who)) return refuse(order, 'unknown-person')
  if (!isHere(site, order.who)) return refuse(order, 'not-here-yet', { person: order.who })
  return (
    checkForm(site, action, order) ??
    closed(site, order) ??
    hurt(site, order) ??
    away(site, order) ??
    action.check(site, order)
  )
}

function closed(site: Site, order: Order): Refusal | undefined {
  return site.paper.closed ? refuse(order, 'job-closed') : undefined
}

/** Whoever lies there does nothing. */
function hurt(site: Site, order: Order): Refusal | undefined {
  return isHurt(site, order.who) ? refuse(order, 'hurt', { person: order.who }) : undefined
}

/** Whoever has left the place does nothing but come back. */
function away(site: Site, order: Order): Refusal | undefined {
  return site.away?.includes(order.who) && order.do !== 'come-back' ? refuse(order, 'away') : undefined
}

/** The order names what the action uses, and every value lies within what is physically possible. */
export function checkForm(site: Site, action: Action, order: Order): Refusal | undefined {
  const isOptional = (name: string): boolean => action.optional?.includes(name) ?? false
  if (order.with === undefined && action.withTypes && !isOptional('with'))
    return refuse(order, 'value-missing', { value: 'with' })
  if (order.with !== undefined && !isItemFor(site, action, order.with))
    return refuse(order, 'unknown-item', { item: order.with })
  if (order.on === undefined && action.things && !isOptional('on'))
    return refuse(order, 'value-missing', { value: 'on' })
  if (order.on !== undefined && !action.things?.(site).includes(order.on))
    return refuse(order, 'unknown-thing', { thing: order.on })
  const specs = action.values ?? {}
  const unknown = Object.keys(order.values).find((name) => !Object.hasOwn(specs, name))
  if (unknown !== undefined) return refuse(order, 'not-a-value', { value: unknown })
  for (const [name, spec] of Object.entries(specs)) {
    const value = Object.hasOwn(order.values, name) ? order.values[name] : undefined
    if (value === undefined && isOptional(name)) continue
    if (value === undefined) return refuse(order, 'value-missing', { value: name })
    if (!isPossible(site, spec, value)) return refuse(order, 'not-a-choice', { value: name })
  }
  return undefined
}

function isItemFor(site: Site, action: Action, id: string): boolean {
  const item = findItem(site, id)
  return item !== undefined && (action.withTypes?.includes(item.type) ?? false)
}

function isPossible(site: Site, spec: ValueSpec, value: Value): boolean {
  switch (spec.kind) {
    case 'number':
      return typeof value === 'number' && Number.isFinite(value) && value >= spec.low && value <= spec.high
    case 'choice':
      return isChoice(spec.of(site), spec.many, value)
    case 'point':
      return isPoint(value)
    case 'outline':
      return Array.isArray(value) && value.length >= 3 && value.length <= mostCorners && value.every(isPoint)
    case 'text':
      return typeof value === 'string' && value.length <= 500
    case 'cards':
      return (
        Array.isArray(value) &&
        value.length <= mostCards &&
        value.every((it) => typeof it === 'string' && it.length <= 100)
      )
  }
}

function isChoice(choices: readonly string[], many: boolean, value: Value): boolean {
  if (!many) return typeof value === 'string' && choices.includes(value)
  if (!Array.isArray(value)) return false
  const picked: readonly unknown[] = value
  return new Set(picked).size === picked.length && picked.every((it) => typeof it === 'string' && choices.includes(it))
}

function isPoint(value: unknown): boolean {
  if (typeof value !== 'object' || value === null || !('x' in value) || !('y' in value)) return false
  return [value.x, value.y].every((it) => typeof it === 'number' && Number.isFinite(it) && Math.abs(it) <= farthest)
}
