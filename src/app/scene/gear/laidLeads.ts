/** Leads and sets as they lie on the tarp: a coil, and before it every clamp in a row in the order of its ends. */
import { at, box, cylinder, ring, strut, vector } from '../geometry/shapes'
import { built, join, part } from '../ink/part'
import { lead, type Shape, solids } from './laidShapes'

/** Two arms on a coil spring. */
const springClamp = (z: number): Shape =>
  solids(
    ...[-1, 1].map(
      (side) =>
        [
          () => strut(vector(0.24, 0.025, z + side * 0.012), vector(0.36, 0.025, z - side * 0.02), 0.008, 0.011, 8),
          'aluminium',
          0.03,
        ] as const,
    ),
    [() => at(cylinder(0.018, 0.018, 0.03, 12), [0.3, 0.025, z]), 'steel', 0.03],
  )

const hub: Shape = solids(
  [() => at(box(0.09, 0.05, 0.06), [0.14, 0.028, 0]), 'copper', 0.04],
  [() => at(cylinder(0.014, 0.014, 0.012, 6), [0.14, 0.058, 0]), 'steel', 0.03],
)

const joined =
  (...shapes: readonly Shape[]): Shape =>
  (id) =>
    join(...shapes.map((shape) => shape(id)))

const bar: Shape = solids(
  [() => at(box(0.05, 0.02, 0.56), [0.12, 0.014, 0]), 'copper', 0.06],
  ...[-2, -1, 0, 1, 2].map(
    (k) => [() => at(cylinder(0.012, 0.012, 0.014, 6), [0.12, 0.03, k * 0.12]), 'steel', 0.03] as const,
  ),
)

const reel: Shape = (id) =>
  built([
    part(at(cylinder(0.17, 0.17, 0.02, 18), [-0.1, 0.012, 0]), 'steel', id, 0.06),
    part(at(cylinder(0.1, 0.1, 0.1, 16), [-0.1, 0.06, 0]), 'lead', id, 0.05),
    part(at(ring(0.03, 0.01, 12), [-0.1, 0.12, 0], [Math.PI / 2, 0, 0]), 'steel', id, 0.03),
  ])

export const laidLeads: Readonly<Record<string, Shape>> = {
  'earth-lead': lead(5, 0.2, 0.014, 4),
  'spring-lead': joined(lead(5, 0.2, 0.014, 1), ...[-0.16, 0, 0.16].map(springClamp)),
  'earth-set': joined(lead(4, 0.19, 0.014, 4), hub),
  'isolation-earth': joined(lead(4, 0.18, 0.014, 4), hub),
  'bond-lead': lead(2, 0.15, 0.012, 2),
  'bypass-lead': lead(2, 0.17, 0.015, 2),
  'truck-bond-lead': joined(lead(3, 0.15, 0.012, 2), reel),
  'lv-bond-set': joined(lead(1, 0.12, 0.009, 5), bar),
}
