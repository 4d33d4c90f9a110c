/** The tape as a drafting dimension: straight between the two things, over the ground and up beside it. Pure. */
import type { Vector3 } from 'three'
import { metres, say } from '../../../text'
import type { Measured } from '../../stores/measureTape'
import type { Place } from '../../stores/shapeOf'
import { vector } from '../geometry/shapes'
import { type Built, built, type Wire, wire } from '../ink/part'
import type { Label } from '../labels/label'

/** Shorter legs say nothing of their own, metres. */
const least = 0.05
const tick = 0.12

const toScene = ({ x, y, z }: Place): Vector3 => vector(y, Math.max(z, 0.03), x)
/** The corner of the two legs: above or below the higher end. */
const cornerOf = ({ from, to }: Measured): Vector3 =>
  from.z < to.z ? toScene({ ...to, z: from.z }) : toScene({ ...from, z: to.z })

const line = (a: Vector3, b: Vector3, minPx: number): Wire => wire([a, b], 0.004, 'pencil', '', minPx, 4)

const ticks = (at: Vector3): readonly Wire[] => [
  line(at.clone().add(vector(-tick, 0, -tick)), at.clone().add(vector(tick, 0, tick)), 1.6),
  line(at.clone().add(vector(-tick, 0, tick)), at.clone().add(vector(tick, 0, -tick)), 1.6),
]

const hasLegs = ({ over, up }: Measured): boolean => over > least && Math.abs(up) > least

export function tapeView(measured: Measured): Built {
  const [from, to] = [toScene(measured.from), toScene(measured.to)]
  const corner = cornerOf(measured)
  const legs = hasLegs(measured) ? [line(from, corner, 1.2), line(corner, to, 1.2)] : []
  return built([], [line(from, to, 2.4), ...legs, ...ticks(from), ...ticks(to)])
}

export function tapeLabels(measured: Measured): readonly Label[] {
  const [from, to] = [toScene(measured.from), toScene(measured.to)]
  const corner = cornerOf(measured)
  const low = measured.from.z < measured.to.z ? from : to
  const high = low === from ? to : from
  const middle = (a: Vector3, b: Vector3): Vector3 => a.clone().lerp(b, 0.5)
  const label = (key: string, at: Vector3, text: string, rank: number): Label => ({
    key: `tape-${key}`,
    at,
    text,
    kind: 'tape',
    rank,
  })
  const straight = label('straight', middle(from, to), metres(measured.straight), 9.8)
  if (!hasLegs(measured)) return [straight]
  return [
    straight,
    label('over', middle(low, corner), say('tape.over', { length: metres(measured.over) }), 9.7),
    label('up', middle(corner, high), say('tape.high', { length: metres(Math.abs(measured.up)) }), 9.6),
  ]
}
