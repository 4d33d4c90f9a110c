/** What is being placed on the ground, in blue pencil: a rod's ring with its cross, a barrier's outline with its corners. */
import type { Vector3 } from 'three'
import { at, cylinder, vector } from '../geometry/shapes'
import { type Built, built, type Part, part, type Wire, wire } from '../ink/part'
import type { Draft } from '../sceneInput'
import { toScene } from './layout'

export function draftView({ rod, outline }: Draft): Built {
  const parts: Part[] = []
  const wires: Wire[] = []
  if (rod) {
    const place = toScene(rod, 0.02)
    wires.push(circle(place, 0.35), ...cross(place, 0.5), pencil([place, place.clone().setY(1.1)]))
  }
  const corners = (outline ?? []).map((point) => toScene(point, 0.03))
  corners.forEach((corner, i) => {
    parts.push(part(at(cylinder(0.06, 0.06, 0.9, 10), [corner.x, 0.45, corner.z]), 'pencil', '', 0.2))
    if (corners.length > 1) wires.push(pencil([corner, corners[(i + 1) % corners.length]!]))
  })
  return built(parts, wires)
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
