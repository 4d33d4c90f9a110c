/** Small gear in a hand, in the shape that it has on the tarp. */
import { Box3, Vector3 } from 'three'
import { laidOut } from '../gear/laidOut'
import type { Part } from '../ink/part'

/** What is no longer than a forearm is held as it is, turned the way one looks; longer things are hinted at. */
const forearm = 0.45

export function inHand(type: string, item: string, place: Vector3, forward: Vector3): readonly Part[] | undefined {
  const shape = laidOut[type]?.(item)
  if (!shape || shape.wires.length > 0) return undefined
  const size = new Box3()
  for (const { geometry } of shape.parts) {
    geometry.computeBoundingBox()
    size.union(geometry.boundingBox!)
  }
  const extent = size.getSize(new Vector3())
  if (Math.max(extent.x, extent.y, extent.z) > forearm) return undefined
  const turn = Math.atan2(forward.x, forward.z)
  for (const { geometry } of shape.parts)
    geometry
      .translate(0, -extent.y / 2, 0)
      .rotateY(turn)
      .translate(place.x, place.y, place.z)
  return shape.parts
}
