/** The point of the ground under a pixel of the picture. */
import { type PerspectiveCamera, Plane, Raycaster, Vector2, Vector3 } from 'three'
import type { GroundPoint } from '../../../engine'
import { toGround } from '../site/layout'
import type { Screen } from './pick'

const sheet = new Plane(new Vector3(0, 1, 0), 0)
const caster = new Raycaster()

/** As far as the site goes, metres. */
const farthest = 60

/** To a centimetre; undefined above the horizon or far away. */
export function groundAt(camera: PerspectiveCamera, screen: Screen, x: number, y: number): GroundPoint | undefined {
  caster.setFromCamera(new Vector2((x / screen.width) * 2 - 1, 1 - (y / screen.height) * 2), camera)
  const point = caster.ray.intersectPlane(sheet, new Vector3())
  if (!point || point.length() > farthest) return undefined
  const at = toGround(point)
  return { x: Math.round(at.x * 100) / 100, y: Math.round(at.y * 100) / 100 }
}
