/**
 * Where things and people go on the ground, chosen from what can be seen there: the truck well off, the rod away from
 * pole, anchor and what is buried, the barrier round all that can rise, the posts of whoever watches outside it. Metres;
 * distances where nothing else is said are common practice, no source.
 */
import { distance, type GroundPoint } from '../site/place'
import { findSectionNeutral } from '../site/findSectionNeutral'
import { placeSheet } from '../site/placeSheet'
import type { Site } from '../site/site'
import { isGroundTaken, isTruckPlaceTaken } from '../site/takenGround'
import type { Practice } from './practice'

export interface Layout {
  readonly truck: GroundPoint
  /** It stands where its boom gets to the pole, inside the barrier. */
  readonly isBoomNear: boolean
  /** Where the earth end of the lead goes: a rod to come, or the neutral's own earth at the pole. */
  readonly rod: GroundPoint
  /** Whatever lets current into the ground: pole, anchor, the rod to come. */
  readonly electrodes: readonly GroundPoint[]
  readonly outline: readonly GroundPoint[]
  /** From where the number on the pole is read; outside the barrier. */
  readonly reading: GroundPoint
  /** From where one watches; outside the barrier. */
  readonly lookout: GroundPoint
  /** At the tail of the handline: near the pole, far from the rod. */
  readonly ropeStand: GroundPoint
}

/** On the side of the road and away from the stay; mirrored until it fits. */
const truckPlace = { x: -14, y: 10 }
const rodPlace = { x: 2.6, y: -2.35 }
const ropePlace = { x: -2.6, y: 2 }

/** The number on a pole is read from so near. */
const reading = 9.5
/** From the rod to anything else that current goes into the ground by. */
const rodRoom = 3

export function layOut(site: Site, practice: Practice): Layout {
  const near = findBoomPlace(site, practice)
  const truck = near ?? findTruckPlace(site, practice)
  const neutral = practice.isNeutralFirst ? findSectionNeutral(site.scenario) : undefined
  const rod = neutral?.poleEarth.at ?? findRodPlace(site, practice, truck, near !== undefined) ?? rodPlace
  const electrodes = [...electrodesOf(site), rod]
  const pads = near === undefined ? [] : padsAt(site, near)
  const outline = outlineAround([...electrodes, ...pads], practice.barrier)
  // A truck that stands inside is on the other hand.
  const side = { x: near === undefined ? Math.sign(truck.x) : -Math.sign(truck.x), y: Math.sign(truck.y) }
  const edge = { x: side.x * reachOf(outline, 'x', side.x), y: side.y * reachOf(outline, 'y', side.y) }
  const out = Math.abs(edge.x) + 1
  const up = Math.min(Math.abs(edge.y) - 0.5, out < reading ? Math.sqrt(reading * reading - out * out) : 0)
  return {
    truck,
    isBoomNear: near !== undefined,
    rod,
    electrodes,
    outline,
    reading: { x: side.x * Math.min(out, reading), y: side.y * Math.max(0, up) },
    lookout: { x: edge.x + side.x * 0.5, y: side.y * 4 },
    ropeStand: awayFrom(rod),
  }
}

/** The same places about the next pole of the line, which has no stay of its own; the truck stays where it is. */
export function movedAlong(places: Layout, { barrier }: Practice, along: number): Layout {
  const moved = ({ x, y }: GroundPoint): GroundPoint => ({ x: x + along, y })
  const electrodes = [{ x: along, y: 0 }, moved(places.rod)]
  return {
    truck: places.truck,
    isBoomNear: false,
    rod: moved(places.rod),
    electrodes,
    outline: outlineAround(electrodes, barrier),
    reading: moved(places.reading),
    lookout: moved(places.lookout),
    ropeStand: moved(places.ropeStand),
  }
}

/** Legs of the pole and the anchor of its stay. */
function electrodesOf({ scenario: { pole, stay } }: Site): readonly GroundPoint[] {
  return [{ x: 0, y: 0 }, ...(pole.secondLeg ? [pole.secondLeg.at] : []), ...(stay ? [stay.anchor] : [])]
}

