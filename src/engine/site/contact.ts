/** What a body touches, with which limb and through which items. The hazard engine turns these into ports. */
import type { GroundPoint } from './place'
import type { Leg } from './pole'
import type { ItemId, PersonId, ThingId } from './scenario'

/** The knee is the right one: who kneels has that leg's foot in the air. */
export type Limb = 'left-hand' | 'right-hand' | 'left-foot' | 'right-foot' | 'knee' | 'thigh' | 'chest'

export type Surface =
  /** A phase or the neutral wire of the line. Opened at the pole it has a far end, towards the crossing. */
  | { readonly kind: 'conductor'; readonly id: ThingId; readonly end?: 'far'; readonly at?: 'next' }
  | { readonly kind: 'lead'; readonly item: ItemId; readonly end: string }
  /** Arm, stay, or another piece of metal on the pole by its id. */
  | { readonly kind: 'metalwork'; readonly id: 'arm' | 'stay-upper' | 'stay-lower' | ThingId }
  | { readonly kind: 'pole'; readonly height: number; readonly leg?: Leg }
  | { readonly kind: 'step-bolt'; readonly height: number; readonly leg?: Leg }
  | { readonly kind: 'lv-wire'; readonly id: ThingId }
  | { readonly kind: 'rod'; readonly item: ItemId }
  | { readonly kind: 'handle'; readonly id: ThingId }
  | { readonly kind: 'truck' }
  /** Inside the bucket of the truck's boom: on its liner. */
  | { readonly kind: 'bucket' }
  /** A fence, a pipe, somebody else's earth. */
  | { readonly kind: 'ground-thing'; readonly id: ThingId }
  /** The tail of the handline, from the ground. */
  | { readonly kind: 'handline' }
  /** Somebody who is in contact with something. */
  | { readonly kind: 'person'; readonly id: PersonId }
  /**
   * Feet stand 0.3 m apart or take a 1.0 m pace, foot and knee are 0.5 m apart, along the steepest gradient: the hazard
   * engine sets them.
   */
  | { readonly kind: 'ground'; readonly at: GroundPoint; readonly stance: Stance }

export type Stance = 'standing' | 'pace' | 'kneeling'

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
