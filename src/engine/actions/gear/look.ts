/** Looks at a thing or turns an item over: what is seen, never what to think of it. */
import { conductorOf, isFarEnd, isOpened } from '../../site/gaps'
import { traitsOf } from '../../site/liveningTraits'
import { distance } from '../../site/place'
import {
  carriedOf,
  evidenceOf,
  findItem,
  findSwitch,
  gearOf,
  groundPointOf,
  isAloft,
  requireItem,
  requirePerson,
  requireSwitch,
} from '../../site/questions'
import type { ItemId, PersonId, Phase, ThingId } from '../../site/scenario'
import type { Site } from '../../site/site'
import { findJumpersOut } from '../../site/jumpersOut'
import { isDark } from '../../site/weather'
import type { Action, Order, Refusal } from '../action'
import { mark, perceive, type Perceived } from '../changes'
import { isAtHand, switchOf } from '../conditions'
import { atMain, isMain } from '../mains'
import { thingIn } from '../orderValues'
import { refuse } from '../refuse'
import { allThings } from '../things'

/** Clamps, cover and wires at the pole top are made out from so far, metres. */
const sight = 60

export const look: Action = {
  id: 'look',
  covers: ['A15', 'A16', 'A18', 'A19', 'A20', 'A21', 'A22', 'A28', 'A64', 'A85', 'A89'],
  things: allThings,
  check: (site, order) => {
    const thing = thingIn(order)
    return findItem(site, thing) ? itemRefusal(site, order, thing) : thingRefusal(site, order, thing)
  },
  takes: (site, order) => (findItem(site, thingIn(order)) ? 15 : 5),
  apply: (site, order) => {
    const thing = thingIn(order)
    const seen = findItem(site, thing) ? itemSeen(site, thing) : thingSeen(site, thing)
    const looked = seen.reduce((next, each) => perceive(next, order.who, each), site)
    const marked = mark(looked, `looked:${thing}`)
    return thing === 'cover' && marked.cover ? { ...marked, cover: { ...marked.cover, checked: true } } : marked
  },
}

function itemRefusal(site: Site, order: Order, id: ItemId): Refusal | undefined {
  const { where } = requireItem(site, id)
  const isGearOfOwnPlace = where.kind === 'fitted' && isNearFitted(site, order.who)
  if (isAtHand(site, order.who, id) || isGearOfOwnPlace || where.kind === 'quarantine') return undefined
  if (where.kind === 'person' && where.person === order.who) return undefined
  return refuse(order, 'not-in-sight')
}

/** Whoever is up the pole is beside what is fitted there; nobody on the ground can turn it over. */
function isNearFitted(site: Site, who: PersonId): boolean {
  return isAloft(requirePerson(site, who))
}

function thingRefusal(site: Site, order: Order, thing: ThingId): Refusal | undefined {
  if (isMain(site, thing) && !site.scenario.lv.wires.some((it) => it.id === thing)) return atMain(site, order)
  const { place } = requirePerson(site, order.who)
  const isSwitch = findSwitch(site, switchOf(thing)) !== undefined
  const isThere = isSwitch
    ? place.kind === 'switch' && place.id === switchOf(thing)
    : place.kind !== 'switch' && distance(groundPointOf(site, order.who), { x: 0, y: 0 }) <= sight
  if (!isThere) return refuse(order, 'not-in-sight')
  if (isSwitch && thing !== switchOf(thing) && isDark(site) && !hasLamp(site, order.who))
    return refuse(order, 'too-dark')
  if (thing === 'cover' && !site.cover) return refuse(order, 'thing-missing')
  if (thing === 'barrier' && !site.barrier) return refuse(order, 'thing-missing')
  if (thing.startsWith('rod/') && !site.rods.some((rod) => `rod/${rod.item}` === thing))
    return refuse(order, 'thing-missing')
  return undefined
}

/** Carried, and it gives light. */
function hasLamp(site: Site, who: PersonId): boolean {
  const lamp = carriedOf(site, who, 'lamp')
  return lamp !== undefined && gearOf(site, lamp).is.lights === true
}

function itemSeen(site: Site, id: ItemId): readonly Perceived[] {
  return evidenceOf(site, id, 'look').map(({ says, values }) => ({ of: id, by: 'look', says, values }))
}

function thingSeen(site: Site, thing: ThingId): readonly Perceived[] {
  const see = (says: string, values: Perceived['values'] = {}): readonly Perceived[] => [
    { of: thing, by: 'look', says, values },
  ]
  const device = findSwitch(site, switchOf(thing))
  if (device) {
    const state = requireSwitch(site, device.id)
    const blade = thing === device.id ? undefined : (thing.slice(device.id.length + 1) as Phase)
    return blade ? see(`see.blade-${state.blades[blade]}`, { blade }) : see(`see.handle-${state.handle}`)
  }
  const main = site.mains[thing]
  if (main && thing in site.carriers)
    return see('see.transformer', { carriers: site.carriers[thing]!, main: main.position })
  if (main && !site.scenario.lv.wires.some((it) => it.id === thing)) return see(`see.main-${main.position}`)
  if (thing === 'pole-top') return see('see.pole-top', aloftCounts(site))
  if (thing === 'crossing') return crossingSeen(site)
  if (thing === 'cover') return see('see.cover', { from: site.cover?.from ?? 0, to: site.cover?.to ?? 0 })
  if (thing === 'barrier') return see('see.barrier', { corners: site.barrier?.length ?? 0 })
  if (site.scenario.jumpers?.includes(conductorOf(thing)) && isFarEnd(thing))
    return see(isOpened(site, conductorOf(thing)) ? 'see.jumper-open' : 'see.jumper-closed')
  if (site.scenario.sectionJumpers?.some((it) => it.id === thing))
    return see(`see.jumpers-${findJumpersOut(site, thing)?.tails ?? 'on'}`)
  if (site.scenario.conductors.some((it) => it.id === thing)) {
    return see('see.conductor', { clamps: site.clamps.filter((it) => it.on === thing).length })
  }
  if (site.scenario.lv.wires.some((it) => it.id === thing)) {
    return see(site.guards.some((it) => it.on === thing) ? 'see.wire-guarded' : 'see.wire-bare')
  }
  return see('see.thing')
}

/** A clash leaves its marks on both lines. */
function crossingSeen(site: Site): readonly Perceived[] {
  const struck = site.scenario.livenings.find((it) => it.id === site.livening?.id)
  const traits = struck && traitsOf(struck)
  const marked = traits?.by === 'crossing' ? traits.phases(site.scenario, struck!) : []
  if (marked.length === 0) return [{ of: 'crossing', by: 'look', says: 'see.crossing-clear' }]
  return [{ of: 'crossing', by: 'look', says: 'see.crossing-marked', values: { phases: marked.join(', ') } }]
}

/** What can be counted up there from anywhere on site. */
function aloftCounts(site: Site): Readonly<Record<string, number>> {
  return {
    clamps: site.clamps.filter((it) => it.end !== 'earth').length,
    covers: site.cover ? 1 : 0,
    guards: site.guards.length,
    others: Object.values(site.items).filter((it) => it.where.kind === 'aloft').length,
  }
}
