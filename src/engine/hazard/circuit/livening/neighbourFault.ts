/**
 * An insulator of an adjacent circuit flashes over (procedure D26): its fault current runs into the earth of its own pole,
 * which stands in the soil of the site.
 */
import { toGroundThing } from './toGroundThing'
import type { Mechanism } from './mechanism'

export const neighbourFault: Mechanism<'neighbour-fault'> = {
  kind: 'neighbour-fault',
  rows: [26],
  links: (_, livening) => [toGroundThing(livening)],
}
