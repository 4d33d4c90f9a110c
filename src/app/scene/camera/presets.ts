/** Where one looks from. Scene metres: x north, y up, z east. */
import { Vector3 } from 'three'

export const viewNames = ['ground', 'pole-top', 'plan', 'over', 'tarp', 'switch'] as const
export type ViewName = (typeof viewNames)[number]

export interface CameraView {
  readonly eye: Vector3
  readonly target: Vector3
  readonly fov: number
  /** Metres that must fit across, for narrow windows. */
  readonly across: number
}

type Numbers = readonly [number, number, number]
const view = (eye: Numbers, target: Numbers, fov: number, across: number): CameraView => ({
  eye: new Vector3(...eye),
  target: new Vector3(...target),
  fov,
  across,
})

export const views: Readonly<Record<ViewName, CameraView>> = {
  ground: view([-8.6, 1.65, -13.4], [0.6, 4.1, 0.6], 40, 12.5),
  'pole-top': view([1.9, 9.35, -3.9], [0.03, 8.05, 0.25], 36, 3.3),
  plan: view([0.98, 62, 0], [1, 0, 0], 15.4, 15),
  over: view([-10.2, 8.6, -13.6], [0.5, 3.6, 0.5], 41, 13),
  tarp: view([2.6, 4.6, -20.5], [7.6, 0.3, -14.6], 40, 7.5),
  switch: view([4.4, 7.6, -6.6], [-0.1, 6.1, 0], 40, 6.5),
}

/** Steps back when the window is narrower, or less of its height is free, than the view needs. */
export function framed(it: CameraView, aspect: number, freeHeight = 1): CameraView {
  const distance = it.eye.distanceTo(it.target)
  const seen = 2 * distance * Math.tan((it.fov * Math.PI) / 360) * aspect
  const back = Math.max(1 / freeHeight, it.across / seen)
  const eye = it.target.clone().addScaledVector(it.eye.clone().sub(it.target), back)
  if (it.eye.y < 2) eye.y = it.eye.y // whoever stands stays on the ground
  return { ...it, eye }
}
