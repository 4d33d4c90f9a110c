/** The shaft of a pole by what it is made of: concrete with mould seams and wear, wood with grain and checks, a steel tube on its flange. */
import type { BufferGeometry } from 'three'
import { at, box, cylinder, indexed, lathe, ring, vector } from '../geometry/shapes'
import type { Slot } from '../ink/palette'
import { type Built, built, type Part, part, type Wire, wire } from '../ink/part'
import { type Layout, radiusAt } from '../site/layout'

interface Foot {
  readonly across: number
  readonly along: number
}

/** @param isNear what only shows beside it: seams, grain, bolt holes */
export function shaftView(layout: Layout, foot: Foot, id: string, isNear: boolean): Built {
  const { kind } = layout.pole
  const made = kind === 'wood' ? wood : kind === 'steel' ? steel : concrete
  const { parts, wires, hits } = made(layout, id, isNear)
  for (const { geometry } of parts) geometry.translate(foot.across, 0, foot.along)
  const moved = wires.map((it) => ({
    ...it,
    points: it.points.map((point) => point.clone().add(vector(foot.across, 0, foot.along))),
  }))
  return { parts, wires: moved, hits }
}

const tube = (layout: Layout, slot: Slot, id: string, sides: number, crease = 38): Part => {
  const { top } = layout.pole
  const shape = cylinder(radiusAt(layout, top), radiusAt(layout, -0.1), top + 0.1, sides)
  return part(at(shape, [0, (top - 0.1) / 2, 0]), slot, id, 0.3, crease)
}

const band = (layout: Layout, height: number, id: string, tall = 0.012, slot: Slot = 'steel'): Part => {
  const radius = radiusAt(layout, height) + 0.003
  return part(at(cylinder(radius, radius, tall, 18), [0, height, 0]), slot, id, 0.05)
}

const holesBelow = [0.55, 1.1, 1.9, 2.4]

function concrete(layout: Layout, id: string, isNear: boolean): Built {
  const shaft = tube(layout, 'concrete', id, isNear ? 22 : 12)
  if (!isNear) return built([shaft])
  const { top } = layout.pole
  const holes = holesBelow.map((below) => {
    const height = top - below
    const through = cylinder(0.011, 0.011, 2 * radiusAt(layout, height) + 0.008, 8)
    return part(at(through, [0, height, 0], [Math.PI / 2, 0, 0]), 'ink', id, 0.03)
  })
  // Rust runs down from each hole; the foot is dark from splashed earth; air holes of the mould.
  const runs = holesBelow.flatMap((below, i) =>
    [Math.PI / 2, -Math.PI / 2].map((angle) =>
      patch(layout, top - below - 0.16 - 0.05 * (i % 2), angle + 0.03, 0.022, 0.3 + 0.1 * (i % 3), 'wear', id),
    ),
  )
  const splash = [0, 1, 2, 3, 4, 5, 6].map((k) =>
    patch(layout, 0.12 + 0.05 * (k % 3), k * 0.9, 0.16, 0.22 + 0.08 * (k % 2), 'wear', id),
  )
  const chips = [
    [1.55, -1.2, 0.05],
    [3.4, -2.3, 0.035],
    [5.85, -0.9, 0.04],
    [6.4, -2.6, 0.03],
    [2.75, 0.6, 0.05],
  ].map(([height, angle, size]) => patch(layout, height!, angle!, size!, size! * 0.7, 'wear', id))
  const seam = (angle: number): Wire => wire(upright(layout, angle, 0.002, top - 0.02, 12), 0.0015, 'wear', id, 0.5, 4)
  return built(
    [shaft, band(layout, 1.2, id), ...holes, ...runs, ...splash, ...chips, ...terminal(layout, id)],
    [seam(-0.7), seam(-0.7 + Math.PI)],
  )
}

/** A welded terminal of the earth that is cast in: boss, bolt, and its plate. */
function terminal(layout: Layout, id: string): readonly Part[] {
  const height = layout.place.earthTerminal
  if (height === null) return []
  const out = -(radiusAt(layout, height) + 0.012)
  return [
    part(at(cylinder(0.032, 0.032, 0.03, 14), [0, height, out], [Math.PI / 2, 0, 0]), 'copper', id, 0.04),
    part(at(cylinder(0.012, 0.012, 0.045, 6), [0, height, out - 0.02], [Math.PI / 2, 0, 0]), 'steel', id, 0.03),
  ]
}

