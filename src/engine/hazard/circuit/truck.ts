/**
 * The truck where it stands: one piece of metal. On outriggers their pads are one electrode on the surface; on its wheels
 * it stands on one disc through the tyres. The bucket hangs on it through what the boom leaks.
 */
import type { Element } from '../../physics/network'
import type { Electrode } from '../../physics/soil'
import type { GroundPoint } from '../../site/place'
import type { Scenario } from '../../site/scenario'
import { wheelsRadius } from '../../site/takenGround'
import { bucketNode, truckNode, tyresNode } from './nodes'
import { resistor } from './parts'

/** @param at where it stands */
export function truckElectrodes({ truck }: Scenario, at: GroundPoint | undefined): readonly Electrode[] {
  if (truck === undefined || at === undefined) return []
  const pads = truck.outriggers.map(({ x, y, radius }) => {
    return { kind: 'disc', at: { x: at.x + x, y: at.y + y }, radius } as const
  })
  if (pads.length > 1) return [{ id: truckNode, kind: 'joined', parts: pads }]
  const [pad] = pads
  return [pad ? { id: truckNode, ...pad } : { id: tyresNode, kind: 'disc', at, radius: wheelsRadius }]
}

export function truckParts({ truck }: Scenario): readonly Element[] {
  if (truck === undefined) return []
  const { tyres, outriggers, boom } = truck
  return [
    ...(outriggers.length === 0 ? [resistor('truck/tyres', truckNode, tyresNode, tyres)] : []),
    ...(boom ? [resistor('truck/boom', bucketNode, truckNode, boom.leakage)] : []),
  ]
}
