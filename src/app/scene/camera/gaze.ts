/** Where one looks from besides the fixed places: from somebody's eyes, up at what is overhead, close at what is chosen. */
import { type PerspectiveCamera, Vector3 } from 'three'
import type { Gaze } from '../../stores/lookStore'
import type { Hit } from '../ink/part'
import type { Joints } from '../people/posture'
import type { Layout } from '../site/layout'
import type { CameraView } from './presets'

export interface GazeSource {
  readonly layout: Layout
  readonly joints: ReadonlyMap<string, Joints>
  readonly hits: readonly Hit[]
  readonly camera: PerspectiveCamera
  /** What the camera turns about now. */
  readonly target: Vector3
}

/** Undefined when there is nothing to look from or at. */
export function findView(gaze: Gaze, source: GazeSource): CameraView | undefined {
  switch (gaze.kind) {
    case 'eyes':
      return eyesOf(gaze.person, source)
    case 'up':
      return overhead(source)
    case 'near':
      return close(gaze.id, source)
  }
}

/** As wide as one sees without turning the head, degrees. */
const sight = 66
/** In front of the face, so that the helmet is behind. */
const brow = 0.24

function eyesOf(person: string, { joints, layout }: GazeSource): CameraView | undefined {
  const of = joints.get(person)
  if (!of) return undefined
  const isAloft = of.hips.y > 3
  // Up there past the pole at the wire on the free side; on the ground at the pole and what hangs over it.
  const outer = layout.conductors.reduce((most, it) => (it.across > most.across ? it : most))
  const target = isAloft
    ? new Vector3(outer.across, outer.height - 0.15, 0.6)
    : new Vector3(0, Math.min(3.2, layout.arm.height / 2), 0)
  const away = target.clone().sub(of.head)
  if (away.length() < 1) away.copy(of.forward)
  return { eye: of.head.clone().addScaledVector(away.normalize(), brow), target, fov: sight, across: 0 }
}

/** From where one stands now, or near the pole from above: the wires over one's head. */
function overhead({ layout, camera, target }: GazeSource): CameraView {
  const flat = new Vector3(camera.position.x - target.x, 0, camera.position.z - target.z)
  if (flat.length() < 0.5) flat.set(-0.6, 0, -1)
  const eye = flat.normalize().multiplyScalar(5.2).setY(1.65)
  const lowest = layout.lvArm.height
  return { eye, target: new Vector3(0, (lowest + layout.arm.height) / 2 + 0.4, 0), fov: 52, across: 0 }
}

/** Nothing is looked at from nearer than this, or as if it were longer than that, metres. */
const nearest = 1.6
const longest = 6

function close(id: string, { hits, camera, target }: GazeSource): CameraView | undefined {
  const ends = hits.filter((hit) => hit.id === id).flatMap(({ segments }) => segments.flat())
  if (ends.length === 0) return undefined
  // Of a wire the piece that is nearest to the pole.
  const around = [...ends].sort((a, b) => Math.hypot(a.x, a.z) - Math.hypot(b.x, b.z))
  const first = around[0]!
  const part = around.filter((end) => end.distanceTo(first) < longest)
  const middle = part.reduce((sum, end) => sum.add(end), new Vector3()).divideScalar(part.length)
  const size = Math.max(...part.map((end) => end.distanceTo(middle)), 0.3)
  const fov = 40
  const back = Math.max(nearest, (size * 1.7) / Math.tan((fov * Math.PI) / 360))
  const away = camera.position.clone().sub(target).normalize()
  const eye = middle.clone().addScaledVector(away, back)
  eye.y = Math.max(0.4, eye.y)
  return { eye, target: middle, fov, across: 0 }
}
