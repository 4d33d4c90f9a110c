/**
 * What a conductor of the section takes from a circuit beside it, or from another phase through the windings of a
 * transformer, as everything is fitted now and nobody in it: what a detector held to it feels, though no blade feeds it.
 * A livening that has struck and lasts is part of it.
 */
import { magnitude } from '../math/complex'
import { isUnsolvable, type Unsolvable } from '../physics/network'
import { conductorOf, isOpened } from '../site/gaps'
import { findStanding } from '../site/liveness'
import type { ThingId } from '../site/scenario'
import type { Site } from '../site/site'
import { isComputed } from './circuit/livening'
import { nodeOfThing } from './circuit/fitted'
import { declaredCorner } from './corner'
import { lineOf } from './liven'
import { createSweepCache } from './sweepCache'

/** Volts to earth, rms, at the worked pole; 0 where nothing runs beside the section or is wound onto it and no jumper is undone. */
export function pickedUpVoltage(site: Site, thing: ThingId): number | Unsolvable {
  const conductor = conductorOf(thing)
  const { conductors, parallels = [], transformers = [] } = site.scenario
  if (
    (parallels.length + transformers.length === 0 && !isOpened(site, conductor)) ||
    !conductors.some((it) => it.id === conductor)
  )
    return 0
  const struck = findStanding(site)
  const livening = struck !== undefined && isComputed(struck) ? struck.id : 'none'
  const line = lineOf(site, livening, declaredCorner, createSweepCache())
  return isUnsolvable(line) ? line : magnitude(line.phases[0]!.view.voltage(nodeOfThing(site, thing)))
}
