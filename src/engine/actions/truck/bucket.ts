/** Into the bucket, up with it, and out of it again. */
import { requirePerson } from '../../site/questions'
import type { PersonId } from '../../site/scenario'
import type { Site } from '../../site/site'
import { bucketPlace, isBucketUp, isOnPads, type BucketPlace } from '../../site/truckState'
import type { Action, Order } from '../action'
import { changePerson, tell } from '../changes'
import { atTruck, handsFree } from '../conditions'
import { numberIn, pointIn } from '../orderValues'
import { all, refuse, type Condition } from '../refuse'
import { boomReach, findInTheWay, isInBoomReach, secondsOfBoom } from './boomReach'
import { buckets, changeTruck, handOnTruck, truckSteps } from './truckActs'

/** Two stand in it at most (common practice, no source). */
const mostInside = 2

const isInside = (site: Site, who: PersonId): boolean => requirePerson(site, who).place.kind === 'bucket'

const inBucket: Condition = (site, order) => (isInside(site, order.who) ? undefined : refuse(order, 'not-in-bucket'))

const atRest: Condition = (site, order) => (isBucketUp(site) ? refuse(order, 'bucket-up') : undefined)

export const enterBucket: Action = {
  id: 'enter-bucket',
  covers: ['A44', 'A45'],
  things: buckets,
  check: all(
    (site, order) => (isInside(site, order.who) ? refuse(order, 'already-so') : undefined),
    atTruck,
    atRest,
    handsFree(1),
    (site, order) => {
      if (requirePerson(site, order.who).strapped) return refuse(order, 'strapped')
      const inside = Object.keys(site.persons).filter((id) => isInside(site, id))
      return inside.length < mostInside ? undefined : refuse(order, 'bucket-full')
    },
  ),
  takes: () => 30,
  contacts: handOnTruck,
  apply: (site, order) => tell(changePerson(site, order.who, { place: { kind: 'bucket' } }), order, 'bucket'),
}

export const leaveBucket: Action = {
  id: 'leave-bucket',
  covers: ['A44'],
  things: buckets,
  check: all(inBucket, atRest, handsFree(1), (site, order) =>
    requirePerson(site, order.who).strapped ? refuse(order, 'strapped') : undefined,
  ),
  takes: () => 30,
  contacts: handOnTruck,
  apply: (site, order) =>
    tell(changePerson(site, order.who, { place: { kind: 'ground', at: truckSteps(site) } }), order, 'bucket'),
}

const goal = (order: Order): BucketPlace => ({ at: pointIn(order, 'at'), height: numberIn(order, 'height') })

export const moveBucket: Action = {
  id: 'move-bucket',
  covers: ['A45', 'A50'],
  things: buckets,
  values: {
    at: { kind: 'point' },
    height: { kind: 'number', unit: 'metre', low: 1, high: 14, step: 0.1 },
  },
  check: all(inBucket, handsFree(1), (site, order) => {
    const isSteady = isOnPads(site) || site.scenario.truck?.outriggers.length === 0
    if (!isSteady) return refuse(order, 'outriggers-up')
    if (!isInBoomReach(site, goal(order))) return refuse(order, 'boom-too-short', { metres: boomReach })
    const thing = findInTheWay(site, goal(order))
    return thing === undefined ? undefined : refuse(order, 'in-the-way', { thing })
  }),
  takes: (site, order) => secondsOfBoom(bucketPlace(site), goal(order)),
  apply: (site, order) => {
    const { at, height } = goal(order)
    return tell(changeTruck(site, { bucket: { at: { x: at.x, y: at.y }, height } }), order, 'bucket', {
      x: at.x,
      y: at.y,
      height,
    })
  },
}
