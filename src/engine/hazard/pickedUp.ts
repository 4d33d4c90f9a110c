/**
 * What a conductor of the section takes from a circuit beside it, as everything is fitted now and nobody in it: what a
 * detector held to it feels, though no blade feeds the line.
 */
import { magnitude } from '../math/complex'
import { isUnsolvable, type Unsolvable } from '../physics/network'
import type { ThingId } from '../site/scenario'
import type { Site } from '../site/site'
import { conductorAtPole } from './circuit/nodes'
import { declaredCorner } from './corner'
import { lineOf } from './liven'
import { createSweepCache } from './sweepCache'

/** Volts to earth, rms, at the worked pole; 0 where nothing runs beside the section. */
export function pickedUpVoltage(site: Site, conductor: ThingId): number | Unsolvable {
  const { conductors, parallels = [] } = site.scenario
  if (parallels.length === 0 || !conductors.some((it) => it.id === conductor)) return 0
  const line = lineOf(site, 'none', declaredCorner, createSweepCache())
  return isUnsolvable(line) ? line : magnitude(line.phases[0]!.view.voltage(conductorAtPole(conductor)))
}
