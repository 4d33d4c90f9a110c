/** An insulating platform where it was laid. */
import { type Built, built } from '../ink/part'
import { toScene } from '../site/layout'
import type { SitePicture } from '../site/sitePicture'
import { marksOn } from './laidMarks'
import { laidOut } from './laidOut'

export function platformView({ item, at }: SitePicture['platforms'][number], found: readonly string[]): Built {
  const shape = laidOut['insulating-platform']!(item)
  const { parts } = marksOn(shape, 'insulating-platform', found, item)
  const place = toScene(at)
  const all = [...shape.parts, ...parts]
  for (const { geometry } of all) geometry.translate(place.x, 0.005, place.z)
  const side = place.clone().setX(place.x + 0.2)
  return built(all, [], [{ id: item, segments: [[place.clone().setX(place.x - 0.2), side]], radius: 0.2 }])
}
