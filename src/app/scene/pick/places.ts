/** What can be pointed at though nothing stands there: hazards that were marked on the job sheet, and the foot of the pole. */
import { vector } from '../geometry/shapes'
import { type Built, built, type Hit, type Wire, wire } from '../ink/part'
import { toScene } from '../site/layout'
import type { SitePicture } from '../site/sitePicture'

export function placeHits({ hazards }: SitePicture): readonly Hit[] {
  return [
    { id: 'pole-foot', segments: [[vector(0, 0, 0), vector(0, 0.35, 0)]], radius: 0.24 },
    // As high as its triangle is drawn, and in front of what stands there.
    ...hazards.map(({ id, at }) => ({ id, segments: [[toScene(at, 0.05), toScene(at, 0.35)] as const], radius: 0.28 })),
  ]
}

/** A ring round the place that is chosen; nothing when it is a thing with an outline of its own. */
export function placeRing({ hazards }: SitePicture, selection: string | null): Built | null {
  const place = hazards.find(({ id }) => id === selection)
  const centre = place ? toScene(place.at, 0.03) : selection === 'pole-foot' ? vector(0, 0.03, 0) : null
  return centre && built([], [ring(centre.x, centre.z)])
}

const ring = (x: number, z: number): Wire =>
  wire(
    Array.from({ length: 33 }, (_, i) =>
      vector(x + 0.5 * Math.cos((i * Math.PI) / 16), 0.03, z + 0.5 * Math.sin((i * Math.PI) / 16)),
    ),
    0.012,
    'pencil',
    '',
    2.6,
    5,
  )
