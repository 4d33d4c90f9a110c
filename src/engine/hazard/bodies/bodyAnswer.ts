/** What a whole story does to one person, the layers' failures included. */
import type { ItemId } from '../../site/scenario'
import type { Exposure } from '../exposure'

export interface BodyAnswer {
  readonly kind: 'body'
  /** Null when nothing worth a number flows. Carries `ifItFails` when a layer stands more than its class promises. */
  readonly exposure: Exposure | null
  /** Items whose insulation conducted. */
  readonly failedItems: readonly ItemId[]
}
