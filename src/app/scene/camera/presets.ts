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

const views: Readonly<Record<ViewName, CameraView>> = {
  ground: view([-9.6, 1.65, -15.2], [0.9, 3.95, -0.9], 42, 14.5),
  'pole-top': view([1.7, 9.5, -4.1], [0.03, 7.95, 0.2], 38, 3.4),
  plan: view([0.98, 62, 0], [1, 0, 0], 15.4, 15),
  over: view([-10.2, 8.6, -13.6], [0.5, 3.6, 0.5], 41, 13),
  tarp: view([0.6, 4.4, -20.2], [7.2, 0.2, -14.4], 40, 7.5),
  switch: view([-6.3, 6.4, -8], [0, 4.95, -0.2], 54, 6.5),
}

/** From the pole top when somebody works below the LV wires: far enough to have both in the picture. */
const lowerStation = view([2.2, 8.7, -5.6], [0.02, 7.2, 0.1], 42, 4.4)

export const viewFor = (name: ViewName, hasLowerStation: boolean): CameraView =>
  name === 'pole-top' && hasLowerStation ? lowerStation : views[name]

/** Shares of the window that no panel covers. */
export interface FreeShare {
  readonly wide: number
  readonly high: number
}

/** Steps back when the window is narrower, or less of it is free, than the view needs. */
export function framed(it: CameraView, aspect: number, free: FreeShare): CameraView {
  const distance = it.eye.distanceTo(it.target)
  const seen = 2 * distance * Math.tan((it.fov * Math.PI) / 360) * aspect * free.wide
  const back = Math.max(1 / free.high, it.across / seen)
  const eye = it.target.clone().addScaledVector(it.eye.clone().sub(it.target), back)
  if (it.eye.y < 2) eye.y = it.eye.y // whoever stands stays on the ground
  return { ...it, eye }
}
