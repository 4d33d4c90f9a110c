/**
 * A conductor breaks on the far side and its live end lies on the ground near the site (procedure D21): a high resistance
 * between it and the soil, some amperes, perhaps no relay. Nothing of it is on the section: only the ground rises.
 */
import { toGroundThing } from './toGroundThing'
import type { Mechanism } from './mechanism'

export const conductorDown: Mechanism<'conductor-down'> = {
  kind: 'conductor-down',
  rows: [21],
  links: (_, livening) => [toGroundThing(livening)],
}
