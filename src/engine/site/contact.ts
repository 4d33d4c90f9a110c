/** What a body touches, with which limb and through which items. The hazard engine turns these into ports. */
import type { GroundPoint } from './place'
import type { ItemId, PersonId, ThingId } from './scenario'

export type Limb = 'left-hand' | 'right-hand' | 'left-foot' | 'right-foot' | 'thigh' | 'chest'

export type Surface =
  | { readonly kind: 'conductor'; readonly id: ThingId }
  | { readonly kind: 'lead'; readonly item: ItemId; readonly end: string }
  | { readonly kind: 'metalwork'; readonly id: 'arm' | 'stay-upper' | 'stay-lower' }
  | { readonly kind: 'pole'; readonly height: number }
  | { readonly kind: 'step-bolt'; readonly height: number }
  | { readonly kind: 'lv-wire'; readonly id: ThingId }
  | { readonly kind: 'rod'; readonly item: ItemId }
  | { readonly kind: 'handle'; readonly id: ThingId }
  /** Feet stand 0.3 m apart or take a 1.0 m pace, along the steepest gradient: the hazard engine sets them. */
  | { readonly kind: 'ground'; readonly at: GroundPoint; readonly stance: 'standing' | 'pace' }

export interface Contact {
  readonly limb: Limb
  readonly on: Surface
  /** Items between skin and surface, from the skin outward: boots, gloves, cover, guard, stick. */
  readonly through: readonly ItemId[]
}

export interface Body {
  readonly person: PersonId
  readonly contacts: readonly Contact[]
}
