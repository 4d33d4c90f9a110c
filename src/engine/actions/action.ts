/**
 * An action of one person: what it needs, how long it takes, what the body touches meanwhile, what it leaves.
 * Only the physically impossible is refused; the merely wrong is done, with its consequences.
 */
import type { Contact } from '../site/contact'
import type { GroundPoint } from '../site/place'
import type { ItemId, PersonId, ThingId } from '../site/scenario'
import type { Site } from '../site/site'

export type Value = number | string | boolean | readonly string[] | GroundPoint | readonly GroundPoint[]

/** One line of a run. `at` is the job second of the start, whole. */
export interface Order {
  readonly at: number
  readonly who: PersonId
  readonly do: string
  readonly with?: ItemId
  readonly on?: ThingId
  readonly values: Readonly<Record<string, Value>>
}

/** Why it cannot be: a fact in kebab code (`<action>/<fact>`), a key of src/text, with values. */
export interface Refusal {
  readonly code: string
  readonly values: Readonly<Record<string, string | number>>
}

/** A quantity that the order must carry; `range` is what is physically possible, not what is right. */
export type ValueSpec =
  | {
      readonly kind: 'number'
      readonly unit: 'metre' | 'turn' | 'millimetre2' | 'none'
      readonly low: number
      readonly high: number
      readonly step: number
    }
  | { readonly kind: 'choice'; readonly of: (site: Site) => readonly string[]; readonly many: boolean }
  | { readonly kind: 'point' }
  | { readonly kind: 'outline' }
  | { readonly kind: 'text' }
  /** Cards of a plan, in order: `do:with:on`, parts may be empty. */
  | { readonly kind: 'cards' }

export interface Action {
  readonly id: string
  /** Paragraphs of the procedure that it carries, `A41` … */
  readonly covers: readonly string[]
  /** What `with` and `on` may be; the views make pick lists from these. Missing: not used. */
  readonly withTypes?: readonly string[]
  readonly things?: (site: Site) => readonly ThingId[]
  readonly values?: Readonly<Record<string, ValueSpec>>
  /** `with`, `on` or names of values that an order may leave out; all others it must carry. */
  readonly optional?: readonly string[]
  /** True: the held item is the verb; picking the thing selects this act. */
  readonly byHand?: boolean
  /** True: speaking, writing or judging; needs no free hands and no presence at the thing. */
  readonly speech?: boolean
  check(site: Site, order: Order): Refusal | undefined
  /** Whole seconds, at least 1. */
  takes(site: Site, order: Order): number
  /** Contacts beside those of standing where one is, while it lasts, by person. A limb named here replaces its standing contact. */
  contacts?(site: Site, order: Order): readonly { readonly person: PersonId; readonly contact: Contact }[]
  /**
   * The site with the joint made or broken that the act makes or breaks: a jaw that touches, a screw that lets go. It is
   * so for some of the act's time, and not so for the rest. @returns the same site where there is none to change
   */
  joint?(site: Site, order: Order): Site
  /** True: the person walks or climbs while it lasts: the feet take paces. */
  moves?: boolean
  apply(site: Site, order: Order): Site
}
