/**
 * Between two postures: what touches moves on an even way from where it was to where it is, feet lifted a little while
 * somebody walks. For the eye alone; nothing reads it.
 */
import { Vector3 } from 'three'
import type { Posture } from './posture'
import type { Stance } from './stance'

/** Seconds of a change of posture: long enough to be followed, short enough not to be waited for. */
export const changeTakes = 0.45

/** Farther than this, metres, is a way that was walked: the feet go in steps. */
const walked = 0.8
const stepLength = 0.7

/** Slow at both ends. */
const eased = (share: number): number => share * share * (3 - 2 * share)

export function stanceBetween(from: Stance, to: Stance, share: number): Stance {
  if (share >= 1) return to
  const t = eased(Math.max(0, share))
  const mix = (a: Vector3, b: Vector3): Vector3 => a.clone().lerp(b, t)
  const way = from.posture.hips.distanceTo(to.posture.hips)
  const steps = way > walked ? Math.max(1, Math.round(way / stepLength)) : 0
  const stride = (side: number): Vector3 => {
    if (steps === 0) return new Vector3()
    const swing = Math.sin(t * steps * Math.PI + (side > 0 ? Math.PI : 0)) * Math.sin(Math.PI * t)
    const ahead = to.posture.hips.clone().sub(from.posture.hips).setY(0)
    return ahead.setLength(ahead.length() > 1e-6 ? 0.26 * swing : 0).setY(Math.max(0, swing) * 0.09)
  }
  const [a, b] = [from.posture, to.posture]
  const posture: Posture = {
    hips: mix(a.hips, b.hips),
    yaw: a.yaw + shortest(b.yaw - a.yaw) * t,
    lean: a.lean + (b.lean - a.lean) * t,
    side: a.side + (b.side - a.side) * t,
    head: a.head + (b.head - a.head) * t,
    leftHand: mix(a.leftHand, b.leftHand),
    rightHand: mix(a.rightHand, b.rightHand),
    leftFoot: mix(a.leftFoot, b.leftFoot).add(stride(-1)),
    rightFoot: mix(a.rightFoot, b.rightFoot).add(stride(1)),
  }
  const stick =
    from.stick && to.stick
      ? { foot: mix(from.stick.foot, to.stick.foot), head: mix(from.stick.head, to.stick.head) }
      : to.stick
  return { posture, stick }
}

/** The same turn the short way round, radian. */
const shortest = (turn: number): number => turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI))

/** Whether anyone stands otherwise than before. */
export function hasMoved(from: ReadonlyMap<string, Stance>, to: ReadonlyMap<string, Stance>): boolean {
  return [...to].some(([id, stance]) => {
    const before = from.get(id)
    return before !== undefined && before !== stance && JSON.stringify(before) !== JSON.stringify(stance)
  })
}
