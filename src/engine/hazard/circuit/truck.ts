/**
 * The truck where it stands: one piece of metal. On outriggers their pads are one electrode on the surface; on its wheels
 * it stands on one disc through the tyres. The bucket hangs on it through what the boom leaks.
 */
import type { Element } from '../../physics/network'
import type { Electrode } from '../../physics/soil'
import type { Scenario } from '../../site/scenario'
import { wheelsRadius } from '../../site/takenGround'
import type { Fitted } from './fitted'
import { bucketNode, truckNode, tyresNode } from './nodes'
import { resistor } from './parts'

export function truckElectrodes({ truck }: Scenario, { truck: stands }: Fitted): readonly Electrode[] {
  if (truck === undefined || stands === undefined) return []
  const { at } = stands
  const pads = truck.outriggers.map(({ x, y, radius }) => {
    return { kind: 'disc', at: { x: at.x + x, y: at.y + y }, radius } as const
  })
  const [pad] = pads
  if (!stands.isOnPads || pad === undefined) return [{ id: tyresNode, kind: 'disc', at, radius: wheelsRadius }]
  return [pads.length > 1 ? { id: truckNode, kind: 'joined', parts: pads } : { id: truckNode, ...pad }]
}

export function truckParts({ truck }: Scenario, { truck: stands }: Fitted): readonly Element[] {
  if (truck === undefined || stands === undefined) return []
  return [
    ...(stands.isOnPads ? [] : [resistor('truck/tyres', truckNode, tyresNode, truck.tyres)]),
    ...(stands.boom === null ? [] : [resistor('truck/boom', bucketNode, truckNode, stands.boom)]),
  ]
}
