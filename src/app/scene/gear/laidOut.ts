/** Each type of gear as it lies on the tarp, real size, to be looked at from above: around its own middle, long ones along z. */
import { at, ball, box, cylinder, prism, ring, strut, vector } from '../geometry/shapes'
import type { Slot } from '../ink/palette'
import { built, type Part, part, wire } from '../ink/part'
import { boot, limb } from '../people/bodyParts'
import { laidLeads } from './laidLeads'
import { arc, both, coiled, lying, type Piece, type Shape, solids, strap } from './laidShapes'
import { laidTools } from './laidTools'
import { laidWorn } from './laidWorn'
import { pinInsulator } from './pole'

const glove =
  (slot: Slot): Shape =>
  (id) =>
    built(
      [-1, 1].flatMap((side): readonly Part[] => {
        const on = (x: number, z: number) => vector(side * (0.09 + x), 0.022, z)
        const finger = (x: number, length: number): Part =>
          part(limb([on(x, 0.02), on(x * 1.25, 0.02 + length)], [0.014, 0.012], 7), slot, id, 0.03, 60)
        return [
          part(limb([on(0, -0.2), on(0, -0.06), on(0, 0.03)], [0.055, 0.04, 0.042], 10), slot, id, 0.06, 60),
          ...[-0.033, -0.011, 0.011, 0.033].map((x, k) => finger(x, [0.075, 0.09, 0.085, 0.065][k]!)),
          part(limb([on(-0.035, -0.03), on(-0.075, 0.03)], [0.016, 0.013], 7), slot, id, 0.03, 60),
        ]
      }),
    )

/** Standing, toes to the south. */
const standingBoots: Shape = (id) =>
  built(
    [-1, 1].map((side) =>
      part(boot(vector(side * 0.09, 0.09, 0), vector(side * 0.09, 0.6, 0), vector(-1, 0, 0)), 'rubber', id, 0.06),
    ),
  )

const provingUnit = (wide: number, deep: number): Shape =>
  solids(
    [() => at(box(wide, 0.09, deep), [0, 0.045, 0]), 'polymer'],
    [() => at(box(wide * 0.8, 0.01, deep * 0.3), [0, 0.094, -deep * 0.25]), 'plate', 0.04],
    [() => at(cylinder(0.022, 0.022, 0.03, 12), [0, 0.1, deep * 0.2]), 'copper', 0.03],
    [() => at(ring(wide * 0.3, 0.008, 14), [0, 0.1, deep * 0.2], [Math.PI / 2, 0, 0]), 'rubberDark', 0.03],
  )

/** Three sections beside each other, as the stick goes into its bag. */
const stick = solids(
  ...[-1, 0, 1].flatMap((k): readonly Piece[] => [
    [() => lying(1.5, 0.017 - k * 0.002).translate(k * 0.06, 0, 0), 'fibreglass', 0.05],
    [() => lying(0.08, 0.023 - k * 0.002, 0.73).translate(k * 0.06, 0, 0), 'rubberDark', 0.04],
    [() => lying(0.06, 0.022 - k * 0.002, -0.72).translate(k * 0.06, 0, 0), 'steel', 0.04],
  ]),
  [() => at(ring(0.03, 0.008, 12), [0.06, 0.03, 0.82], [Math.PI / 2, 0, 0]), 'steel', 0.03],
  [() => lying(0.03, 0.04, -0.3).translate(-0.06, 0, 0), 'tape', 0.04],
)

