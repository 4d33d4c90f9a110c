/** Walks to a point or a named place; to a far switch by truck. */
import { distance, type GroundPoint, type Place } from '../../site/place'
import { findSwitch, groundPointOf, isAloft, requirePerson } from '../../site/questions'
import type { ThingId } from '../../site/scenario'
import type { Site } from '../../site/site'
import type { Action, Order } from '../action'
import { changePerson, tell } from '../changes'
import { isDriven, secondsBetween } from '../fetching'
import { findPointIn } from '../orderValues'
import { refuse } from '../refuse'
import { switches } from '../things'
import { touch, type PersonContact } from '../touching'

/** Well off pole, rods and anchors: so far from the pole on the way to the truck, metres. */
const wellClear = 13

export const walk: Action = {
  id: 'walk',
  covers: ['A38', 'A43', 'A87'],
  things: (site) => ['clear', 'pole-foot', 'truck', ...switches(site)],
  values: { to: { kind: 'point' } },
  optional: ['on', 'to'],
  moves: true,
  check: (site, order) => {
    const person = requirePerson(site, order.who)
    if ((order.on === undefined) === (findPointIn(order, 'to') === undefined)) return refuse(order, 'by-name-or-place')
    if (isAloft(person)) return refuse(order, 'not-on-ground')
    if (person.place.kind === 'pole' && person.strapped) return refuse(order, 'strapped')
    return isSame(person.place, destination(site, order)) ? refuse(order, 'already-so') : undefined
  },
  takes: (site, order) => secondsBetween(groundPointOf(site, order.who), pointOf(site, destination(site, order))),
  contacts: (site, order) => pacesNearest(site, order),
  apply: (site, order) => {
    const place = destination(site, order)
    const { x, y } = pointOf(site, place)
    return tell(changePerson(site, order.who, { place }), order, order.on ?? 'ground', { x, y })
  },
}

/** The feet where the way comes nearest to anything in the ground that can rise: a walk is judged by its worst place. */
function pacesNearest(site: Site, order: Order): readonly PersonContact[] {
  const way = [groundPointOf(site, order.who), pointOf(site, destination(site, order))] as const
  if (isDriven(...way)) return []
  const electrodes = [{ x: 0, y: 0 }, site.scenario.stay.anchor, ...site.rods.map((rod) => rod.at)]
  const places = electrodes.map((electrode) => ({ electrode, at: nearestOnWay(way, electrode) }))
  const away = ({ electrode, at }: (typeof places)[number]): number => distance(electrode, at)
  const [worst] = [...places].sort((a, b) => away(a) - away(b))
  const on = { kind: 'ground', at: worst?.at ?? way[0], stance: 'pace' } as const
  return [touch(order.who, 'left-foot', on), touch(order.who, 'right-foot', on)]
}

/** On the straight line between two points. */
function nearestOnWay([from, to]: readonly [GroundPoint, GroundPoint], point: GroundPoint): GroundPoint {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  const squared = dx * dx + dy * dy
  const along = squared > 0 ? ((point.x - from.x) * dx + (point.y - from.y) * dy) / squared : 0
  const share = Math.min(1, Math.max(0, along))
  return { x: from.x + share * dx, y: from.y + share * dy }
}

function destination(site: Site, order: Order): Place {
  const to = findPointIn(order, 'to')
  return to ? { kind: 'ground', at: to } : namedPlace(site, order.on ?? 'truck')
}

function namedPlace(site: Site, name: ThingId): Place {
  if (name === 'pole-foot') return { kind: 'pole', station: 'foot' }
  if (findSwitch(site, name)) return { kind: 'switch', id: name }
  if (name === 'truck') return { kind: 'ground', at: site.truck }
  const { x, y } = site.truck
  const far = distance(site.truck, { x: 0, y: 0 })
  const share = far > wellClear ? wellClear / far : 1
  return { kind: 'ground', at: { x: x * share, y: y * share } }
}

function pointOf(site: Site, place: Place): GroundPoint {
  if (place.kind === 'ground') return place.at
  if (place.kind === 'pole') return { x: 0, y: 0 }
  return { x: findSwitch(site, place.id)?.along ?? 0, y: 0 }
}

function isSame(a: Place, b: Place): boolean {
  if (a.kind === 'ground' && b.kind === 'ground') return a.at.x === b.at.x && a.at.y === b.at.y
  if (a.kind === 'pole' && b.kind === 'pole') return a.station === b.station
  return a.kind === 'switch' && b.kind === 'switch' && a.id === b.id
}
