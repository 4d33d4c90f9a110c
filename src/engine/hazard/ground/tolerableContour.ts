/**
 * Where a pace is more than tolerable, as closed outlines: the voltage of a pace at the corners of a grid, marching
 * squares over its cells, each crossing then found on its edge by bisection. Outlines keep the zone on their left, so an
 * outline that runs clockwise is a hole. A zone narrower than a cell can slip between the corners.
 */
import type { GroundPoint } from '../../physics/soil'
import { paceFrom, type Surface } from './pace'

export interface Box {
  readonly from: GroundPoint
  readonly to: GroundPoint
}

/** Cells along the longer side of the box, at most, and how small one needs to be, metre. */
const MOST_CELLS = 192
const CELL = 0.25

/** Halvings of an edge: below a millimetre. */
const HALVINGS = 9

interface Corners {
  readonly columns: number
  readonly rows: number
  at(column: number, row: number): GroundPoint
  readonly volt: Float64Array
}

/** @param box around the zone: beyond it every pace counts as tolerable */
export function tolerableContour(surface: Surface, tolerable: number, box: Box): readonly (readonly GroundPoint[])[] {
  const corners = cornersOf(surface, box)
  const isOver = (column: number, row: number): boolean => {
    const isRim = column === 0 || row === 0 || column === corners.columns - 1 || row === corners.rows - 1
    return !isRim && corners.volt[row * corners.columns + column]! >= tolerable
  }
  const next = new Map<string, string>()
  const places = new Map<string, GroundPoint>()
  const cross = (edge: Edge): string => {
    const key = edge.join(' ')
    if (!places.has(key)) {
      const [column, row, way] = edge
      const from = corners.at(column, row)
      const to = way === 'along' ? corners.at(column + 1, row) : corners.at(column, row + 1)
      const isFromOver = isOver(column, row)
      places.set(key, crossingOf(surface, tolerable, isFromOver ? from : to, isFromOver ? to : from))
    }
    return key
  }
  for (let row = 0; row + 1 < corners.rows; row++) {
    for (let column = 0; column + 1 < corners.columns; column++) {
      for (const [from, to] of linesOf(column, row, isOver)) next.set(cross(from), cross(to))
    }
  }
  return ringsOf(next, places)
}

function cornersOf(surface: Surface, { from, to }: Box): Corners {
  const cell = Math.max(CELL, Math.max(to.x - from.x, to.y - from.y) / MOST_CELLS)
  const columns = Math.ceil((to.x - from.x) / cell) + 1
  const rows = Math.ceil((to.y - from.y) / cell) + 1
  const at = (column: number, row: number) => ({ x: from.x + column * cell, y: from.y + row * cell })
  const volt = new Float64Array(columns * rows)
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      volt[row * columns + column] = paceFrom(surface, at(column, row)).voltage
    }
  }
  return { columns, rows, at, volt }
}

/** Column and row of its first corner, and which way it goes from there. */
type Edge = readonly [number, number, 'along' | 'up']

/** The lines through one cell, each from edge to edge with the zone on its left. */
function linesOf(
  column: number,
  row: number,
  isOver: (column: number, row: number) => boolean,
): readonly (readonly [Edge, Edge])[] {
  const edges: readonly Edge[] = [
    [column, row, 'along'],
    [column + 1, row, 'up'],
    [column, row + 1, 'along'],
    [column, row, 'up'],
  ]
  // corners against the clock from the lower left; edge i goes from corner i to corner i + 1
  const over = [
    isOver(column, row),
    isOver(column + 1, row),
    isOver(column + 1, row + 1),
    isOver(column, row + 1),
  ] as const
  // against the clock round the cell the zone is left where a line starts, and entered again where it ends
  const leaving = edges.filter((_, i) => over[i]! && !over[(i + 1) % 4]!)
  const entering = edges.filter((_, i) => !over[i]! && over[(i + 1) % 4]!)
  if (leaving.length === 0) return []
  if (leaving.length === 1) return [[leaving[0]!, entering[0]!]]
  // two opposite corners: cut apart, each line goes round its own corner
  return leaving.map((edge) => [edge, edges[(edges.indexOf(edge) + 3) % 4]!] as const)
}

function crossingOf(surface: Surface, tolerable: number, over: GroundPoint, below: GroundPoint): GroundPoint {
  let inner = over
  let outer = below
  for (let k = 0; k < HALVINGS; k++) {
    const middle = { x: 0.5 * (inner.x + outer.x), y: 0.5 * (inner.y + outer.y) }
    if (paceFrom(surface, middle).voltage >= tolerable) inner = middle
    else outer = middle
  }
  return inner
}

function ringsOf(next: Map<string, string>, places: ReadonlyMap<string, GroundPoint>): GroundPoint[][] {
  const rings: GroundPoint[][] = []
  for (const start of [...next.keys()]) {
    const ring: GroundPoint[] = []
    for (let key: string | undefined = start; key !== undefined; ) {
      const following = next.get(key)
      if (following === undefined) break
      ring.push(places.get(key)!)
      next.delete(key)
      key = following
    }
    if (ring.length > 2) rings.push(ring)
  }
  return rings
}
