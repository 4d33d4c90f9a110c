/** Where one looks from. Scene metres: x north, y up, z east. */
import { Vector3 } from 'three'
import { tarpCentre, tarpCorners } from '../gear/tarp'
import type { Joints } from '../people/posture'
import { isBelowLv } from '../people/stance'
import { type Layout, toScene } from '../site/layout'
import type { LiveningPicture } from '../site/liveningPicture'
import type { SitePicture } from '../site/sitePicture'
import { workAlong } from '../site/workAlong'

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
  'pole-top': view([1.7, 1.2, -4.1], [0.03, -0.35, 0.2], 38, 3.4),
  plan: view([0.98, 44, 0], [1, 0, 0], 15.4, 0),
  over: view([-10.2, 8.6, -13.6], [0.5, 3.6, 0.5], 41, 0),
  tarp: view([-3.5, 4.4, -4.2], [3.1, 0.2, 1.6], 40, 7.5),
  switch: view([-6.3, 6.4, -8], [0, 4.95, -0.2], 54, 6.5),
}

/** From the pole top when somebody works below the LV wires: far enough to have both in the picture. */
const lowerStation = view([2.2, 0.4, -5.6], [0.02, -1.1, 0.1], 42, 4.4)

const moved = (it: CameraView, by: Vector3): CameraView => ({
  ...it,
  eye: it.eye.clone().add(by),
  target: it.target.clone().add(by),
})

/** About the pole, radian from north toward east. */
const turned = (it: CameraView, angle: number): CameraView => ({
  ...it,
  eye: it.eye.clone().applyAxisAngle(new Vector3(0, 1, 0), -angle),
  target: it.target.clone().applyAxisAngle(new Vector3(0, 1, 0), -angle),
})

/** Where a view can be turned to, so that the pole hides nobody: not far, one still looks at the climber's side. */
const turns = [0, -0.3, 0.3, -0.55]
/** Behind the pole is what lies so near to its line, metres. */
const hidden = 1.4

/** The place that a view is of. */
export interface Seen {
  readonly layout: Layout
  readonly picture: SitePicture
  readonly joints: ReadonlyMap<string, Joints>
  readonly livening: LiveningPicture | null
}

export function viewFor(name: ViewName, seen: Seen): CameraView {
  const { layout, picture } = seen
  const work = new Vector3(0, 0, workAlong(layout, picture))
  switch (name) {
    case 'plan':
      return moved(views.plan, work)
    case 'pole-top': {
      const isLow = picture.people.some(isBelowLv) || (picture.bucket?.height ?? Infinity) < layout.arm.height - 2.2
      const from = isLow ? lowerStation : views[name]
      return moved(from, work.setY(layout.arm.height))
    }
    case 'tarp':
      return moved(views[name], tarpCentre(toScene(picture.truck)))
    case 'ground':
    case 'over': {
      const hides = (it: CameraView): number => standing(seen).filter((place) => isBehindPole(it.eye, place)).length
      const tried = turns.map((angle) => turned(views[name], angle))
      return moved(
        tried.reduce((best, it) => (hides(it) < hides(best) ? it : best)),
        work,
      )
    }
    default:
      return views[name]
  }
}

/** Whoever stands at the pole, and the truck. */
function standing({ layout, joints, picture }: Seen): readonly Vector3[] {
  const work = workAlong(layout, picture)
  const people = [...joints.values()].map(({ hips }) => hips.clone().setZ(hips.z - work))
  const truck = toScene({ x: picture.truck.x - work, y: picture.truck.y })
  return [...people.filter((hips) => Math.hypot(hips.x, hips.z) < around && hips.y < 3), truck]
}

function isBehindPole(eye: Vector3, place: Vector3): boolean {
  const far = Math.hypot(eye.x, eye.z)
  const beyond = -(place.x * eye.x + place.z * eye.z) / far
  const aside = Math.abs(place.x * eye.z - place.z * eye.x) / far
  return beyond > 0.5 && (aside * far) / (far + beyond) < hidden / 2
}

/** Who is farther off than this is at a switch, metres. */
const around = 11

/** What a view has to show, whatever the place. */
export function shownBy(name: ViewName, seen: Seen): readonly Vector3[] {
  const { layout, picture, joints, livening } = seen
  const { arm } = layout
  const rods = picture.rods.map((rod) => toScene(rod.at))
  const work = workAlong(layout, picture)
  const crew = [...joints.values()].filter(({ hips }) => Math.hypot(hips.x, hips.z - work) < around)
  const spread = (at: Vector3, radius: number): readonly Vector3[] =>
    [-radius, radius].flatMap((by) => [at.clone().setX(at.x + by), at.clone().setZ(at.z + by)])
  if (name === 'plan') {
    const corners = (picture.barrier ?? []).map((corner) => toScene(corner))
    const people = crew.flatMap(({ hips }) => spread(hips.clone().setY(0), 0.8))
    return [...spread(new Vector3(0, 0, work), 7.4), ...corners, ...people, ...rods.flatMap((rod) => spread(rod, 1))]
  }
  if (name === 'tarp') return tarpCorners(picture)
  if (name !== 'over') return []
  const strongest = livening?.strongest
  return [
    // Where rods go, driven or not.
    ...spread(new Vector3(0, 0, work), 4),
    ...[-1, 1].map((side) => new Vector3(arm.across + (side * arm.length) / 2, arm.height + 0.9, work + arm.along)),
    ...crew.flatMap(({ head, hips }) => [
      head.clone().setY(head.y + 0.7),
      hips.clone().setY(Math.max(0, hips.y - 0.9)),
    ]),
    ...rods.flatMap((rod) => spread(rod, 0.8)),
    ...(strongest ? spread(new Vector3(strongest.x, 0, strongest.z), 3.4) : []),
  ]
}

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
