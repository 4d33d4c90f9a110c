/** The tarp beside the truck with the gear laid out on it, long things in lanes and the rest in rows, each with its number; the register on its board. */
import { Matrix4, type Vector3 } from 'three'
import { soften } from '../geometry/curves'
import { at, box, ring, vector } from '../geometry/shapes'
import { type Built, built, type Hit, join, type Part, part, type Wire, wire } from '../ink/part'
import type { Plate } from '../ink/plateAtlas'
import { toScene } from '../site/layout'
import type { SitePicture } from '../site/sitePicture'
import { marksOn } from './laidMarks'
import { laidOut, quarantineTag, unknownShape } from './laidOut'

/** Metres of the tarp, across and along; it is unrolled further when there is more to lay out. */
const tarp = { wide: 5, long: 5.2 } as const
const columns = 6
const pitch = { across: 0.64, along: 0.82 } as const
const lane = { across: 0.26, along: 2.3 } as const
const long = new Set(['earth-rod', 'operating-stick', 'lv-guard', 'pole-cover'])

/** Middle of the tarp: on the pole's side of the truck, its far end away from the pole. */
export const tarpCentre = (truck: Vector3): Vector3 => vector(truck.x - 3.9, 0.012, truck.z + (truck.z > 0 ? 1 : -1))

interface Laid {
  readonly id: string
  readonly type: string
  readonly isLong: boolean
  readonly place: Vector3
}

/** Long things two to a lane at the far edge, the rest in rows before them, in the order of the register. */
function layOut(picture: SitePicture, truck: Vector3): readonly Laid[] {
  const centre = tarpCentre(truck)
  const typeOf = (id: string): string => picture.typeOf[id] ?? ''
  const inLanes = picture.tarp.filter((id) => long.has(typeOf(id)))
  const inRows = picture.tarp.filter((id) => !long.has(typeOf(id)))
  const lanes = Math.ceil(inLanes.length / 2)
  const edge = -tarp.wide / 2 + 0.22
  const put = (id: string, x: number, z: number): Laid => ({
    id,
    type: typeOf(id),
    isLong: long.has(typeOf(id)),
    place: centre.clone().add(vector(x, 0.012, z)),
  })
  return [
    ...inLanes.map((id, k) => put(id, edge + Math.floor(k / 2) * lane.across, (k % 2 ? 0.5 : -0.5) * lane.along)),
    ...inRows.map((id, k) =>
      put(
        id,
        edge + lanes * lane.across + 0.3 + Math.floor(k / columns) * pitch.across,
        ((k % columns) - (columns - 1) / 2) * pitch.along,
      ),
    ),
  ]
}

/** Of the tarp as far as it is unrolled, and of the board beside it. */
export function tarpCorners(picture: SitePicture): readonly Vector3[] {
  const truck = toScene(picture.truck)
  const centre = tarpCentre(truck)
  const far = tarp.wide / 2 + overhang(layOut(picture, truck), centre)
  const corners = [-tarp.wide / 2, far].flatMap((x) => [-1, 1].map((side) => vector(x, 0, (side * tarp.long) / 2)))
  return [...corners.map((corner) => corner.add(centre)), boardPlace(centre).setY(1.5)]
}

/** By how much the tarp is unrolled further than its own width. */
const overhang = (laid: readonly Laid[], centre: Vector3): number =>
  Math.max(0, ...laid.map(({ place }) => place.x + 0.3 - (centre.x + tarp.wide / 2)))

export function tarpView(picture: SitePicture, truck: Vector3): Built {
  const centre = tarpCentre(truck)
  const laid = layOut(picture, truck)
  const further = overhang(laid, centre)
  const wide = tarp.wide + further
  const middle = centre.x + further / 2
  const sheet = part(at(box(wide, 0.016, tarp.long), [middle, 0.008, centre.z]), 'canvas', 'ground', 0.6)
  const items = laid.map(({ id, type, isLong, place }): Built => {
    const shape = laidOut[type] ?? unknownShape
    const tag = picture.quarantined.includes(id) ? [quarantineTag(id)] : []
    const half = isLong ? 0.8 : 0.2
    const hit: Hit = {
      id,
      segments: [[place.clone().add(vector(0, 0.05, -half)), place.clone().add(vector(0, 0.05, half))]],
      radius: isLong ? 0.08 : 0.14,
    }
    const lying = shape(id)
    const marks = marksOn(lying, type, picture.found[id] ?? [], id)
    return moved(join(lying, marks, ...tag, numberTag(id, isLong)), place, hit)
  })
  return join(built([sheet, ...register(centre)]), ...items)
}

function moved({ parts, wires }: Built, place: Vector3, hit: Hit): Built {
  for (const { geometry } of parts) geometry.translate(place.x, place.y, place.z)
  return built(
    parts,
    wires.map((it) => ({ ...it, points: it.points.map((point) => point.clone().add(place)) })),
    [hit],
  )
}

/** Lies before the item, toward the pole. */
const numberPlace = (isLong: boolean) => (isLong ? vector(-0.1, 0.006, 0) : vector(-0.38, 0.006, 0))
const numberSize = { wide: 0.2, high: 0.1 } as const

function numberTag(id: string, isLong: boolean): Built {
  const { x, y, z } = numberPlace(isLong)
  return built([part(at(box(numberSize.high, 0.008, numberSize.wide), [x, y, z]), 'plate', id, 0.08)])
}

/** Letters on the tags and on the board, read from the pole's side. */
export function tarpPlates(picture: SitePicture, truck: Vector3, heading: string): readonly Plate[] {
  const toPole = new Matrix4().makeRotationY(-Math.PI / 2).multiply(new Matrix4().makeRotationX(-Math.PI / 2))
  const centre = tarpCentre(truck)
  const board = boardPlace(centre)
  return [
    ...layOut(picture, truck).map(({ id, isLong, place }): Plate => {
      const at0 = place.clone().add(numberPlace(isLong))
      return {
        place: new Matrix4().makeTranslation(at0.x, at0.y + 0.0055, at0.z).multiply(toPole),
        width: numberSize.wide,
        height: numberSize.high,
        text: [id],
      }
    }),
    {
      place: new Matrix4()
        .makeTranslation(board.x, board.y + 0.2, board.z - 0.065)
        .multiply(new Matrix4().makeRotationX(-0.2))
        .multiply(new Matrix4().makeRotationY(Math.PI)),
      width: 0.36,
      height: 0.18,
      text: [heading, String(picture.tarp.length)],
    },
  ]
}

const boardPlace = (centre: Vector3): Vector3 => vector(centre.x + 1.4, 1.05, centre.z + 2.95)

/** The board with the register on a stand at the tarp's edge: a row ruled for each line. */
function register(centre: Vector3): readonly Part[] {
  const { x, y, z } = boardPlace(centre)
  const rows = [0.06, 0, -0.06, -0.12, -0.18, -0.24].map((up) =>
    part(at(box(0.36, 0.004, 0.004), [x, y + up, z - 0.016 + up * 0.2], [-0.2, 0, 0]), 'ink', '', 0.04),
  )
  return [
    part(at(box(0.5, 0.66, 0.02), [x, y, z], [-0.2, 0, 0]), 'wood', '', 0.2),
    part(at(box(0.44, 0.58, 0.026), [x, y, z - 0.004], [-0.2, 0, 0]), 'plate', '', 0.2),
    ...rows,
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
