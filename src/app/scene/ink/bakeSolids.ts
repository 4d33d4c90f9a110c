/**
 * Merges parts into one geometry that carries everything the ink style needs: normal for the shading, welded normal
 * (`hull`) for the outline, metres to each crease of its own triangle (`edge`), and slot, thing and detail (`tag`).
 */
import { BufferAttribute, BufferGeometry } from 'three'
import { slotIndex } from './palette'
import type { Part } from './part'
import { tagOf } from './tag'

type Triple = [number, number, number]

interface Triangle {
  readonly corners: Triple
  readonly welds: Triple
  readonly normal: Triple
  /** Twice its area, square metres. */
  readonly area: number
}

interface Buffers {
  readonly position: Float32Array
  readonly normal: Int8Array
  readonly hull: Int8Array
  readonly edge: Float32Array
  readonly tag: Float32Array
}

/** Farther than any edge on the screen. */
const noEdge = 1e3

const triangleCount = (geometry: BufferGeometry): number =>
  (geometry.index ? geometry.index.count : geometry.getAttribute('position').count) / 3

export function bakeSolids(parts: readonly Part[]): BufferGeometry {
  const size = parts.reduce((sum, part) => sum + triangleCount(part.geometry) * 9, 0)
  const buffers: Buffers = {
    position: new Float32Array(size),
    normal: new Int8Array(size),
    hull: new Int8Array(size),
    edge: new Float32Array(size),
    tag: new Float32Array(size),
  }
  const used = parts.reduce((offset, part) => bakePart(part, offset, buffers), 0)
  const geometry = new BufferGeometry()
  geometry.setAttribute('position', new BufferAttribute(buffers.position.subarray(0, used), 3))
  geometry.setAttribute('normal', new BufferAttribute(buffers.normal.subarray(0, used), 3, true))
  geometry.setAttribute('hull', new BufferAttribute(buffers.hull.subarray(0, used), 3, true))
  geometry.setAttribute('edge', new BufferAttribute(buffers.edge.subarray(0, used), 3))
  geometry.setAttribute('tag', new BufferAttribute(buffers.tag.subarray(0, used), 3))
  geometry.computeBoundingSphere()
  return geometry
}

function bakePart(part: Part, start: number, out: Buffers): number {
  const from = part.geometry.getAttribute('position').array as Float32Array
  const normals = part.geometry.getAttribute('normal').array as Float32Array
  const { triangles, count } = weld(part.geometry, from)
  const hulls = weldedNormals(triangles, count)
  const faces = facesByEdge(triangles)
  const sharp = Math.cos((part.crease * Math.PI) / 180)
  const tag = [slotIndex[part.slot], tagOf(part.id), part.detail]
  let offset = start
  for (const triangle of triangles) {
    const heights = creaseHeights(triangle, triangles, faces, sharp, from)
    for (let corner = 0; corner < 3; corner++) {
      const vertex = triangle.corners[corner]!
      const hull = triangle.welds[corner]! * 3
      const length = Math.hypot(hulls[hull]!, hulls[hull + 1]!, hulls[hull + 2]!) || 1
      for (let axis = 0; axis < 3; axis++) {
        out.position[offset + axis] = from[vertex * 3 + axis]!
        out.normal[offset + axis] = Math.round(normals[vertex * 3 + axis]! * 127)
        out.hull[offset + axis] = Math.round((hulls[hull + axis]! / length) * 127)
        // Edge k runs from corner k to k + 1; the corner opposite is k + 2.
        const height = heights[axis]!
        out.edge[offset + axis] = height === noEdge ? noEdge : corner === (axis + 2) % 3 ? height : 0
        out.tag[offset + axis] = tag[axis]!
      }
      offset += 3
    }
  }
  return offset
}

