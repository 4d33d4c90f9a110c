/** The tarp beside the truck with the gear laid out on it in rows, and the register on its board. */
import type { BufferGeometry, Vector3 } from 'three'
import { soften } from '../geometry/curves'
import { at, ball, box, cylinder, ring, vector } from '../geometry/shapes'
import type { Slot } from '../ink/palette'
import { type Built, built, type Hit, join, type Part, part, type Wire, wire } from '../ink/part'
import { boot } from '../people/bodyParts'
import type { SitePicture } from '../site/sitePicture'

const columns = 6
const pitch = { across: 0.62, along: 0.75 }

type Shape = (place: Vector3, id: string) => { readonly parts: readonly Part[]; readonly wires?: readonly Wire[] }

const solid =
  (make: () => BufferGeometry, slot: Slot, detail = 0.06): Shape =>
  (place, id) => ({
    parts: [part(make().translate(place.x, place.y, place.z), slot, id, detail)],
  })

const coiled =
  (turns: number, radius: number, slot: Slot, cable: number): Shape =>
  (place, id) => ({
    parts: [],
    wires: [
      wire(
        Array.from({ length: turns * 12 }, (_, i) => {
          const angle = (i / 12) * Math.PI * 2
          return vector(
            place.x + Math.cos(angle) * radius,
            place.y + cable + (i / 12) * cable * 1.1,
            place.z + Math.sin(angle) * radius,
          )
        }),
        cable,
        slot,
        id,
        1.6,
      ),
    ],
  })

const pair =
  (make: (side: number) => BufferGeometry, slot: Slot): Shape =>
  (place, id) => ({
    parts: [-1, 1].map((side) => part(make(side).translate(place.x, place.y, place.z), slot, id, 0.06)),
  })

const tube = (length: number, radius: number): BufferGeometry =>
  at(cylinder(radius, radius, length, 10), [0, radius, 0], [Math.PI / 2, 0, 0])
/** Standing, toes to the south. */
const bootShape = (side: number): BufferGeometry =>
  boot(vector(side * 0.09, 0.09, 0), vector(side * 0.09, 0.6, 0), vector(-1, 0, 0))
const gloveShape = (side: number): BufferGeometry =>
  at(ball(0.08, 10), [side * 0.1, 0.04, 0], [0, 0, 0], [0.8, 0.4, 1.7])

/** One for each type of the catalogue; a test holds it. */
export const shapes: Readonly<Record<string, Shape>> = {
  'earth-lead': coiled(5, 0.22, 'lead', 0.014),
  'isolation-earth': coiled(4, 0.2, 'lead', 0.014),
  'bond-lead': coiled(2, 0.16, 'lead', 0.012),
  'earth-rod': solid(() => tube(0.6, 0.012), 'copper'),
  'rod-driver': solid(() => tube(0.45, 0.045), 'steel'),
  'operating-stick': solid(() => tube(0.6, 0.02), 'fibreglass'),
  'stick-brush': solid(() => tube(0.2, 0.03), 'leather'),
  'hv-detector': solid(() => tube(0.3, 0.04), 'white'),
  'lv-tester': solid(() => at(box(0.09, 0.05, 0.2), [0, 0.025, 0]), 'rubberDark'),
  'hv-proving-unit': solid(() => at(box(0.16, 0.09, 0.22), [0, 0.045, 0]), 'polymer'),
  'lv-proving-unit': solid(() => at(box(0.12, 0.07, 0.16), [0, 0.035, 0]), 'polymer'),
  'lv-gloves': pair(gloveShape, 'rubber'),
  'switching-gloves': pair(gloveShape, 'rubber'),
  'work-gloves': pair(gloveShape, 'leather'),
  boots: pair(bootShape, 'rubber'),
  'pole-cover': solid(() => tube(0.52, 0.12), 'rubber', 0.1),
  'lv-guard': solid(() => tube(0.52, 0.045), 'rubber'),
  lock: solid(() => at(box(0.07, 0.03, 0.06), [0, 0.015, 0]), 'copper', 0.03),
  tag: solid(() => at(box(0.12, 0.006, 0.18), [0, 0.004, 0]), 'white', 0.06),
  'barrier-set': coiled(6, 0.14, 'tape', 0.014),
  'sign-set': solid(() => at(box(0.5, 0.06, 0.5), [0, 0.03, 0], [0, 0.78, 0]), 'rubber', 0.2),
  harness: coiled(3, 0.15, 'strap', 0.02),
  handline: coiled(7, 0.17, 'white', 0.012),
  'rescue-kit': solid(() => at(box(0.4, 0.24, 0.26), [0, 0.12, 0]), 'tape', 0.1),
  binoculars: pair(
    (side) => at(cylinder(0.035, 0.045, 0.16, 10), [side * 0.045, 0.045, 0], [Math.PI / 2, 0, 0]),
    'ink',
  ),
  'operator-mat': solid(() => tube(0.52, 0.07), 'rubber'),
  'pin-insulator': solid(() => at(cylinder(0.05, 0.09, 0.18, 14), [0, 0.09, 0]), 'glaze', 0.04),
}
const unknown = solid(() => at(box(0.2, 0.1, 0.2), [0, 0.05, 0]), 'plate')

