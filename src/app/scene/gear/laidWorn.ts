/** What is worn, stood on or laid over things, as it lies on the tarp. */
import { at, box, cylinder, ring, vector } from '../geometry/shapes'
import { built, part } from '../ink/part'
import { boot, limb } from '../people/bodyParts'
import { lying, type Piece, type Shape, solids } from './laidShapes'

const pair = (make: (side: number) => readonly Piece[]): Shape => solids(...[-1, 1].flatMap(make))

const overshoes: Shape = (id) =>
  built(
    [-1, 1].map((side) =>
      part(boot(vector(side * 0.1, 0.09, 0), vector(side * 0.1, 0.28, 0), vector(-1, 0, 0)), 'rubber', id, 0.06),
    ),
  )

export const laidWorn: Readonly<Record<string, Shape>> = {
  'leather-protectors': pair((side) => [
    [
      () =>
        limb(
          [vector(side * 0.09, 0.03, -0.16), vector(side * 0.09, 0.03, -0.02), vector(side * 0.09, 0.03, 0.06)],
          [0.062, 0.048, 0.05],
          10,
        ),
      'leather',
      0.05,
    ],
    [
      () => limb([vector(side * 0.09, 0.03, 0.05), vector(side * 0.09, 0.026, 0.16)], [0.046, 0.03], 10),
      'leather',
      0.05,
    ],
    [
      () => limb([vector(side * 0.055, 0.03, 0), vector(side * 0.015, 0.028, 0.06)], [0.018, 0.015], 7),
      'leather',
      0.03,
    ],
  ]),
  sleeves: pair((side) => [
    [() => lying(0.62, 0.09, 0, 0.05).translate(side * 0.11, 0, 0), 'rubber', 0.08],
    [() => lying(0.02, 0.092, -0.3).translate(side * 0.11, 0, 0), 'rubberDark', 0.04],
  ]),
  overshoes,
  'climbing-irons': pair((side) => [
    [() => at(box(0.02, 0.02, 0.42), [side * 0.1, 0.02, 0]), 'steel', 0.05],
    [() => at(box(0.09, 0.02, 0.02), [side * 0.1 + 0.035, 0.02, 0.2]), 'steel', 0.03],
    [() => at(cylinder(0.002, 0.012, 0.09, 8), [side * 0.1 - 0.03, 0.025, 0.15], [Math.PI / 2, 0, 0.5]), 'steel', 0.03],
    [() => at(box(0.09, 0.04, 0.1), [side * 0.1, 0.03, -0.16]), 'leather', 0.05],
    [() => at(ring(0.05, 0.008, 12), [side * 0.1, 0.02, -0.04], [Math.PI / 2, 0, 0]), 'strap', 0.03],
  ]),
  blanket: solids(
    [() => at(box(0.46, 0.03, 0.6), [0, 0.016, 0]), 'rubber', 0.1],
    [() => at(box(0.44, 0.02, 0.58), [0.01, 0.042, 0.005]), 'rubber', 0.1],
    ...[-0.2, 0.2].flatMap((x) =>
      [-0.26, 0.26].map((z): Piece => [() => at(cylinder(0.012, 0.012, 0.004, 10), [x, 0.054, z]), 'ink', 0.02]),
    ),
  ),
  'insulating-platform': solids(
    [() => at(box(0.5, 0.05, 0.6), [0, 0.026, 0]), 'rubber', 0.1],
    ...[-0.2, -0.12, -0.04, 0.04, 0.12, 0.2].map(
      (x): Piece => [() => at(box(0.02, 0.012, 0.56), [x, 0.056, 0]), 'rubberDark', 0.04],
    ),
  ),
}
