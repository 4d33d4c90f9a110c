/** How the truck stands and where its bucket is. Of a scenario that says nothing of the truck there is no such state. */
import { distance, type GroundPoint } from './place'
import type { Scenario } from './scenario'

export interface TruckState {
  readonly outriggers: 'up' | 'down'
  /** The floor of the bucket where the boom is up; null: it rests on the truck. */
  readonly bucket: BucketPlace | null
}

export interface BucketPlace {
  readonly at: GroundPoint
  readonly height: number
}

/** What a site has of its truck. */
interface WithTruck {
  readonly scenario: Pick<Scenario, 'truck'>
  readonly truck: GroundPoint
  readonly truckState?: TruckState
}

export function startTruckState({ truck }: Scenario): { readonly truckState?: TruckState } {
  return truck === undefined ? {} : { truckState: { outriggers: 'up', bucket: null } }
}

/** On its pads, not on its wheels. A site without a state stands as the scenario has it. */
export function isOnPads({ scenario: { truck }, truckState }: Omit<WithTruck, 'truck'>): boolean {
  return truck !== undefined && truck.outriggers.length > 0 && truckState?.outriggers !== 'up'
}

/** Above ground where the bucket rests on the truck, metres (common practice, no source). */
const restHeight = 0.9

export function bucketPlace(site: WithTruck): BucketPlace {
  return site.truckState?.bucket ?? { at: site.truck, height: restHeight }
}

export const isBucketUp = ({ truckState }: Pick<WithTruck, 'truckState'>): boolean =>
  (truckState?.bucket ?? null) !== null

/** So near one reaches its steps and its lower controls, metres (common practice, no source). */
const atTruck = 3

export function isAtTruck(site: Pick<WithTruck, 'truck'>, at: GroundPoint): boolean {
  return distance(site.truck, at) <= atTruck
}
