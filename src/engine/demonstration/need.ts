/** One thing that the job needs from the truck, and what is printed on the things there. */
import type { ItemId, PersonId } from '../site/scenario'

export type Printed = Readonly<Record<string, string | number | boolean>>

export interface Need {
  readonly name: string
  readonly isType: (type: string) => boolean
  /** Who uses it, and so looks at it first. */
  readonly who: PersonId
  /** By what is printed large on it; left out: any will do. */
  readonly suits?: (printed: Printed, id: ItemId) => boolean
  /** The lower the rather; left out: as they come. */
  readonly rank?: (printed: Printed) => number
  /** The job goes on without it. */
  readonly isOptional?: boolean
}
