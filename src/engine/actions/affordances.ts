/** What a thing affords to a person now: every act that could be meant, with what stands in its way. */
import { findItem, findPerson } from '../site/questions'
import type { ItemId, PersonId, ThingId } from '../site/scenario'
import type { Site } from '../site/site'
import type { Action, Order, Refusal } from './action'
import { checkForm } from './checkOrder'
import { isAtHand } from './conditions'
import { actions } from './registry'

export interface Affordance {
  readonly action: string
  /** The item that the act would use; missing when it uses none or when no item will do. */
  readonly with?: ItemId
  /** Values are not looked at: they are asked for when the act is chosen. */
  readonly refusal?: Refusal
}

/**
 * @param thing an item, a thing, or undefined for acts that need none
 * @returns one line per act and item that it could use, by action id and item
 */
export function affordances(site: Site, who: PersonId, thing?: ThingId): readonly Affordance[] {
  if (!findPerson(site, who)) return []
  return [...actions.values()]
    .filter((action) => isAbout(site, action, thing))
    .flatMap((action) => ordersFor(site, action, who, thing))
    .map((order) => describe(site, order))
    .sort((a, b) => (`${a.action} ${a.with ?? ''}` < `${b.action} ${b.with ?? ''}` ? -1 : 1))
}

/** The act is done on the thing, or uses the item that it is. */
function isAbout(site: Site, action: Action, thing: ThingId | undefined): boolean {
  if (thing === undefined) return !action.things && !action.withTypes
  const item = findItem(site, thing)
  const isUsed = item !== undefined && (action.withTypes?.includes(item.type) ?? false)
  return isUsed || (action.things?.(site).includes(thing) ?? false)
}

function ordersFor(site: Site, action: Action, who: PersonId, thing: ThingId | undefined): readonly Order[] {
  const order = { at: site.time, who, do: action.id, values: {} }
  const on = thing !== undefined && action.things?.(site).includes(thing) ? { on: thing } : {}
  const usable = Object.values(site.items).filter((item) => action.withTypes?.includes(item.type))
  if (thing !== undefined && usable.some((item) => item.id === thing)) return [{ ...order, ...on, with: thing }]
  if (!action.withTypes) return [{ ...order, ...on }]
  return usable.filter((item) => isNear(site, who, item.id)).map((item) => ({ ...order, ...on, with: item.id }))
}

/** Items that the person carries or that hang beside them: the others must be pointed at. */
function isNear(site: Site, who: PersonId, id: ItemId): boolean {
  const where = site.items[id]?.where
  if (where?.kind === 'person') return where.person === who
  if (where?.kind === 'left') return isAtHand(site, who, id)
  return where?.kind === 'aloft' || site.hauled.includes(id)
}

function describe(site: Site, order: Order): Affordance {
  const action = actions.get(order.do)
  const refusal = action && findRefusal(site, action, order)
  return { action: order.do, ...(order.with !== undefined && { with: order.with }), ...(refusal && { refusal }) }
}

/** The refusal of the world, if the order is whole but for its values; acts with values answer once these are given. */
function findRefusal(site: Site, action: Action, order: Order): Refusal | undefined {
  const isIncomplete = checkForm(site, { ...action, values: {} }, order) !== undefined
  if (isIncomplete) return undefined
  const hasValues = action.values !== undefined && Object.keys(action.values).length > 0
  return hasValues ? undefined : action.check(site, order)
}
