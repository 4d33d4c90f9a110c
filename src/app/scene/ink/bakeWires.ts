/**
 * Tubes whose radius the vertex shader decides (the real one, or a least number of pixels): the position is the centre
 * line, the normal is the way out.
 */
import { BufferAttribute, BufferGeometry, Vector3 } from 'three'
import { dashDensity } from '../../stores/flows'
import { slotIndex } from './palette'
import type { Flow, Wire } from './part'
import { tagOf } from './tag'

interface Strand {
  readonly points: readonly Vector3[]
  readonly radius: number
  readonly sides: number
  readonly tag: readonly [number, number, number]
}

interface Buffers {
  readonly position: Float32Array
  readonly normal: Float32Array
  readonly tube: Float32Array
  readonly tag: Float32Array
  readonly index: Uint32Array
}

export const bakeWires = (wires: readonly Wire[]): BufferGeometry =>
  bakeStrands(
    wires.map(({ points, radius, sides, slot, id, minPx }) => ({
      points,
      radius,
      sides,
      tag: [slotIndex[slot], tagOf(id), minPx],
    })),
  )

/** The tag holds the density of dashes, 0 to 1, and the least width in pixels. */
export const bakeFlows = (flows: readonly Flow[], most: number): BufferGeometry =>
  bakeStrands(
    flows
      .filter((flow) => flow.amperes > 0 && flow.points.length > 1)
      .map(({ points, radius, amperes }) => ({ points, radius, sides: 6, tag: [dashDensity(amperes, most), 0, 3.6] })),
  )

function bakeStrands(strands: readonly Strand[]): BufferGeometry {
  const vertices = strands.reduce((sum, { points, sides }) => sum + points.length * sides, 0)
  const indices = strands.reduce((sum, { points, sides }) => sum + (points.length - 1) * sides * 6, 0)
  const buffers: Buffers = {
    position: new Float32Array(vertices * 3),
    normal: new Float32Array(vertices * 3),
    tube: new Float32Array(vertices * 2),
    tag: new Float32Array(vertices * 3),
    index: new Uint32Array(indices),
  }
  let vertex = 0
  let index = 0
  for (const strand of strands) {
    writeRings(strand, vertex, buffers)
    index = writeFaces(strand, vertex, index, buffers)
    vertex += strand.points.length * strand.sides
  }
  const geometry = new BufferGeometry()
  geometry.setAttribute('position', new BufferAttribute(buffers.position, 3))
  geometry.setAttribute('normal', new BufferAttribute(buffers.normal, 3))
  geometry.setAttribute('tube', new BufferAttribute(buffers.tube, 2))
  geometry.setAttribute('tag', new BufferAttribute(buffers.tag, 3))
  geometry.setIndex(new BufferAttribute(buffers.index, 1))
  geometry.computeBoundingSphere()
  return geometry
}

/** The frame is carried along the strand, so that it does not twist. */
function writeRings({ points, radius, sides, tag }: Strand, base: number, out: Buffers): void {
  const along = new Vector3()
  const side = new Vector3()
  const up = new Vector3()
  let arc = 0
  let vertex = base
  points.forEach((point, k) => {
    if (k > 0) arc += point.distanceTo(points[k - 1]!)
    along.subVectors(points[Math.min(k + 1, points.length - 1)]!, points[Math.max(k - 1, 0)]!).normalize()
    if (side.lengthSq() === 0) side.crossVectors(along, Math.abs(along.y) > 0.9 ? up.set(1, 0, 0) : up.set(0, 1, 0))
    side.addScaledVector(along, -side.dot(along)).normalize()
    up.crossVectors(side, along)
    for (let s = 0; s < sides; s++) {
      const angle = (s / sides) * Math.PI * 2
      point.toArray(out.position, vertex * 3)
      for (let axis = 0; axis < 3; axis++)
        out.normal[vertex * 3 + axis] =
          side.getComponent(axis) * Math.cos(angle) + up.getComponent(axis) * Math.sin(angle)
      out.tube.set([radius, arc], vertex * 2)
      out.tag.set(tag, vertex * 3)
      vertex++
    }
  })
}

function writeFaces({ points, sides }: Strand, base: number, start: number, out: Buffers): number {
  let index = start
  for (let k = 0; k < points.length - 1; k++)
    for (let s = 0; s < sides; s++) {
      const a = base + k * sides + s
      const b = base + k * sides + ((s + 1) % sides)
      out.index.set([a, a + sides, b, b, a + sides, b + sides], index)
      index += 6
    }
  return index
}
