/**
 * An earth known by its resistance and its place alone: a rod of usual make there. Where the rod alone has more than is
 * stated, the rest of what is behind it lies far away beside it; where it has less, the difference lies in its joints.
 */
import { REMOTE_EARTH, type Element } from '../../physics/network'
import type { Electrode } from '../../physics/soil'
import type { GroundPoint } from '../../site/place'
import { invariant } from '../../units/invariant'
import type { Ground } from './ground'
import { jointResistance, resistor } from './parts'

/** Metres (common practice, no source). */
const usualRod = { length: 2, radius: 0.008 }

export function statedEarthRod(node: string, at: GroundPoint): Electrode {
  return { id: `${node}/rod`, kind: 'rod', at, top: 0, ...usualRod }
}

/** From the node to its rod, and to what lies beyond. */
export function statedEarth(node: string, resistance: number, ground: Ground): readonly Element[] {
  const rod = `${node}/rod`
  const place = ground.electrodes.findIndex((it) => it.node === rod)
  const own = ground.resistance[place]?.[place]
  invariant(own !== undefined, 'a rod of each stated earth', rod)
  if (resistance >= own) return [resistor(`${node}/earth`, node, rod, Math.max(resistance - own, jointResistance))]
  return [
    resistor(`${node}/earth`, node, rod, jointResistance),
    resistor(`${node}/beyond`, node, REMOTE_EARTH, (resistance * own) / (own - resistance)),
  ]
}