/** One for each type of the catalogue; a test holds it. */
export const laidOut: Readonly<Record<string, Shape>> = {
  ...laidLeads,
  ...laidTools,
  ...laidWorn,
  'earth-rod': solids(
    [() => lying(1.9, 0.008), 'copper', 0.04],
    [() => lying(0.1, 0.0015, 0.99, 0.008), 'copper', 0.03],
    [() => lying(0.03, 0.012, -0.94), 'steel', 0.03],
    [() => lying(0.015, 0.011, -0.75), 'tape', 0.03],
  ),
  'rod-driver': solids(
    [() => lying(0.55, 0.035), 'steel'],
    [() => lying(0.03, 0.042, 0.27), 'steel', 0.04],
    ...[-1, 1].map((side): Piece => [() => at(ring(0.09, 0.011, 14), [side * 0.09, 0.035, 0]), 'steel', 0.04]),
  ),
  'operating-stick': stick,
  'stick-brush': solids(
    [() => lying(0.12, 0.016, -0.12), 'steel', 0.03],
    [() => lying(0.2, 0.03, 0.02), 'leather', 0.01],
    [() => lying(0.02, 0.032, 0.1), 'rubberDark', 0.03],
  ),
  'hv-detector': solids(
    [() => lying(0.24, 0.045, 0, 0.034), 'white'],
    [() => lying(0.04, 0.046, -0.06), 'tape', 0.03],
    [() => lying(0.12, 0.007, 0.17), 'copper', 0.03],
    [() => lying(0.08, 0.02, -0.15), 'rubberDark', 0.04],
    [() => at(ball(0.014, 8), [0, 0.088, 0.02]), 'tape', 0.03],
  ),
  'lv-tester': both(
    solids(
      [() => at(box(0.09, 0.045, 0.2), [0, 0.024, 0]), 'rubberDark'],
      [() => at(box(0.06, 0.004, 0.06), [0, 0.049, 0.05]), 'plate', 0.03],
      ...[-1, 1].flatMap((side): readonly Piece[] => [
        [() => lying(0.12, 0.012, 0.1).translate(side * 0.16, 0, 0), 'tape', 0.03],
        [() => lying(0.05, 0.003, 0.18).translate(side * 0.16, 0, 0), 'copper', 0.02],
      ]),
    ),
    (id) =>
      built(
        [],
        [-1, 1].map((side) =>
          wire(
            [
              vector(side * 0.03, 0.02, -0.1),
              vector(side * 0.09, 0.008, -0.19),
              vector(side * 0.16, 0.01, -0.08),
              vector(side * 0.16, 0.012, 0.05),
            ],
            0.004,
            'ink',
            id,
            1,
            5,
          ),
        ),
      ),
  ),
  'hv-proving-unit': provingUnit(0.18, 0.26),
  'lv-proving-unit': provingUnit(0.13, 0.18),
  'lv-gloves': glove('rubber'),
  'switching-gloves': glove('rubber'),
  'work-gloves': glove('leather'),
  boots: standingBoots,
  'pole-cover': solids(
    [() => lying(1, 0.13), 'rubber', 0.1],
    [() => lying(1.004, 0.105).translate(0, 0.025, 0), 'rubberDark', 0.1],
    ...[-0.3, 0, 0.3].map((z): Piece => [() => lying(0.04, 0.134, z), 'strap', 0.04]),
  ),
  'lv-guard': solids(
    [() => lying(1.7, 0.036), 'rubber', 0.06],
    ...[-1, 1].map((side): Piece => [() => lying(0.08, 0.048, side * 0.83), 'rubber', 0.05]),
    [() => at(box(0.01, 0.012, 1.7), [0, 0.07, 0]), 'rubberDark', 0.03],
  ),
  lock: solids(
    [() => at(box(0.09, 0.035, 0.08), [0, 0.018, -0.02]), 'copper', 0.04],
    [() => at(ring(0.034, 0.008, 14), [0, 0.018, 0.03], [Math.PI / 2, 0, 0]), 'steel', 0.03],
    [() => at(cylinder(0.008, 0.008, 0.003, 8), [0, 0.037, -0.02]), 'ink', 0.02],
  ),
  tag: both(
    solids(
      [() => at(box(0.12, 0.006, 0.18), [0, 0.004, 0]), 'white', 0.06],
      [() => at(cylinder(0.009, 0.009, 0.004, 10), [0, 0.008, 0.07]), 'ink', 0.02],
      ...[-0.05, -0.02, 0.01].map((z): Piece => [() => at(box(0.09, 0.002, 0.006), [0, 0.008, z]), 'tape', 0.02]),
    ),
    (id) =>
      built(
        [],
        [
          wire(
            [vector(0, 0.01, 0.07), vector(0.05, 0.01, 0.15), vector(-0.04, 0.01, 0.19)],
            0.003,
            'strap',
            id,
            0.9,
            5,
          ),
        ],
      ),
  ),
  'barrier-set': both(
    coiled(5, 0.13, 'tape', 0.013),
    solids(
      ...[0, 1, 2, 3, 4].map(
        (k): Piece => [
          () => lying(0.66, 0.014).translate(0.2 + k * 0.03, 0.012 * (k % 2), 0),
          k % 2 ? 'white' : 'tape',
          0.04,
        ],
      ),
    ),
  ),
  'sign-set': solids(
    [
      () =>
        at(
          prism(
            [
              [-0.36, -0.3],
              [0.36, -0.3],
              [0, 0.33],
            ],
            0,
            0.02,
          ),
          [0, 0.01, 0],
        ),
      'rubber',
      0.15,
    ],
    [
      () =>
        at(
          prism(
            [
              [-0.26, -0.24],
              [0.26, -0.24],
              [0, 0.22],
            ],
            0,
            0.006,
          ),
          [0, 0.03, 0],
        ),
      'plate',
      0.1,
    ],
    [() => at(box(0.03, 0.004, 0.16), [0, 0.038, -0.02]), 'ink', 0.04],
  ),
  harness: both(
    strap(arc(0, 0, 0.2, 0, Math.PI * 2)),
    strap([...arc(-0.09, 0.24, 0.09, 0, Math.PI * 2)]),
    strap([...arc(0.1, 0.25, 0.09, 0, Math.PI * 2)]),
    strap([
      [-0.12, 0.14],
      [0, -0.12],
      [0.13, 0.15],
    ]),
    solids(
      [() => at(ring(0.035, 0.008, 12), [-0.2, 0.03, 0], [Math.PI / 2, 0, 0]), 'steel', 0.03],
      [() => at(ring(0.035, 0.008, 12), [0.2, 0.03, 0], [Math.PI / 2, 0, 0]), 'steel', 0.03],
      [() => at(box(0.06, 0.02, 0.05), [0, 0.04, -0.19]), 'steel', 0.03],
    ),
  ),
  handline: both(
    coiled(6, 0.17, 'white', 0.012),
    solids(
      [() => at(cylinder(0.05, 0.05, 0.03, 14), [0, 0.03, 0]), 'aluminium', 0.04],
      [() => at(ring(0.03, 0.008, 12), [0.08, 0.03, 0], [Math.PI / 2, 0, 0]), 'steel', 0.03],
    ),
  ),
  'rescue-kit': solids(
    [() => at(box(0.4, 0.22, 0.28), [0, 0.11, 0]), 'tape', 0.1],
    [() => at(box(0.42, 0.03, 0.3), [0, 0.2, 0]), 'tape', 0.06],
    [() => at(box(0.14, 0.004, 0.04), [0, 0.218, 0]), 'white', 0.03],
    [() => at(box(0.04, 0.005, 0.14), [0, 0.218, 0]), 'white', 0.03],
    [() => at(box(0.16, 0.03, 0.02), [0, 0.16, -0.155]), 'strap', 0.04],
  ),
  binoculars: solids(
    ...[-1, 1].flatMap((side): readonly Piece[] => [
      [() => lying(0.15, 0.03, 0, 0.038).translate(side * 0.045, 0, 0), 'ink', 0.04],
      [() => lying(0.012, 0.036, 0.078).translate(side * 0.045, 0, 0), 'glass', 0.03],
    ]),
    [() => at(cylinder(0.014, 0.014, 0.05, 10), [0, 0.06, 0], [Math.PI / 2, 0, 0]), 'steel', 0.03],
  ),
  'operator-mat': solids(
    [() => lying(0.9, 0.085), 'rubber', 0.08],
    [() => lying(0.904, 0.055).translate(0, 0.03, 0), 'rubberDark', 0.05],
    [() => at(box(0.2, 0.012, 0.9), [0.08, 0.008, 0]), 'rubber', 0.06],
  ),
  'pin-insulator': (id) => built(pinInsulator([0, 0.1, 0], id, 1, 0.9, true)),
}

export const unknownShape: Shape = solids([() => at(box(0.2, 0.1, 0.2), [0, 0.05, 0]), 'plate'])

/** A tie-on tag in the colour of what must not be used. */
export const quarantineTag: Shape = (id) =>
  built([
    part(at(box(0.1, 0.006, 0.16), [0.16, 0.09, -0.1], [0, 0.4, 0.1]), 'tape', id, 0.06),
    part(strut(vector(0.05, 0.06, 0), vector(0.14, 0.09, -0.04), 0.003, 0.003, 5), 'strap', id, 0.02),
  ])
