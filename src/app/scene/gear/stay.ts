/** Stay wire from the pole to its anchor: strain insulator, grips, guard tube, anchor rod with its eye. */
import { Quaternion, Vector3 } from 'three'
import { at, lathe, ring, strut, type Triple, upward } from '../geometry/shapes'
import { type Built, built, hitAlong, part, wire } from '../ink/part'
import type { Layout } from '../site/layout'

const id = 'stay'
const eggProfile = [
  [0.012, -0.085],
  [0.036, -0.07],
  [0.048, -0.04],
  [0.04, -0.012],
  [0.04, 0.012],
  [0.048, 0.04],
  [0.036, 0.07],
  [0.012, 0.085],
] as const
const moundProfile = [
  [0.3, -0.03],
  [0.2, 0.02],
  [0.06, 0.05],
  [0, 0.055],
] as const

export function stayView({ top, anchor }: NonNullable<Layout['stay']>): Built {
  const along = new Vector3().subVectors(anchor, top)
  const length = along.length()
  along.normalize()
  const on = (metres: number): Vector3 => top.clone().addScaledVector(along, metres)
  const grip = (metres: number) => part(strut(on(metres - 0.12), on(metres + 0.12), 0.013, 0.013, 8), 'steel', id, 0.03)
  const insulatorAt = length - 4.2
  const eye = on(length - 0.42)
  const egg = at(lathe(eggProfile, 14), [0, 0, 0])
    .applyQuaternion(new Quaternion().setFromUnitVectors(upward, along))
    .translate(...on(insulatorAt).toArray())
  return built(
    [
      part(egg, 'glaze', id, 0.05, 50),
      grip(insulatorAt - 0.28),
      grip(insulatorAt + 0.28),
      grip(length - 0.75),
      grip(0.35),
      part(strut(on(0.02), on(0.14), 0.03, 0.03, 8), 'steel', id, 0.05),
      part(strut(on(length - 2.5), on(length - 0.55), 0.026, 0.026, 10), 'tape', id, 0.06),
      part(strut(eye, on(length + 0.05), 0.012, 0.012, 8), 'steel', id, 0.04),
      part(at(ring(0.04, 0.011, 12), eye.toArray() as unknown as Triple), 'steel', id, 0.03),
      part(at(lathe(moundProfile, 10), [anchor.x, 0, anchor.z]), 'canvas', id, 0.2, 60),
    ],
    [
      wire([on(0), on(insulatorAt - 0.02)], 0.006, 'steel', id, 1.3),
      wire([on(insulatorAt + 0.02), eye], 0.006, 'steel', id, 1.3),
    ],
    [hitAlong(id, [on(0), on(length)], 0.02, 1)],
  )
}
