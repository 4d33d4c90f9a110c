/** Lets the outriggers down on their pads, and takes them up: from the levers at the truck. */
import type { Site } from '../../site/site'
import { isTruckPlaceTaken } from '../../site/takenGround'
import { isBucketUp } from '../../site/truckState'
import type { Action } from '../action'
import { tell } from '../changes'
import { atTruck, handsFree } from '../conditions'
import { all, refuse } from '../refuse'
import { changeTruck, handOnTruck } from './truckActs'

const withOutriggers = ({ scenario: { truck } }: Site): readonly string[] =>
  truck !== undefined && truck.outriggers.length > 0 ? ['truck'] : []

const shared = {
  covers: ['A05'],
  things: withOutriggers,
  takes: () => 120,
  contacts: handOnTruck,
} as const

export const setOutriggers: Action = {
  ...shared,
  id: 'set-outriggers',
  check: all(atTruck, handsFree(1), (site, order) => {
    if (site.truckState?.outriggers === 'down') return refuse(order, 'already-so')
    return isTruckPlaceTaken(site, site.truck) ? refuse(order, 'ground-taken') : undefined
  }),
  joint: (site) => changeTruck(site, { outriggers: 'down' }),
  apply: (site, order) => tell(changeTruck(site, { outriggers: 'down' }), order, 'truck'),
}

export const liftOutriggers: Action = {
  ...shared,
  id: 'lift-outriggers',
  check: all(atTruck, handsFree(1), (site, order) => {
    if (site.truckState?.outriggers !== 'down') return refuse(order, 'already-so')
    return isBucketUp(site) ? refuse(order, 'bucket-up') : undefined
  }),
  joint: (site) => changeTruck(site, { outriggers: 'up' }),
  apply: (site, order) => tell(changeTruck(site, { outriggers: 'up' }), order, 'truck'),
}
