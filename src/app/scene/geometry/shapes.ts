/** Plain solids in scene metres, ready to be baked. Rings are wound so that the outside faces out; a black part is a flipped ring. */
import {
  BoxGeometry,
  BufferAttribute,
  BufferGeometry,
  CylinderGeometry,
  Euler,
  LatheGeometry,
  Matrix4,
  Quaternion,
  ShapeUtils,
  SphereGeometry,
  TorusGeometry,
  Vector2,
  Vector3,
} from 'three'

export type Triple = readonly [number, number, number]

export const vector = (x: number, y: number, z: number): Vector3 => new Vector3(x, y, z)
export const upward = vector(0, 1, 0)

/** Moves, turns (Euler XYZ) and scales in place. */
export function at(
  geometry: BufferGeometry,
  place: Triple,
  turn: Triple = [0, 0, 0],
  scale: Triple = [1, 1, 1],
): BufferGeometry {
  const rotation = new Quaternion().setFromEuler(new Euler(...turn))
  return geometry.applyMatrix4(new Matrix4().compose(vector(...place), rotation, vector(...scale)))
}

export const box = (width: number, height: number, depth: number): BufferGeometry =>
  new BoxGeometry(width, height, depth)
export const cylinder = (top: number, bottom: number, height: number, sides = 14): BufferGeometry =>
  new CylinderGeometry(top, bottom, height, sides)
export const ball = (radius: number, sides = 14): BufferGeometry =>
  new SphereGeometry(radius, sides, Math.max(6, Math.round(sides * 0.7)))
export const ring = (radius: number, thickness: number, sides = 20): BufferGeometry =>
  new TorusGeometry(radius, thickness, 6, sides)
export const lathe = (profile: readonly (readonly [number, number])[], sides = 18): BufferGeometry =>
  new LatheGeometry(
    profile.map(([radius, y]) => new Vector2(Math.max(radius, 1e-4), y)),
    sides,
  )

/** A cylinder or cone from a to b. */
export function strut(a: Vector3, b: Vector3, radiusA: number, radiusB = radiusA, sides = 12): BufferGeometry {
  const along = new Vector3().subVectors(b, a)
  const geometry = new CylinderGeometry(radiusB, radiusA, along.length(), sides)
  const middle = a.clone().addScaledVector(along, 0.5)
  const turn = new Quaternion().setFromUnitVectors(upward, along.normalize())
  return geometry.applyMatrix4(new Matrix4().compose(middle, turn, vector(1, 1, 1)))
}

/** A flat bar from a to b, so wide across `wide`, so thick. */
export function bar(
  a: Vector3,
  b: Vector3,
  thick: number,
  width: number,
  wide: Vector3 = vector(0, 0, 1),
): BufferGeometry {
  const y = new Vector3().subVectors(b, a)
  const length = y.length()
  y.normalize()
  const z = wide.clone().addScaledVector(y, -wide.dot(y)).normalize()
  const x = new Vector3().crossVectors(y, z)
  const place = new Matrix4().makeBasis(x, y, z).setPosition(a.clone().add(b).multiplyScalar(0.5))
  return new BoxGeometry(thick, length, width).applyMatrix4(place)
}

/** Skin over rings of equal point count, smooth around and along, closed at both ends. */
export function loft(rings: readonly (readonly Vector3[])[], isClosed = true): BufferGeometry {
  const count = rings[0]!.length
  const position: number[] = []
  const index: number[] = []
  for (const each of rings) for (const point of each) position.push(point.x, point.y, point.z)
  for (let k = 0; k < rings.length - 1; k++)
    for (let q = 0; q < count; q++) {
      const a = k * count + q
      const b = k * count + ((q + 1) % count)
      index.push(a, b, a + count, b, b + count, a + count)
    }
  if (isClosed) for (const k of [0, rings.length - 1]) closeEnd(rings[k]!, k * count, k === 0, position, index)
  return indexed(position, index)
}

function closeEnd(
  points: readonly Vector3[],
  base: number,
  isFirst: boolean,
  position: number[],
  index: number[],
): void {
  const centre = position.length / 3
  const middle = points.reduce((sum, point) => sum.add(point), new Vector3()).divideScalar(points.length)
  position.push(middle.x, middle.y, middle.z)
  points.forEach((_, q) => {
    const a = base + q
    const b = base + ((q + 1) % points.length)
    index.push(centre, ...(isFirst ? [b, a] : [a, b]))
  })
}

export function indexed(position: readonly number[], index: number[]): BufferGeometry {
  const geometry = new BufferGeometry()
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(position), 3))
  geometry.setIndex(index)
  geometry.computeVertexNormals()
  return geometry
}

function loose(position: readonly number[]): BufferGeometry {
  const geometry = new BufferGeometry()
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(position), 3))
  geometry.computeVertexNormals()
  return geometry
}

/** A ring of points in the plane of x and y, for `loft`. */
export function ellipse(
  centre: Vector3,
  x: Vector3,
  y: Vector3,
  radiusX: number,
  radiusY: number,
  count = 14,
): Vector3[] {
  return Array.from({ length: count }, (_, i) => {
    const angle = (i / count) * Math.PI * 2
    return centre
      .clone()
      .addScaledVector(x, Math.cos(angle) * radiusX)
      .addScaledVector(y, Math.sin(angle) * radiusY)
  })
}

/** An outline in x and z, counter-clockwise seen from above, from height y0 to y1; hard edges. Convex. */
export function prism(outline: readonly (readonly [number, number])[], y0: number, y1: number): BufferGeometry {
  const position: number[] = []
  const count = outline.length
  const cx = outline.reduce((sum, [x]) => sum + x, 0) / count
  const cz = outline.reduce((sum, [, z]) => sum + z, 0) / count
  outline.forEach(([ax, az], i) => {
    const [bx, bz] = outline[(i + 1) % count]!
    position.push(ax, y0, az, bx, y1, bz, bx, y0, bz, ax, y0, az, ax, y1, az, bx, y1, bz)
    position.push(cx, y1, cz, bx, y1, bz, ax, y1, az, cx, y0, cz, ax, y0, az, bx, y0, bz)
  })
  return loose(position)
}

/** A flat outline in x and downward y, so deep along z; hard edges. It may be hollow on one side. */
export function extrude(outline: readonly (readonly [number, number])[], depth: number): BufferGeometry {
  const points = outline.map(([x, down]) => new Vector2(x, -down))
  if (ShapeUtils.isClockWise(points)) points.reverse()
  const front = depth / 2
  const position: number[] = []
  for (const [a, b, c] of ShapeUtils.triangulateShape(points, []) as [number, number, number][]) {
    for (const k of [a, b, c]) position.push(points[k]!.x, points[k]!.y, front)
    for (const k of [a, c, b]) position.push(points[k]!.x, points[k]!.y, -front)
  }
  points.forEach((a, i) => {
    const b = points[(i + 1) % points.length]!
    position.push(
      a.x,
      a.y,
      front,
      a.x,
      a.y,
      -front,
      b.x,
      b.y,
      -front,
      a.x,
      a.y,
      front,
      b.x,
      b.y,
      -front,
      b.x,
      b.y,
      front,
    )
  })
  return loose(position)
}
