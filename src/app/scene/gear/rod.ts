/** A driven rod: what stands out of the ground, its clamp when a lead is on it, the turned earth round it. */
import { at, box, cylinder, lathe, ring } from '../geometry/shapes'
import { type Built, built, type Part, part } from '../ink/part'
import { toScene } from '../site/layout'
import type { SitePicture } from '../site/sitePicture'

export type RodPicture = SitePicture['rods'][number]

const standing = ({ length, depth }: RodPicture): number => Math.max(0.05, length - depth)
export const rodClampHeight = (rod: RodPicture): number => Math.max(0.04, Math.min(0.33, standing(rod) - 0.07))

export function rodView(rod: RodPicture, hasClamp: boolean): Built {
  const { x, z } = toScene(rod.at)
  const id = `rod/${rod.item}`
  const top = standing(rod)
  const clampAt = rodClampHeight(rod)
  const parts: Part[] = [
    part(at(cylinder(0.009, 0.009, top + 0.1, 10), [x, (top - 0.1) / 2, z]), 'copper', id, 0.04),
    part(at(cylinder(0.013, 0.013, 0.025, 8), [x, top, z]), 'steel', id, 0.03),
    part(
      at(
        lathe(
          [
            [0.11, -0.01],
            [0.07, 0.012],
            [0.02, 0.02],
            [0, 0.02],
          ],
          9,
        ),
        [x, 0, z],
      ),
      'canvas',
      id,
      0.1,
      70,
    ),
  ]
  if (hasClamp)
    parts.push(
      part(at(box(0.05, 0.045, 0.04), [x, clampAt, z]), 'aluminium', id, 0.04),
      part(at(cylinder(0.006, 0.006, 0.07, 8), [x + 0.05, clampAt, z], [0, 0, Math.PI / 2]), 'steel', id, 0.03),
      part(at(ring(0.016, 0.004, 10), [x + 0.1, clampAt, z]), 'steel', id, 0.03),
    )
  const foot = toScene(rod.at)
  return built(parts, [], [{ id, segments: [[foot, toScene(rod.at, top)]], radius: 0.04 }])
}