/** Triangles with corners that stand at the same place (0.05 mm) counted as one; those without area left out. */
function weld(geometry: BufferGeometry, from: Float32Array): { triangles: readonly Triangle[]; count: number } {
  const index = geometry.index?.array
  const places = new Map<string, number>()
  const placeOf = (vertex: number): number => {
    const [x, y, z] = [from[vertex * 3]!, from[vertex * 3 + 1]!, from[vertex * 3 + 2]!]
    const key = `${Math.round(x * 2e4)},${Math.round(y * 2e4)},${Math.round(z * 2e4)}`
    const found = places.get(key)
    if (found !== undefined) return found
    places.set(key, places.size)
    return places.size - 1
  }
  const triangles: Triangle[] = []
  for (let t = 0; t < triangleCount(geometry); t++) {
    const corner = (k: number): number => (index ? index[t * 3 + k]! : t * 3 + k)
    const corners: Triple = [corner(0), corner(1), corner(2)]
    const welds: Triple = [placeOf(corners[0]), placeOf(corners[1]), placeOf(corners[2])]
    const face = faceOf(from, corners)
    if (welds[0] === welds[1] || welds[1] === welds[2] || welds[2] === welds[0] || face.area < 1e-12) continue
    triangles.push({ corners, welds, ...face })
  }
  return { triangles, count: places.size }
}

function weldedNormals(triangles: readonly Triangle[], count: number): Float32Array {
  const normals = new Float32Array(count * 3)
  for (const { welds, normal, area } of triangles)
    for (const place of welds)
      for (let axis = 0; axis < 3; axis++) normals[place * 3 + axis]! += normal[axis]! * Math.sqrt(area)
  return normals
}

const edgeKey = (a: number, b: number): number => (a < b ? a * 65536 + b : b * 65536 + a)

function facesByEdge(triangles: readonly Triangle[]): ReadonlyMap<number, number[]> {
  const faces = new Map<number, number[]>()
  triangles.forEach(({ welds }, face) => {
    for (let k = 0; k < 3; k++) {
      const key = edgeKey(welds[k]!, welds[(k + 1) % 3]!)
      const beside = faces.get(key)
      if (beside) beside.push(face)
      else faces.set(key, [face])
    }
  })
  return faces
}

/** For each edge of the triangle its height over it when the edge is a crease or open. */
function creaseHeights(
  triangle: Triangle,
  triangles: readonly Triangle[],
  faces: ReadonlyMap<number, number[]>,
  sharp: number,
  from: Float32Array,
): Triple {
  const heights: Triple = [noEdge, noEdge, noEdge]
  for (let k = 0; k < 3; k++) {
    const [first, second] = faces.get(edgeKey(triangle.welds[k]!, triangle.welds[(k + 1) % 3]!))!
    if (second !== undefined && dot(triangles[first!]!.normal, triangles[second]!.normal) > sharp) continue
    const a = triangle.corners[k]! * 3
    const b = triangle.corners[(k + 1) % 3]! * 3
    heights[k] =
      triangle.area / Math.hypot(from[a]! - from[b]!, from[a + 1]! - from[b + 1]!, from[a + 2]! - from[b + 2]!)
  }
  return heights
}

const dot = (a: Triple, b: Triple): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]

function faceOf(from: Float32Array, corners: Triple): { normal: Triple; area: number } {
  const [a, b, c] = [corners[0] * 3, corners[1] * 3, corners[2] * 3]
  const [ux, uy, uz] = [from[b]! - from[a]!, from[b + 1]! - from[a + 1]!, from[b + 2]! - from[a + 2]!]
  const [wx, wy, wz] = [from[c]! - from[a]!, from[c + 1]! - from[a + 1]!, from[c + 2]! - from[a + 2]!]
  const [x, y, z] = [uy * wz - uz * wy, uz * wx - ux * wz, ux * wy - uy * wx]
  const area = Math.hypot(x, y, z)
  return { normal: area ? [x / area, y / area, z / area] : [0, 1, 0], area }
}