/** Middle of the tarp: on the pole's side of the truck. */
const tarpCentre = (truck: Vector3): Vector3 => vector(truck.x - 3.9, 0.012, truck.z - 1)

const placeOnTarp = (truck: Vector3, index: number): Vector3 =>
  tarpCentre(truck).add(
    vector(
      (Math.floor(index / columns) - 2.5) * pitch.across,
      0.012,
      ((index % columns) - (columns - 1) / 2) * pitch.along,
    ),
  )

export function tarpView(picture: SitePicture, truck: Vector3): Built {
  const centre = tarpCentre(truck)
  const sheet = part(at(box(4, 0.016, 5), [centre.x, 0.008, centre.z]), 'canvas', 'ground', 0.6)
  const items = picture.tarp.map((id, index): Built => {
    const place = placeOnTarp(truck, index)
    const { parts, wires = [] } = (shapes[picture.typeOf[id] ?? ''] ?? unknown)(place, id)
    const hit: Hit = {
      id,
      segments: [
        [
          place
            .clone()
            .setY(0.06)
            .setZ(place.z - 0.2),
          place
            .clone()
            .setY(0.06)
            .setZ(place.z + 0.2),
        ],
      ],
      radius: 0.14,
    }
    return built(parts, wires, [hit])
  })
  return join(built([sheet, ...register(centre)]), ...items)
}

/** The board with the register on a stand at the tarp's edge. */
function register(centre: Vector3): readonly Part[] {
  const [x, z] = [centre.x + 1.4, centre.z + 2.7]
  return [
    part(at(box(0.5, 0.66, 0.02), [x, 1.05, z], [-0.2, 0, 0]), 'wood', '', 0.2),
    part(at(box(0.44, 0.58, 0.026), [x, 1.05, z - 0.004], [-0.2, 0, 0]), 'plate', '', 0.2),
    ...[-1, 1].map((side) =>
      part(at(box(0.03, 1.1, 0.03), [x + side * 0.2, 0.55, z + 0.06], [0.1, 0, 0]), 'wood', '', 0.1),
    ),
  ]
}

/** A handline from the arm to the ground and back: two ropes side by side. */
export function handlineView(top: Vector3): Built {
  const rope = (aside: number): Wire =>
    wire(
      soften(
        [
          top.clone(),
          vector(top.x + aside, top.y * 0.5, top.z + 0.1 + aside),
          vector(top.x + aside * 2, 0.03, top.z + 0.15),
        ],
        2,
      ),
      0.007,
      'white',
      'handline',
      1.2,
    )
  const block = part(at(ring(0.05, 0.016, 12), [top.x, top.y, top.z]), 'steel', 'handline', 0.04)
  return built([block], [rope(0.05), rope(-0.05)])
}
