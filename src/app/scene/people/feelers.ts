/**
 * Feelers in the picture: a pair of feet on the ground, a pace apart toward what lifts the ground most, or side by side with
 * a hand held out; and what they read. In blue pencil: nobody stands there. Pure.
 */
import type { Vector3 } from 'three'
import type { GroundPoint } from '../../../engine'
import { say } from '../../../text'
import { ball, vector } from '../geometry/shapes'
import { type Built, built, type Hit, type Part, part } from '../ink/part'
import type { Label } from '../labels/label'
import { toScene } from '../site/layout'
import type { LiveningPicture } from '../site/liveningPicture'
import { boot, limb } from './bodyParts'
import { body } from './posture'

export interface Feelers {
  readonly kind: 'pace' | 'touch' | 'hands'
  readonly at: GroundPoint | null
  /** What the hands are on, by the names of the engine's handholds. */
  readonly hands: readonly string[]
  /** What would reach a body there, when it is known. */
  readonly reads: string | null
}

/** Metres from foot to foot, of a pace and standing: as the engine has them. */
const apart = { pace: 1, touch: 0.3, hands: 0.3 } as const
const hipHeight = 0.9
const reach = 0.55

export function feelersView({ kind, at }: Feelers, strongest: LiveningPicture['strongest']): Built {
  if (!at || kind === 'hands') return built([])
  const foot = toScene(at)
  const toward = strongest ? vector(strongest.x - foot.x, 0, strongest.z - foot.z) : vector(1, 0, 0)
  if (toward.length() < 0.05) toward.set(1, 0, 0)
  toward.normalize()
  const aside = vector(-toward.z, 0, toward.x)
  const spread = kind === 'pace' ? toward : aside
  const hips = foot.clone().setY(kind === 'pace' ? hipHeight - 0.12 : hipHeight)
  const legs = [-0.5, 0.5].flatMap((side): readonly Part[] => {
    const ankle = foot
      .clone()
      .addScaledVector(spread, side * apart[kind])
      .setY(body.ankle)
    const knee = ankle.clone().lerp(hips, 0.5).addScaledVector(toward, 0.06)
    return [
      part(boot(ankle, knee, toward), 'pencil', '', 0.1, 40),
      part(limb([hips, knee, ankle], [0.06, 0.05, 0.042], 8), 'pencil', '', 0.1),
    ]
  })
  if (kind === 'pace') return built(legs)
  const [chest, hand] = [hips.clone().setY(1.4), hips.clone().setY(1.15).addScaledVector(toward, reach)]
  const arm = limb([chest, chest.clone().lerp(hand, 0.5).setY(1.18), hand], [0.05, 0.042, 0.034], 8)
  return built([
    ...legs,
    part(limb([hips, chest], [0.1, 0.11], 8), 'pencil', '', 0.14),
    part(arm, 'pencil', '', 0.1),
    part(ball(0.055, 8).translate(hand.x, hand.y, hand.z), 'pencil', '', 0.06),
  ])
}

export function feelersLabels({ kind, at, hands, reads }: Feelers, hits: readonly Hit[]): readonly Label[] {
  if (kind !== 'hands')
    return at && reads !== null
      ? [{ key: 'feelers', at: toScene(at, 1), text: reads, kind: 'verdict', away: [0, -46], rank: 9.9 }]
      : []
  const places = hands.map((name) => placeOf(name, hits))
  const labels = places.flatMap((place, i): readonly Label[] => {
    const text = say(i === 0 ? 'scene.hand.left' : 'scene.hand.right')
    return place ? [{ key: `hand-${i}`, at: place, text, kind: 'tape', away: [40, -30], rank: 9.9 }] : []
  })
  const last = places[1]
  return last && reads !== null
    ? [...labels, { key: 'feelers', at: last, text: reads, kind: 'verdict', away: [40, 34], rank: 9.8 }]
    : labels
}

/** Of the thing that a handhold is a part of, the place that is nearest to the pole. */
function placeOf(name: string, hits: readonly Hit[]): Vector3 | undefined {
  const id = name.startsWith('stay-') ? 'stay' : (name.split('/')[0] ?? name)
  const ends = hits.filter((hit) => hit.id === id || hit.id === name).flatMap(({ segments }) => segments.flat())
  return ends.reduce<Vector3 | undefined>(
    (best, end) => (!best || Math.hypot(end.x, end.z) < Math.hypot(best.x, best.z) ? end : best),
    undefined,
  )
}
