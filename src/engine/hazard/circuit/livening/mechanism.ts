/** What makes the section live: one file per mechanism, events are scenario data. */
import type { Element } from '../../../physics/network'
import type { Livening, Scenario, ThingId } from '../../../site/scenario'

export type LiveningOf<Kind extends Livening['kind']> = Extract<Livening, { kind: Kind }>

export interface Mechanism<Kind extends Livening['kind']> {
  readonly kind: Kind
  /** The feeder that it brings onto the section. */
  feeder(scenario: Scenario, livening: LiveningOf<Kind>): ThingId
  /** The links, from the feeder's end into the section. */
  links(scenario: Scenario, livening: LiveningOf<Kind>): readonly Element[]
}
