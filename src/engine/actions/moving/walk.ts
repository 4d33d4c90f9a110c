/** Walks to a point or a named place; to a far switch in a van of one's own: the truck stays. */
import { distance, type GroundPoint, type Place } from '../../site/place'
import { findSwitch, groundPointOf, isAloft, itemsOf, requireItem, requirePerson } from '../../site/questions'
import { bucketPlace } from '../../site/truckState'
import { poleFoot } from '../../site/nextPole'
import { findMain } from '../../site/mains'
import type { PersonId, ThingId } from '../../site/scenario'
import type { Site } from '../../site/site'
import type { Action, Order } from '../action'
import { changePerson, moveItem, perceive } from '../changes'
import { isDriven, secondsBetween } from '../fetching'
import { mains } from '../mains'
import { findPointIn } from '../orderValues'
import { pacesOnWay } from '../paces'
import { refuse } from '../refuse'
import { nextPoles, switches } from '../things'

/** Well off pole, rods and anchors: so far from the pole on the way to the truck, metres. */
const wellClear = 13

export const walk: Action = {
  id: 'walk',
  covers: ['A38', 'A43', 'A87'],
  things: (site) => ['clear', 'pole-foot', 'truck', ...nextPoles(site), ...switches(site), ...mains(site)],
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
  contacts: (site, order) =>
    pacesOnWay(site, order.who, groundPointOf(site, order.who), pointOf(site, destination(site, order))),
  apply: (site, order) => {
    const place = destination(site, order)
    const { x, y } = pointOf(site, place)
    const there = changePerson(offMat(site, order.who), order.who, { place })
    const way = isDriven(groundPointOf(site, order.who), { x, y }) ? '-drive' : order.on === undefined ? '-point' : ''
    return perceive(there, order.who, { of: order.on ?? 'ground', by: 'do', says: `did.walk${way}`, values: { x, y } })
  },
}

/** Whoever walks off the mat leaves it where it lies. */
function offMat(site: Site, who: PersonId): Site {
  const { onMat, place } = requirePerson(site, who)
  if (!onMat || place.kind !== 'switch') return site
  const laid = itemsOf(site, 'operator-mat').filter((id) => requireItem(site, id).where.kind === 'fitted')
  const left = laid.reduce<Site>((next, id) => moveItem(next, id, { kind: 'left', at: place.id }), site)
  return changePerson(left, who, { onMat: false })
}

function destination(site: Site, order: Order): Place {
  const to = findPointIn(order, 'to')
  return to ? { kind: 'ground', at: to } : namedPlace(site, order.on ?? 'truck')
}

function namedPlace(site: Site, name: ThingId): Place {
  if (name === 'pole-foot') return { kind: 'pole', station: 'foot' }
  if (name === 'next-pole') return { kind: 'pole', station: 'foot', pole: 'next' }
  if (findSwitch(site, name)) return { kind: 'switch', id: name }
  const main = findMain(site.scenario, name)
  if (main) return { kind: 'ground', at: main.at }
  if (name === 'truck') return { kind: 'ground', at: site.truck }
  const { x, y } = site.truck
  const far = distance(site.truck, { x: 0, y: 0 })
  const share = far > wellClear ? wellClear / far : 1
  return { kind: 'ground', at: { x: x * share, y: y * share } }
}

function pointOf(site: Site, place: Place): GroundPoint {
  if (place.kind === 'ground') return place.at
  if (place.kind === 'bucket') return bucketPlace(site).at
  if (place.kind === 'pole') return poleFoot(site.scenario, place.pole)
  return { x: findSwitch(site, place.id)?.along ?? 0, y: 0 }
}

function isSame(a: Place, b: Place): boolean {
  if (a.kind === 'ground' && b.kind === 'ground') return a.at.x === b.at.x && a.at.y === b.at.y
  if (a.kind === 'pole' && b.kind === 'pole') return a.station === b.station && a.pole === b.pole
  return a.kind === 'switch' && b.kind === 'switch' && a.id === b.id
}
