/**
 * What is being set, in blue pencil until it is ordered: where the pointer stands, a rod as deep as it will go, an outline,
 * a cover's extent, the ways a lead can take, a tape between two things.
 */
import type { Vector3 } from 'three'
import type { Handled } from '../../stores/handling'
import { at, cylinder, vector } from '../geometry/shapes'
import type { Way } from '../grips/ways'
import { type Built, built, join, type Part, part, type Wire, wire } from '../ink/part'
import type { Draft } from '../sceneInput'
import { type Layout, radiusAt, toScene } from './layout'

export interface Drafted {
  readonly draft: Draft | null
  readonly handled: Handled | null
  readonly ways: readonly Way[]
}

export function draftView(layout: Layout, { draft, handled, ways }: Drafted): Built {
  return join(pointerView(draft), handled ? handledView(layout, handled, ways) : nothing)
}

const nothing = built([])

function pointerView(draft: Draft | null): Built {
  if (!draft) return nothing
  return join(
    draft.rod ? built([], [...spotMark(toScene(draft.rod, 0.02)), upTo(toScene(draft.rod, 0.02), 1.1)]) : nothing,
    outlineView(draft.outline ?? []),
  )
}

function handledView(layout: Layout, handled: Handled, ways: readonly Way[]): Built {
  switch (handled.kind) {
    case 'spot': {
      if (!handled.at) return nothing
      const foot = toScene(handled.at, 0.02)
      const { rod } = handled
      if (!rod) return built([], [...spotMark(foot), upTo(foot, 1.1)])
      const top = Math.max(0.03, rod.length - (rod.depth.value ?? 0))
      const shaft = cylinder(0.02, 0.02, top, 10)
      return built([part(at(shaft, [foot.x, top / 2, foot.z]), 'pencil', '', 0.2)], spotMark(foot))
    }
    case 'outline':
      return outlineView(handled.points)
    case 'extent':
      return extentView(layout, handled.from.value, handled.to.value)
    case 'ways':
      return built(
        [],
        ways.map(({ points }) => pencil(points)),
      )
    case 'turns':
      return nothing
  }
}

const spotMark = (place: Vector3): readonly Wire[] => [circle(place, 0.35), ...cross(place, 0.5)]
const upTo = (place: Vector3, height: number): Wire => pencil([place, place.clone().setY(height)])

function outlineView(outline: NonNullable<Draft['outline']>): Built {
  const parts: Part[] = []
  const wires: Wire[] = []
  const corners = outline.map((point) => toScene(point, 0.03))
  corners.forEach((corner, i) => {
    parts.push(part(at(cylinder(0.06, 0.06, 0.9, 10), [corner.x, 0.45, corner.z]), 'pencil', '', 0.2))
    if (corners.length > 1) wires.push(pencil([corner, corners[(i + 1) % corners.length]!]))
  })
  return built(parts, wires)
}

/** Rings round the pole at the edges that are set, and uprights between them. */
function extentView(layout: Layout, from: number | null, to: number | null): Built {
  const around = (height: number): Wire => circle(vector(0, height, 0), radiusAt(layout, height) + 0.05)
  const edges = [from, to].flatMap((edge) => (edge === null ? [] : [around(edge)]))
  if (from === null || to === null) return built([], edges)
  const uprights = Array.from({ length: 8 }, (_, i) => {
    const [dx, dz] = [Math.cos((i * Math.PI) / 4), Math.sin((i * Math.PI) / 4)]
    const on = (height: number): Vector3 => {
      const radius = radiusAt(layout, height) + 0.05
      return vector(dx * radius, height, dz * radius)
    }
    return pencil([on(from), on(to)])
  })
  return built([], [...edges, ...uprights])
}

const pencil = (points: readonly Vector3[]): Wire => wire(points, 0.012, 'pencil', '', 2.6, 5)

const circle = ({ x, y, z }: Vector3, radius: number): Wire =>
  pencil(
    Array.from({ length: 33 }, (_, i) =>
      vector(x + Math.cos((i * Math.PI) / 16) * radius, y, z + Math.sin((i * Math.PI) / 16) * radius),
    ),
  )

const cross = ({ x, y, z }: Vector3, arm: number): readonly Wire[] => [
  pencil([vector(x - arm, y, z), vector(x + arm, y, z)]),
  pencil([vector(x, y, z - arm), vector(x, y, z + arm)]),
]
