/** Solids of a figure: round limbs through joints, boots, the peak of a helmet. */
import { type BufferGeometry, Matrix4, Quaternion, Vector3 } from 'three'
import { ellipse, loft, vector } from '../geometry/shapes'
import { body } from './posture'

export const peak = (height: number): Vector3[] =>
  Array.from({ length: 18 }, (_, i) => {
    const angle = (i / 18) * Math.PI * 2
    const front = Math.max(0, Math.sin(angle))
    return vector(Math.cos(angle) * 0.127, height, -Math.sin(angle) * (0.138 + 0.045 * front))
  })

export const turnOf = (x: Vector3, y: Vector3, z: Vector3): Quaternion =>
  new Quaternion().setFromRotationMatrix(new Matrix4().makeBasis(x, y, z))

/** Rings across the bisected direction at each joint, rounded ends. */
export function limb(joints: readonly Vector3[], radii: readonly number[], sides = 10): BufferGeometry {
  const rings: Vector3[][] = []
  const last = joints.length - 1
  const directionAt = (i: number): Vector3 =>
    new Vector3().subVectors(joints[Math.min(i + 1, last)]!, joints[Math.max(i - 1, 0)]!).normalize()
  let reference = Math.abs(directionAt(0).y) > 0.9 ? vector(0, 0, 1) : vector(0, 1, 0)
  const put = (centre: Vector3, direction: Vector3, radius: number): void => {
    const x = new Vector3().crossVectors(reference, direction).normalize()
    const y = new Vector3().crossVectors(direction, x)
    reference = y.clone()
    rings.push(ellipse(centre, x, y, radius, radius, sides))
  }
  const [start, end] = [directionAt(0), directionAt(last)]
  put(joints[0]!.clone().addScaledVector(start, -radii[0]! * 0.95), start, radii[0]! * 0.25)
  put(joints[0]!.clone().addScaledVector(start, -radii[0]! * 0.66), start, radii[0]! * 0.72)
  joints.forEach((joint, i) => put(joint, directionAt(i), radii[i]!))
  put(joints[last]!.clone().addScaledVector(end, radii[last]! * 0.66), end, radii[last]! * 0.72)
  put(joints[last]!.clone().addScaledVector(end, radii[last]! * 0.95), end, radii[last]! * 0.25)
  return loft(rings)
}

export function boot(ankle: Vector3, knee: Vector3, forward: Vector3): BufferGeometry {
  const shin = new Vector3().subVectors(knee, ankle).normalize()
  const ahead = forward.clone().setY(0).normalize()
  const side = new Vector3().crossVectors(ahead, vector(0, 1, 0))
  const ground = ankle.y - body.ankle
  const foot = (height: number, back: number, front: number, half: number): Vector3[] =>
    Array.from({ length: 14 }, (_, i) => {
      const angle = (i / 14) * Math.PI * 2
      const along = Math.cos(angle)
      return ankle
        .clone()
        .setY(ground + height)
        .addScaledVector(ahead, along > 0 ? along * front : along * back)
        .addScaledVector(side, Math.sin(angle) * half * (1 - 0.12 * Math.max(0, along)))
    })
  const shaft = (up: number, radius: number): Vector3[] => {
    const x = ahead.clone().addScaledVector(shin, -ahead.dot(shin)).normalize()
    const y = new Vector3().crossVectors(shin, x).negate()
    return ellipse(ankle.clone().addScaledVector(shin, up), x, y, radius, radius, 14)
  }
  const rings = [
    foot(0, 0.085, 0.19, 0.052),
    foot(0.028, 0.088, 0.195, 0.055),
    foot(0.03, 0.082, 0.188, 0.05),
    foot(0.065, 0.08, 0.175, 0.05),
    foot(0.095, 0.075, 0.09, 0.05),
    shaft(0.05, 0.062),
    shaft(0.2, 0.068),
    shaft(0.21, 0.066),
  ]
  return loft(rings.map((each) => each.reverse()))
}
