/**
 * Electrodes cut into pieces of even leakage: rods and wires into segments that never cross the boundary and never get
 * shorter than their diameter (shorter ones leave the thin-wire approximation), a disc stays whole.
 */
import { sidesOf, shapesOf, type DeepPoint, type Disc, type Electrode, type Shape, type Wire } from './electrode'
import type { LayeredSoil } from './soil'

export interface Segment {
  readonly electrode: number
  readonly x: number
  readonly y: number
  /** Radius at which its own potential is taken. */
  readonly radius: number
  /** Depth of its middle. */
  readonly depth: number
  /** 0 for a disc. */
  readonly length: number
  readonly isLower: boolean
  readonly isDisc: boolean
  /** Unit vector along a piece of wire, z down; vertical when not given. */
  readonly along?: { readonly x: number; readonly y: number; readonly z: number }
}

/** With 12 the resistance is within 0.3 % of the limit of many segments (60 or 100 change it by less than that). */
const SEGMENTS_PER_ROD = 12

/** A wire gets one piece for so many metres, but no fewer than a rod and no more than twice as many. */
const METRES_PER_PIECE = 0.5

/** @param perRod pieces of a rod; a long wire gets twice as many */
export function segmentsOf(
  soil: LayeredSoil,
  electrodes: readonly Electrode[],
  perRod = SEGMENTS_PER_ROD,
): readonly Segment[] {
  return electrodes.flatMap((electrode, i) =>
    shapesOf(electrode).flatMap((shape) => segmentsOfShape(soil, shape, i, perRod)),
  )
}

function segmentsOfShape(soil: LayeredSoil, shape: Shape, electrode: number, perRod: number): readonly Segment[] {
  if (shape.kind === 'disc') return [discSegment(soil, shape, electrode)]
  if (shape.kind === 'wire') return wireSegments(soil, shape, electrode, perRod)
  const top = { ...shape.at, depth: shape.top }
  const bottom = { ...shape.at, depth: shape.top + shape.length }
  const { radius, length } = shape
  return straightSegments(soil, top, bottom, { electrode, radius, perMetre: perRod / length })
}

function discSegment(soil: LayeredSoil, disc: Omit<Disc, 'id'>, electrode: number): Segment {
  const { at, radius, depth = 0 } = disc
  return { electrode, x: at.x, y: at.y, radius, depth, length: 0, isLower: depth > soil.boundary, isDisc: true }
}

function wireSegments(soil: LayeredSoil, wire: Omit<Wire, 'id'>, electrode: number, perRod: number): Segment[] {
  const sides = sidesOf(wire)
  const total = sides.reduce((sum, [from, to]) => sum + lengthBetween(from, to), 0)
  const pieces = Math.min(2, Math.max(1, total / METRES_PER_PIECE / SEGMENTS_PER_ROD)) * perRod
  const made = { electrode, radius: wire.radius, perMetre: pieces / total }
  return sides.flatMap(([from, to]) => straightSegments(soil, from, to, made))
}

interface Cut {
  readonly electrode: number
  readonly radius: number
  readonly perMetre: number
}

function straightSegments(soil: LayeredSoil, from: DeepPoint, to: DeepPoint, cut: Cut): Segment[] {
  const length = lengthBetween(from, to)
  const rise = to.depth - from.depth
  const crossing = (soil.boundary - from.depth) / rise
  // a boundary within a radius of an end leaves a stub that the thin-wire approximation cannot take
  const stub = cut.radius / length
  const isCut = rise !== 0 && crossing > stub && crossing < 1 - stub
  const shares = isCut
    ? ([
        [0, crossing],
        [crossing, 1],
      ] as const)
    : ([[0, 1]] as const)
  const isVertical = from.x === to.x && from.y === to.y
  const along = {
    x: (to.x - from.x) / length,
    y: (to.y - from.y) / length,
    z: rise / length,
  }
  return shares.flatMap(([start, end]) => {
    const piece = (end - start) * length
    const most = Math.max(1, Math.floor(piece / (2 * cut.radius)))
    const count = Math.min(Math.max(Math.ceil(cut.perMetre * piece - 1e-9), 2), most)
    const isLower = from.depth + 0.5 * (start + end) * rise > soil.boundary
    return Array.from({ length: count }, (_, k) => {
      const share = start + ((k + 0.5) * (end - start)) / count
      return {
        electrode: cut.electrode,
        x: from.x + share * (to.x - from.x),
        y: from.y + share * (to.y - from.y),
        radius: cut.radius,
        depth: from.depth + share * rise,
        length: piece / count,
        isLower,
        isDisc: false,
        ...(isVertical ? {} : { along }),
      }
    })
  })
}

function lengthBetween(from: DeepPoint, to: DeepPoint): number {
  const dx = to.x - from.x
  const dy = to.y - from.y
  const dz = to.depth - from.depth
  return Math.sqrt(dx * dx + dy * dy + dz * dz)
}
