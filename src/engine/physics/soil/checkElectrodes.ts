/** Which electrodes cannot be: sizes, depths, one inside the other. */
import { invariant } from '../../units/invariant'
import { shapesOf, sidesOf, type Electrode, type Shape, type Wire } from './electrode'
import { gapBetween } from './gap'
import { distanceBetween } from './soil'

/** Throws on sizes that are not positive, on depths above the ground and on electrodes inside each other. */
export function checkElectrodes(electrodes: readonly Electrode[]): void {
  const ids = new Set<string>()
  electrodes.forEach((electrode, i) => {
    invariant(!ids.has(electrode.id), 'each electrode id once', electrode.id)
    ids.add(electrode.id)
    const shapes = shapesOf(electrode)
    invariant(shapes.length > 0, `a part of ${electrode.id}`, shapes.length)
    for (const shape of shapes) checkShape(electrode.id, shape)
    checkParts(electrode.id, shapes)
    for (const other of electrodes.slice(0, i)) {
      const gap = leastGap(shapes, shapesOf(other))
      invariant(gap > 0, `a gap between ${other.id} and ${electrode.id}`, gap)
    }
  })
}

function leastGap(ours: readonly Shape[], theirs: readonly Shape[]): number {
  return Math.min(...ours.flatMap((a) => theirs.map((b) => gapBetween(a, b))))
}

/** Parts of one electrode may touch; two rods on one axis, or two discs on one spot, are one rod or disc. */
function checkParts(id: string, shapes: readonly Shape[]): void {
  shapes.forEach((a, i) => {
    for (const b of shapes.slice(0, i)) {
      if (a.kind !== b.kind || a.kind === 'wire' || b.kind === 'wire') continue
      const apart = distanceBetween(a.at, b.at)
      invariant(apart > Math.max(a.radius, b.radius), `parts of ${id} apart from each other`, apart)
    }
  })
}

function checkShape(id: string, shape: Shape): void {
  const { radius } = shape
  invariant(radius > 0 && Number.isFinite(radius), `a radius above 0 for ${id}`, radius)
  if (shape.kind === 'wire') return checkWire(id, shape)
  const { at } = shape
  invariant(Number.isFinite(at.x) && Number.isFinite(at.y), `a place for ${id}`, at.x, at.y)
  const top = shape.kind === 'disc' ? (shape.depth ?? 0) : shape.top
  invariant(top >= 0 && Number.isFinite(top), `a top at or below the surface for ${id}`, top)
  if (shape.kind === 'disc') return
  const isLongEnough = shape.length >= 2 * radius && Number.isFinite(shape.length)
  invariant(isLongEnough, `a length of two radii or more for ${id}`, shape.length)
  if (shape.kind !== 'encased') return
  const isInside = shape.coreRadius > 0 && shape.coreRadius < radius
  invariant(isInside, `a core inside the concrete of ${id}`, shape.coreRadius)
  invariant(shape.encasementResistivity > 0, `a concrete resistivity above 0 for ${id}`, shape.encasementResistivity)
}

function checkWire(id: string, wire: Omit<Wire, 'id'>): void {
  const least = wire.isClosed === true ? 3 : 2
  invariant(wire.points.length >= least, `${least} points or more of ${id}`, wire.points.length)
  for (const { x, y, depth } of wire.points) {
    invariant(Number.isFinite(x) && Number.isFinite(y), `a place for ${id}`, x, y)
    invariant(depth >= 0 && Number.isFinite(depth), `a depth at or below the surface for ${id}`, depth)
  }
  for (const [from, to] of sidesOf(wire)) {
    const rise = to.depth - from.depth
    const apart = distanceBetween(from, to)
    const length = Math.sqrt(apart * apart + rise * rise)
    invariant(length >= 2 * wire.radius, `sides of two radii or more for ${id}`, length)
    // half in the air, half in the soil: the thin wire along its axis knows no such thing
    const isLaidOnGround = Math.max(from.depth, to.depth) < wire.radius
    invariant(!isLaidOnGround, `${id} buried by its radius or more`, from.depth, to.depth)
  }
}
