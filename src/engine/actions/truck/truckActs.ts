/** What acts at the truck have in common: a new state of it, a hand on it with the feet on the ground. */
import { standingPoint } from '../../site/bodies'
import type { Surface } from '../../site/contact'
import type { GroundPoint } from '../../site/place'
import { isAloft, requirePerson } from '../../site/questions'
import type { ThingId } from '../../site/scenario'
import type { Site } from '../../site/site'
import type { TruckState } from '../../site/truckState'
import { invariant } from '../../units/invariant'
import type { Order } from '../action'
import { touch, type PersonContact } from '../touching'

/** A boom with a bucket is there. */
export const buckets = ({ scenario: { truck } }: Site): readonly ThingId[] => (truck?.boom ? ['bucket'] : [])

export function changeTruck(site: Site, change: Partial<TruckState>): Site {
  invariant(site.truckState, 'a truck that the scenario describes', site.scenario.id)
  return { ...site, truckState: { ...site.truckState, ...change } }
}

/** At its steps: whoever steps off it comes down here. */
export const truckSteps = ({ truck: { x, y } }: Site): GroundPoint => ({ x, y: y - 1.5 })

/** One hand on the truck, both feet on the ground beside it, or on a platform that was laid there. */
export function handOnTruck(site: Site, { who }: Order): readonly PersonContact[] {
  const at = isAloft(requirePerson(site, who)) ? truckSteps(site) : standingPoint(site, who)
  const on: Surface = { kind: 'ground', at, stance: 'standing' }
  return [touch(who, 'right-hand', { kind: 'truck' }), touch(who, 'left-foot', on), touch(who, 'right-foot', on)]
}
