/** Tools, testers, papers and kits as they lie on the tarp. */
import { at, ball, box, cylinder, ring, vector } from '../geometry/shapes'
import { built, wire } from '../ink/part'
import { both, lying, type Piece, type Shape, solids } from './laidShapes'

const flat = [Math.PI / 2, 0, 0] as const

const testLeads: Shape = (id) =>
  built(
    [],
    [-1, 1].map((side) =>
      wire(
        [vector(side * 0.06, 0.05, -0.12), vector(side * 0.16, 0.01, -0.2), vector(side * 0.22, 0.01, 0.02)],
        0.005,
        'ink',
        id,
        1,
        5,
      ),
    ),
  )

const cone = (y: number): readonly Piece[] => [
  [() => at(cylinder(0.03, 0.13, 0.3, 16), [-0.1, 0.15 + y, 0]), 'tape', 0.08],
  [() => at(box(0.3, 0.02, 0.3), [-0.1, 0.012 + y, 0]), 'rubberDark', 0.08],
  [() => at(cylinder(0.066, 0.085, 0.05, 16), [-0.1, 0.17 + y, 0]), 'white', 0.05],
]

export const laidTools: Readonly<Record<string, Shape>> = {
  'cabinet-key': solids(
    [() => lying(0.16, 0.008, 0.02), 'steel', 0.02],
    [() => at(ring(0.028, 0.008, 12), [0, 0.01, -0.09], flat), 'steel', 0.02],
    [() => at(box(0.03, 0.008, 0.02), [0.02, 0.008, 0.09]), 'steel', 0.02],
  ),
  'carrier-bag': solids(
    [() => at(box(0.32, 0.12, 0.24), [0, 0.06, 0]), 'canvas', 0.1],
    [() => at(box(0.34, 0.02, 0.05), [0, 0.125, 0]), 'strap', 0.05],
    [() => at(box(0.05, 0.03, 0.05), [0, 0.14, -0.02]), 'copper', 0.03],
  ),
  'earth-tester': both(
    solids(
      [() => at(box(0.22, 0.1, 0.18), [0, 0.05, 0]), 'tape', 0.08],
      [() => at(box(0.15, 0.004, 0.06), [0, 0.102, 0.04]), 'plate', 0.04],
      [() => at(cylinder(0.02, 0.02, 0.02, 12), [-0.05, 0.11, -0.05]), 'rubberDark', 0.03],
      ...[0.01, 0.04, 0.07].map(
        (x): Piece => [() => at(cylinder(0.008, 0.008, 0.016, 8), [x, 0.108, -0.05]), 'copper', 0.02],
      ),
    ),
    testLeads,
  ),
  lamp: solids(
    [() => lying(0.22, 0.03, -0.06), 'rubberDark', 0.05],
    [() => lying(0.07, 0.05, 0.09, 0.035), 'tape', 0.04],
    [() => lying(0.01, 0.047, 0.13), 'glass', 0.03],
  ),
  'wire-brush': solids(
    [() => at(box(0.04, 0.025, 0.3), [0, 0.045, 0]), 'wood', 0.05],
    [() => at(box(0.035, 0.03, 0.16), [0, 0.018, 0.06]), 'steel', 0.012],
  ),
  'tool-bag': solids(
    [() => at(cylinder(0.13, 0.12, 0.22, 16), [0, 0.11, 0]), 'canvas', 0.08],
    [() => at(cylinder(0.132, 0.132, 0.03, 16), [0, 0.2, 0]), 'strap', 0.05],
    [() => at(box(0.02, 0.16, 0.05), [0.04, 0.26, 0.02], [0.2, 0, 0.1]), 'steel', 0.03],
    [() => at(box(0.03, 0.14, 0.02), [-0.04, 0.25, -0.02], [-0.2, 0, 0]), 'wood', 0.03],
    [() => at(ring(0.03, 0.006, 12), [0.16, 0.02, 0.06], flat), 'steel', 0.03],
  ),
  radio: solids(
    [() => at(box(0.07, 0.045, 0.15), [0, 0.023, 0]), 'rubberDark', 0.05],
    [() => lying(0.14, 0.007, 0.14).translate(-0.02, 0.015, 0), 'ink', 0.03],
    [() => at(box(0.045, 0.004, 0.04), [0, 0.047, 0.04]), 'plate', 0.03],
  ),
  'first-aid-kit': solids(
    [() => at(box(0.3, 0.12, 0.24), [-0.04, 0.06, 0]), 'clothGreen', 0.08],
    [() => at(box(0.14, 0.004, 0.04), [-0.04, 0.122, 0]), 'white', 0.03],
    [() => at(box(0.04, 0.005, 0.14), [-0.04, 0.122, 0]), 'white', 0.03],
    [() => at(box(0.16, 0.08, 0.16), [0.22, 0.04, 0]), 'tape', 0.06],
    [() => at(ball(0.012, 8), [0.27, 0.085, 0.05]), 'leaf', 0.02],
  ),
  'job-papers': solids(
    [() => at(box(0.24, 0.025, 0.33), [0, 0.014, 0]), 'wood', 0.08],
    [() => at(box(0.21, 0.006, 0.29), [0, 0.03, -0.01]), 'plate', 0.06],
    [() => at(box(0.09, 0.02, 0.03), [0, 0.035, 0.14]), 'steel', 0.03],
    ...[-0.09, -0.04, 0.01, 0.06].map((z): Piece => [() => at(box(0.16, 0.002, 0.006), [0, 0.034, z]), 'ink', 0.02]),
  ),
  'cone-set': solids(
    ...[0, 0.07, 0.14].flatMap(cone),
    ...[-0.1, 0.1].flatMap((z): readonly Piece[] => [
      [() => at(box(0.1, 0.12, 0.1), [0.16, 0.06, z]), 'rubberDark', 0.05],
      [() => at(cylinder(0.05, 0.05, 0.04, 14), [0.16, 0.15, z], [0, 0, Math.PI / 2]), 'tape', 0.04],
    ]),
  ),
  // The boom stays on its truck: what lies here is its lower controls on their lead.
  'bucket-boom': solids(
    [() => at(box(0.2, 0.1, 0.3), [0, 0.05, 0]), 'steel', 0.08],
    ...[-0.09, -0.03, 0.03, 0.09].flatMap((z): readonly Piece[] => [
      [() => at(cylinder(0.006, 0.006, 0.09, 8), [0, 0.14, z]), 'ink', 0.02],
      [() => at(ball(0.014, 8), [0, 0.19, z]), 'tape', 0.02],
    ]),
  ),
}
