/** What a whole story does to one person, the layers' failures included. */
import type { Unsolvable } from '../../physics/network'
import type { ItemId, PersonId } from '../../site/scenario'
import type { Exposure } from '../exposure'

export interface LayerFailure {
  readonly at: number
  readonly item: ItemId
}

export interface BodyAnswer {
  readonly kind: 'body'
  /** Null when nothing worth a number flows. Carries `ifItFails` when a layer stands more than its class promises. */
  readonly exposure: Exposure | null
  /** Items whose insulation conducted. */
  readonly failedItems: readonly ItemId[]
  /** When each did, seconds from the start of the livening. */
  readonly failures: readonly LayerFailure[]
  /** At any contact, whichever way its layers went, A: how much it draws from the circuit. */
  readonly largestCurrent: number
}

/** Of whom an answer is; of the public one for each way of being exposed. */
export interface PersonAnswer {
  readonly person: PersonId | 'bystander'
  readonly answer: BodyAnswer | Unsolvable
}
