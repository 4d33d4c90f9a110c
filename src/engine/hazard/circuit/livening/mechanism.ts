/** What makes the section live: one file per mechanism, events are scenario data. */
import type { Element } from '../../../physics/network'
import type { LiveningKind, LiveningOf } from '../../../site/livening'
import type { Scenario, ThingId } from '../../../site/scenario'
import type { Fitted } from '../fitted'

export interface Mechanism<Kind extends LiveningKind> {
  readonly kind: Kind
  /** Rows of the procedure's table of events. */
  readonly rows: readonly number[]
  /** False: no current of it is computed; it is told in words. */
  readonly isComputed?: false
  /** What joins a source to the section; there while each feeder that the livening needs is alive. */
  links(scenario: Scenario, livening: LiveningOf<Kind>, fitted: Fitted): readonly Element[]
  /** The source that it brings itself, where none of the scenario's feeders is behind it: induction, a generator. */
  ownSource?(scenario: Scenario, livening: LiveningOf<Kind>): OwnSource
  /** The circuit as it changes it: a part that opens, an EMF in a part that stands. While its sources are alive. */
  change?(elements: readonly Element[], scenario: Scenario, livening: LiveningOf<Kind>): readonly Element[]
}

export interface OwnSource {
  /** Stands among the live sources of a stretch of the story, beside the feeders. */
  readonly id: ThingId
  readonly elements: readonly Element[]
  /** Seconds after which it stops by itself. */
  readonly stopsAfter: number | 'never'
}
