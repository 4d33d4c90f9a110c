/** Turning the picture by keys: round its target, and nearer or farther. */
import { type PerspectiveCamera, Spherical, type Vector3 } from 'three'

export interface Turn {
  /** Radians to the right and up. */
  readonly right: number
  readonly up: number
  /** Factor on the distance. */
  readonly distance: number
}

const step = 0.12
const nearer = 0.88

const turns: Readonly<Record<string, Turn>> = {
  ArrowLeft: { right: -step, up: 0, distance: 1 },
  ArrowRight: { right: step, up: 0, distance: 1 },
  ArrowUp: { right: 0, up: step, distance: 1 },
  ArrowDown: { right: 0, up: -step, distance: 1 },
  '+': { right: 0, up: 0, distance: nearer },
  '-': { right: 0, up: 0, distance: 1 / nearer },
}

export const findTurn = (key: string): Turn | undefined => (Object.hasOwn(turns, key) ? turns[key] : undefined)

/** Never under the ground, never through the pole. */
export function turnCamera(camera: PerspectiveCamera, target: Vector3, { right, up, distance }: Turn): void {
  const place = new Spherical().setFromVector3(camera.position.clone().sub(target))
  place.theta += right
  place.phi = Math.min(Math.PI - 0.05, Math.max(0.05, place.phi - up))
  place.radius = Math.min(90, Math.max(0.4, place.radius * distance))
  camera.position.setFromSpherical(place).add(target)
  camera.position.y = Math.max(0.3, camera.position.y)
  camera.lookAt(target)
}
