/** The truck where it stands, parked along the road, and the signs before and behind it. */
import type { BufferGeometry, Vector3 } from 'three'
import { at, box, cylinder, prism } from '../geometry/shapes'
import { type Built, built, type Part, part } from '../ink/part'
import type { Slot } from '../ink/palette'

/** The truck stands on the verge; the place that it is known by is beside its bed, where one works. */
export const bedside = 2.7

const cabProfile = [
  [2.05, 0.62],
  [2.05, 1.22],
  [1.72, 1.36],
  [1.2, 2.32],
  [0.05, 2.36],
  [0, 0.62],
] as const

export function truckView(place: Vector3): Built {
  const parts: Part[] = []
  const add = (geometry: BufferGeometry, slot: Slot, detail = 0.35): void => {
    parts.push(part(geometry.translate(place.x + bedside, 0, place.z + 1.6), slot, 'truck', detail, 30))
  }
  // Side profile of the cab, pushed across.
  const cab = prism(cabProfile.map(([along, up]) => [along, -up] as const).reverse(), -1, 1)
  add(at(cab, [0, 0, -0.6], [Math.PI / 2, 0, Math.PI / 2]), 'truck')
  add(at(box(2.1, 0.16, 4.6), [0, 0.86, -2.85]), 'steel')
  for (const side of [-1, 1]) {
    add(at(box(0.05, 0.4, 4.6), [side * 1.02, 1.13, -2.85]), 'truck')
    add(at(box(0.03, 0.5, 0.62), [side, 1.72, 0]), 'glass', 0.25)
    add(at(box(0.1, 0.28, 0.16), [side * 1.17, 1.6, 0.62]), 'strap', 0.12)
    add(at(cylinder(0.11, 0.11, 0.05, 14), [side * 0.75, 0.95, 1.46], [Math.PI / 2, 0, 0]), 'white', 0.1)
    for (const along of [0.75, -3.7]) {
      add(at(cylinder(0.44, 0.44, 0.28, 20), [side * 0.9, 0.44, along], [0, 0, Math.PI / 2]), 'tyre', 0.2)
      add(at(cylinder(0.2, 0.2, 0.3, 12), [side * 0.9, 0.44, along], [0, 0, Math.PI / 2]), 'steel', 0.1)
    }
  }
  add(at(box(2.1, 0.4, 0.05), [0, 1.13, -5.12]), 'truck')
  add(at(box(2.1, 1.15, 0.07), [0, 1.5, -0.58]), 'steel')
  add(at(box(1.3, 0.55, 0.9), [0, 1.2, -1.2]), 'truck', 0.3)
  add(at(box(0.5, 0.6, 3), [0.7, 1.2, -3.2]), 'wood', 0.2)
  add(at(box(0.8, 0.18, 5.8), [0, 0.62, -2]), 'strap', 0.2)
  add(at(box(1.5, 0.5, 0.04), [0, 1.85, 0.93], [-0.5, 0, 0]), 'glass', 0.25)
  add(at(box(1.9, 0.22, 0.12), [0, 0.62, 1.5]), 'strap', 0.2)
  const [front, back] = [place.clone(), place.clone()]
  front.set(place.x + bedside, 1.2, place.z + 2.6)
  back.set(place.x + bedside, 1.2, place.z - 3)
  return built(parts, [], [{ id: 'truck', segments: [[back, front]], radius: 1.05 }])
}

/** Boards on the verge, one for each way one drives. */
export function signsView(truck: Vector3): Built {
  const parts = [-14, 14].flatMap((away): Part[] => {
    const [x, z] = [truck.x + bedside, truck.z + away]
    return [
      part(at(box(0.75, 0.75, 0.02), [x, 0.85, z], [0, 0, Math.PI / 4]), 'rubber', 'ground', 0.2),
      part(at(box(0.5, 0.08, 0.026), [x, 0.85, z]), 'ink', 'ground', 0.1),
      ...[-1, 1].map((side) =>
        part(at(box(0.03, 0.9, 0.03), [x + side * 0.16, 0.4, z], [0.12 * side, 0, 0]), 'steel', 'ground', 0.1),
      ),
    ]
  })
  return built(parts)
}
