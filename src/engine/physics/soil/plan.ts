/** Electrodes as somebody sees them who walks over the ground: where they are, how far away, the way round them. Metre. */
import { cos, PI, sin } from '../../math/portable'
import { shapesOf, sidesOf, type Electrode, type Shape } from './electrode'
import { distanceInPlan } from './gap'
import { distanceBetween, type GroundPoint } from './soil'

/** The middle of all its points, weighing each shape alike. */
export function middleOf(electrode: Electrode): GroundPoint {
  const points = shapesOf(electrode).map((shape) => (shape.kind === 'wire' ? meanOf(shape.points) : shape.at))
  return meanOf(points)
}

function meanOf(points: readonly GroundPoint[]): GroundPoint {
  const [first] = points
  if (points.length === 1 && first) return { x: first.x, y: first.y }
  return {
    x: points.reduce((sum, it) => sum + it.x, 0) / points.length,
    y: points.reduce((sum, it) => sum + it.y, 0) / points.length,
  }
}

/** Corners of its plan, radii included. */
export function outerPlaces(electrode: Electrode): readonly GroundPoint[] {
  return shapesOf(electrode).flatMap((shape) => {
    const { radius } = shape
    return (shape.kind === 'wire' ? shape.points : [shape.at]).flatMap(({ x, y }) => [
      { x: x - radius, y: y - radius },
      { x: x + radius, y: y + radius },
    ])
  })
}

/** From a place to the nearest of its metal or concrete, over the ground; negative on or above it. */
export function distanceToElectrode(electrode: Electrode, at: GroundPoint): number {
  let least = Infinity
  for (const shape of shapesOf(electrode)) least = Math.min(least, distanceInPlan(shape, at))
  return least
}

/** Some of it comes up to the surface: a foot can stand on it. */
export function isAtSurface(electrode: Electrode): boolean {
  return shapesOf(electrode).some((shape) => {
    if (shape.kind === 'disc') return (shape.depth ?? 0) === 0
    return shape.kind === 'wire' ? shape.points.some(({ depth }) => depth <= shape.radius) : shape.top === 0
  })
}

/** The way round it at a distance from its surface, places at most `step` apart; nothing of it is nearer to any of them. */
export function wayRound(electrode: Electrode, away: number, step: number): readonly GroundPoint[] {
  const around = shapesOf(electrode).flatMap((shape) => roundShape(shape, away + shape.radius, step))
  return around.filter((at) => distanceToElectrode(electrode, at) >= away - 1e-6)
}

function roundShape(shape: Shape, radius: number, step: number): readonly GroundPoint[] {
  if (shape.kind !== 'wire') return ring(shape.at, radius, step)
  const corners = shape.points.flatMap((point) => ring(point, radius, step))
  return [...corners, ...sidesOf(shape).flatMap(([from, to]) => besideLine(from, to, radius, step))]
}

function ring(centre: GroundPoint, radius: number, step: number): readonly GroundPoint[] {
  const count = Math.ceil((2 * PI * radius) / step)
  return Array.from({ length: count }, (_, i) => {
    const turn = (2 * PI * i) / count
    return { x: centre.x + radius * cos(turn), y: centre.y + radius * sin(turn) }
  })
}

function besideLine(from: GroundPoint, to: GroundPoint, away: number, step: number): readonly GroundPoint[] {
  const length = distanceBetween(from, to)
  if (length === 0) return []
  const count = Math.ceil(length / step)
  const across = { x: (-away * (to.y - from.y)) / length, y: (away * (to.x - from.x)) / length }
  return Array.from({ length: count + 1 }, (_, k) => k / count).flatMap((share) => {
    const x = from.x + share * (to.x - from.x)
    const y = from.y + share * (to.y - from.y)
    return [
      { x: x + across.x, y: y + across.y },
      { x: x - across.x, y: y - across.y },
    ]
  })
}

/** Directions round one place; between two of them a circle is missed by a thousandth of its radius. */
const DIRECTIONS = 72

/** Straight ways out from all of it: every way from an upright, from its ends and to both sides along a wire. */
export function raysFrom(electrode: Electrode): readonly { readonly from: GroundPoint; readonly along: GroundPoint }[] {
  return shapesOf(electrode).flatMap((shape) => {
    if (shape.kind !== 'wire') return everyWay(shape.at)
    const sideways = sidesOf(shape).flatMap(([from, to]) => {
      const axis = besideLine(from, to, 0, 0.5)
      const length = distanceBetween(from, to)
      const across = { x: -(to.y - from.y) / length, y: (to.x - from.x) / length }
      const back = { x: -across.x, y: -across.y }
      return axis.map((at, i) => ({ from: at, along: i % 2 === 0 ? across : back }))
    })
    return [...shape.points.flatMap(everyWay), ...sideways]
  })
}

function everyWay({ x, y }: GroundPoint): { from: GroundPoint; along: GroundPoint }[] {
  return Array.from({ length: DIRECTIONS }, (_, i) => {
    const turn = (2 * PI * i) / DIRECTIONS
    return { from: { x, y }, along: { x: cos(turn), y: sin(turn) } }
  })
}