/** A rectangle that keeps this distance from each of the points. */
export function outlineAround(points: readonly GroundPoint[], metres: number): readonly GroundPoint[] {
  const [xs, ys] = [points.map((it) => it.x), points.map((it) => it.y)]
  const [west, east] = [Math.min(...xs) - metres, Math.max(...xs) + metres]
  const [south, north] = [Math.min(...ys) - metres, Math.max(...ys) + metres]
  return [
    { x: west, y: south },
    { x: east, y: south },
    { x: east, y: north },
    { x: west, y: north },
  ]
}

function reachOf(outline: readonly GroundPoint[], axis: 'x' | 'y', sign: number): number {
  return Math.max(...outline.map((corner) => sign * corner[axis]))
}

const mirrored = ({ x, y }: GroundPoint): readonly GroundPoint[] => [
  { x, y },
  { x, y: -y },
  { x: -x, y },
  { x: -x, y: -y },
]

/** The lead between truck and rod is about so long, metres (common practice, no source). */
const bondReach = 10

/** Where plans and locator find nothing; on the far side from the truck rather than on the near one. */
function findRodPlace(
  site: Site,
  { rodAway }: Practice,
  truck: GroundPoint,
  isTruckBonded: boolean,
): GroundPoint | undefined {
  const far = Math.max(1, (rodAway + 0.1) / distance(rodPlace, { x: 0, y: 0 }))
  const wanted = [1, 0.9, 1.2, 1.4].flatMap((share) =>
    farthestFirst(truck, mirrored({ x: rodPlace.x * far * share, y: rodPlace.y * far * share })),
  )
  const inWay = [...electrodesOf(site).slice(1), ...placeSheet(site.scenario).grounds.flatMap((it) => it.points)]
  return wanted.find(
    (at) =>
      distance(at, { x: 0, y: 0 }) >= rodAway &&
      (!isTruckBonded || distance(at, truck) <= bondReach) &&
      inWay.every((it) => distance(at, it) >= rodRoom) &&
      !isGroundTaken(site, at),
  )
}

/** Where the crew came by, well off whatever lets current into the ground. */
function findTruckPlace(site: Site, { truckAway }: Practice): GroundPoint {
  const share = Math.max(1, (truckAway + 0.1) / distance(truckPlace, { x: 0, y: 0 }))
  const places = farthestFirst(site.truck, mirrored({ x: truckPlace.x * share, y: truckPlace.y * share })).toReversed()
  const isClear = (at: GroundPoint): boolean => electrodesOf(site).every((it) => distance(at, it) >= truckAway)
  return places.find((at) => isClear(at) && !isTruckPlaceTaken(site, at)) ?? truckPlace
}

/** Off the road and beside the line, so near that the boom gets to the pole with room to spare; mirrored until it fits. */
const boomPlaces = [7, 7.5, 8, 6.5].flatMap((out) => [
  { x: -out, y: 3 },
  { x: -out, y: 5 },
])

function findBoomPlace(site: Site, { knowsBucket, boomTruckAway }: Practice): GroundPoint | undefined {
  if (!knowsBucket || site.scenario.truck?.boom === undefined) return undefined
  const places = boomPlaces.flatMap((it) => farthestFirst(site.truck, mirrored(it)).toReversed())
  const isClear = (at: GroundPoint): boolean =>
    [at, ...padsAt(site, at)].every((pad) => electrodesOf(site).every((it) => distance(pad, it) >= boomTruckAway))
  return places.find((at) => isClear(at) && !isTruckPlaceTaken(site, at))
}

const padsAt = ({ scenario: { truck } }: Site, at: GroundPoint): readonly GroundPoint[] =>
  (truck?.outriggers ?? []).map(({ x, y }) => ({ x: at.x + x, y: at.y + y }))

const farthestFirst = (from: GroundPoint, places: readonly GroundPoint[]): readonly GroundPoint[] =>
  [...places].sort((a, b) => distance(b, from) - distance(a, from))

const awayFrom = (rod: GroundPoint): GroundPoint => farthestFirst(rod, mirrored(ropePlace))[0]!
