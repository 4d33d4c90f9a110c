/** What an instrument for earth resistance reads at a thing, with everything joined to it as it is now. */
import { add, magnitude, subtract } from '../math/complex'
import { isUnsolvable, type Unsolvable } from '../physics/network'
import type { ThingId } from '../site/scenario'
import type { Site } from '../site/site'
import { nodeOfThing } from './circuit/fitted'
import type { Terminal } from './circuit/phaseView'
import { declaredCorner } from './corner'
import { lineOf } from './liven'
import { createSweepCache } from './sweepCache'

/**
 * Volt between the two per ampere through both, every source taken as its impedance.
 * @param against the other thing; undefined: earth far away
 * @returns ohm
 */
export function earthReading(site: Site, thing: ThingId, against?: ThingId): number | Unsolvable {
  const line = lineOf(site, 'none', declaredCorner, createSweepCache())
  if (isUnsolvable(line)) return line
  const { view } = line.phases[0]!
  const at = (it: ThingId): Terminal => ({ kind: 'node', node: nodeOfThing(site, it) })
  const own = view.transfer(at(thing), at(thing))
  if (isUnsolvable(own) || against === undefined) return isUnsolvable(own) ? own : magnitude(own)
  const other = view.transfer(at(against), at(against))
  const mutual = view.transfer(at(thing), at(against))
  if (isUnsolvable(other)) return other
  return isUnsolvable(mutual) ? mutual : magnitude(subtract(add(own, other), add(mutual, mutual)))
}