/** Checks (drying cracks) run with the grain; a sheet of metal keeps the rain off the top. */
function wood(layout: Layout, id: string, isNear: boolean): Built {
  const { top } = layout.pole
  const shaft = tube(layout, 'wood', id, isNear ? 20 : 12)
  if (!isNear) return built([shaft])
  const grain = Array.from({ length: 22 }, (_, k) => {
    const angle = k * 2.399
    const from = ((k * 0.618) % 1) * (top - 1.6)
    const length = 0.9 + ((k * 0.37) % 1) * 3.4
    return wire(upright(layout, angle, from, Math.min(top - 0.05, from + length), 9), 0.0012, 'grain', id, 0.85, 4)
  })
  const checks = [
    [-2.1, 4.6, 6.3],
    [-0.8, 1.1, 3.3],
    [1.4, 2.4, 5.2],
    [-1.6, 0.1, 0.9],
  ].map(([angle, from, to]) => wire(upright(layout, angle!, from!, Math.min(to!, top), 10), 0.004, 'ink', id, 0.9, 5))
  const knots = [
    [1.9, -2.4],
    [3.05, -1.1],
    [4.3, -2.0],
    [5.7, -1.35],
    [6.6, 0.5],
  ].map(([height, angle]) => patch(layout, height!, angle!, 0.05, 0.075, 'grain', id))
  const radius = radiusAt(layout, top)
  const cap = at(
    lathe(
      [
        [radius + 0.012, -0.05],
        [radius + 0.012, 0.006],
        [0, 0.03],
      ],
      18,
    ),
    [0, top, 0],
  )
  const soaked = at(cylinder(radiusAt(layout, 0.45) + 0.002, radiusAt(layout, 0) + 0.002, 0.45, 18), [0, 0.2, 0])
  return built(
    [shaft, part(cap, 'steel', id, 0.05), part(soaked, 'grain', id, 0.3, 60), band(layout, 1.2, id), ...knots],
    [...grain, ...checks],
  )
}

/** A folded tube: eight faces, a seam at each joint of its two lengths, a flange bolted to the footing. */
function steel(layout: Layout, id: string, isNear: boolean): Built {
  const { top } = layout.pole
  const shaft = tube(layout, 'steel', id, 8, 30)
  if (!isNear) return built([shaft])
  const radius = radiusAt(layout, 0)
  const bolts = [0, 1, 2, 3, 4, 5].map((k) => {
    const angle = (k * Math.PI) / 3
    const place = [Math.cos(angle) * (radius + 0.075), 0.115, Math.sin(angle) * (radius + 0.075)] as const
    return part(at(cylinder(0.018, 0.018, 0.06, 6), place), 'steel', id, 0.04)
  })
  const joint = top * 0.48
  return built([
    shaft,
    part(
      at(cylinder(radiusAt(layout, joint) + 0.006, radiusAt(layout, joint - 0.5) + 0.008, 0.5, 8), [
        0,
        joint - 0.25,
        0,
      ]),
      'steel',
      id,
      0.12,
      30,
    ),
    part(at(cylinder(radius + 0.13, radius + 0.13, 0.03, 24), [0, 0.085, 0]), 'steel', id, 0.08),
    part(at(box(0.85, 0.07, 0.85), [0, 0.035, 0]), 'concrete', id, 0.2),
    part(at(ring(radius + 0.01, 0.012, 16), [0, 0.105, 0], [Math.PI / 2, 0, 0]), 'steel', id, 0.04),
    ...bolts,
  ])
}

/** A line up the shaft, with the slight drift of grain. */
const upright = (layout: Layout, angle: number, from: number, to: number, pieces: number) =>
  Array.from({ length: pieces + 1 }, (_, k) => {
    const height = from + ((to - from) * k) / pieces
    const turn = angle + 0.04 * Math.sin(height * 2.1 + angle * 5)
    const radius = radiusAt(layout, height) + 0.0005
    return vector(Math.cos(turn) * radius, height, Math.sin(turn) * radius)
  })

/** A stain on the shaft: a lens that hugs it, so that only its own colour shows and no thickness. */
function patch(
  layout: Layout,
  height: number,
  angle: number,
  wide: number,
  tall: number,
  slot: Slot,
  id: string,
): Part {
  const position: number[] = []
  const index: number[] = []
  const put = (up: number, aside: number): void => {
    const h = height + (up * tall) / 2
    const radius = radiusAt(layout, h) + 0.0015
    const turn = angle + (aside * wide) / 2 / radius
    position.push(Math.cos(turn) * radius, h, Math.sin(turn) * radius)
  }
  put(0, 0)
  const count = 9
  for (let k = 0; k < count; k++) {
    const turn = (k / count) * Math.PI * 2
    const uneven = 1 - 0.18 * ((k * 7) % 3)
    put(Math.sin(turn) * uneven, Math.cos(turn) * uneven)
    index.push(0, 1 + ((k + 1) % count), 1 + k)
  }
  const geometry: BufferGeometry = indexed(position, index.reverse())
  return part(geometry, slot, id, 0.02, 180)
}
