/**
 * A posture states what touches: hips, trunk, hands and feet. Arms and legs follow by two-bone kinematics, so that a
 * hand ends on what it holds. Lengths of a person of 1.75 m, metres.
 */
import { Quaternion, Vector3 } from 'three'
import { vector } from '../geometry/shapes'

export interface Posture {
  readonly hips: Vector3
  /** Turn about the vertical; 0 faces -z. */
  readonly yaw: number
  /** Forward and sideways lean of the trunk, upward nod of the head, radian. */
  readonly lean: number
  readonly side: number
  readonly head: number
  readonly leftHand: Vector3
  readonly rightHand: Vector3
  readonly leftFoot: Vector3
  readonly rightFoot: Vector3
}

export interface LimbJoints {
  readonly shoulder: Vector3
  readonly elbow: Vector3
  readonly wrist: Vector3
  readonly hand: Vector3
  readonly hip: Vector3
  readonly knee: Vector3
  readonly ankle: Vector3
  readonly foot: Vector3
}

export interface Joints {
  readonly hips: Vector3
  readonly waist: Vector3
  readonly chest: Vector3
  readonly neck: Vector3
  readonly head: Vector3
  readonly up: Vector3
  readonly right: Vector3
  readonly forward: Vector3
  readonly left: LimbJoints
  readonly rightLimb: LimbJoints
}

export const body = {
  upperArm: 0.3,
  foreArm: 0.27,
  hand: 0.1,
  thigh: 0.44,
  shin: 0.43,
  ankle: 0.09,
  shoulder: 0.185,
  hip: 0.095,
  trunk: 0.5,
}

/** Middle joint of a two-bone chain, bent toward the hint; the end is pulled in when it is out of reach. */
function bend(a: Vector3, b: Vector3, first: number, second: number, hint: Vector3): { middle: Vector3; end: Vector3 } {
  const along = new Vector3().subVectors(b, a)
  const reach = Math.max(0.05, Math.min(along.length(), (first + second) * 0.998))
  along.normalize()
  const foot = (first * first - second * second + reach * reach) / (2 * reach)
  const out = hint.clone().addScaledVector(along, -hint.dot(along)).normalize()
  const middle = a
    .clone()
    .addScaledVector(along, foot)
    .addScaledVector(out, Math.sqrt(Math.max(0, first * first - foot * foot)))
  return { middle, end: a.clone().addScaledVector(along, reach) }
}

export function solvePosture(posture: Posture): Joints {
  const flat = new Quaternion().setFromAxisAngle(vector(0, 1, 0), posture.yaw)
  const trunk = flat
    .clone()
    .multiply(new Quaternion().setFromAxisAngle(vector(0, 0, 1), posture.side))
    .multiply(new Quaternion().setFromAxisAngle(vector(1, 0, 0), -posture.lean))
  const up = vector(0, 1, 0).applyQuaternion(trunk)
  const right = vector(1, 0, 0).applyQuaternion(trunk)
  const forward = vector(0, 0, -1).applyQuaternion(trunk)
  const frame = {
    up,
    right,
    forward,
    flatForward: vector(0, 0, -1).applyQuaternion(flat),
    flatRight: vector(1, 0, 0).applyQuaternion(flat),
  }
  const on = (metres: number): Vector3 => posture.hips.clone().addScaledVector(up, metres)
  return {
    hips: posture.hips,
    waist: on(0.17),
    chest: on(0.36),
    neck: on(body.trunk + 0.02),
    head: on(body.trunk + 0.165).addScaledVector(forward, 0.025),
    up,
    right,
    forward,
    left: limbs(posture, frame, -1),
    rightLimb: limbs(posture, frame, 1),
  }
}

interface Frame {
  readonly up: Vector3
  readonly right: Vector3
  readonly forward: Vector3
  readonly flatForward: Vector3
  readonly flatRight: Vector3
}

function limbs(posture: Posture, frame: Frame, side: -1 | 1): LimbJoints {
  const hand = side < 0 ? posture.leftHand : posture.rightHand
  const foot = side < 0 ? posture.leftFoot : posture.rightFoot
  const shoulder = posture.hips
    .clone()
    .addScaledVector(frame.up, body.trunk - 0.04)
    .addScaledVector(frame.right, side * body.shoulder)
  const hip = posture.hips.clone().addScaledVector(frame.flatRight, side * body.hip)
  const toHand = new Vector3().subVectors(hand, shoulder).normalize()
  const elbowOut = vector(0, -1, 0)
    .addScaledVector(frame.forward, -0.5)
    .addScaledVector(frame.right, side * 0.6)
  const arm = bend(
    shoulder,
    hand.clone().addScaledVector(toHand, -body.hand * 0.8),
    body.upperArm,
    body.foreArm,
    elbowOut,
  )
  const ankle = foot.clone().add(vector(0, body.ankle, 0))
  const kneeOut = frame.flatForward.clone().addScaledVector(frame.flatRight, side * 0.25)
  const leg = bend(hip, ankle, body.thigh, body.shin, kneeOut)
  return {
    shoulder,
    elbow: arm.middle,
    wrist: arm.end,
    hand: arm.end.clone().addScaledVector(toHand, body.hand),
    hip,
    knee: leg.middle,
    ankle: leg.end,
    foot,
  }
}
