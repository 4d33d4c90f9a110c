/** What several things that lie on the tarp are put together from, around their own middle. */
import { type BufferGeometry, Matrix4 } from 'three'
import { at, cylinder, vector } from '../geometry/shapes'
import type { Slot } from '../ink/palette'
import { type Built, built, join, type Part, part, type Wire, wire } from '../ink/part'
import { screwClamp } from './clamp'

export type Shape = (id: string) => Built
export type Piece = readonly [geometry: () => BufferGeometry, slot: Slot, detail?: number]

export const solids =
  (...pieces: readonly Piece[]): Shape =>
  (id) =>
    built(pieces.map(([make, slot, detail = 0.05]) => part(make(), slot, id, detail)))

export const both =
  (...shapes: readonly Shape[]): Shape =>
  (id) =>
    join(...shapes.map((shape) => shape(id)))

/** Turns of cable or rope that lie on each other, not quite round. */
const turnsOf = (id: string, turns: number, radius: number, slot: Slot, cable: number, x = 0): Wire =>
  wire(
    Array.from({ length: turns * 12 + 1 }, (_, i) => {
      const angle = (i / 12) * Math.PI * 2
      const uneven = radius * (1 + 0.05 * Math.sin(i * 1.7))
      return vector(x + Math.cos(angle) * uneven, cable + (i / 12) * cable * 1.1, Math.sin(angle) * uneven)
    }),
    cable,
    slot,
    id,
    1.6,
    5,
  )

export const coiled =
  (turns: number, radius: number, slot: Slot, cable: number): Shape =>
  (id) =>
    built([], [turnsOf(id, turns, radius, slot, cable)])

const flat = new Matrix4().makeRotationX(-Math.PI / 2)

/** A coil with its clamps in a row before it, each on its side. */
export const lead =
  (turns: number, radius: number, cable: number, clamps: number): Shape =>
  (id) => {
    const row = Array.from({ length: clamps }, (_, k): readonly Part[] => {
      const lie = new Matrix4().makeTranslation(0.12 + radius, 0.02, (k - (clamps - 1) / 2) * 0.12).multiply(flat)
      const turned = new Matrix4().makeRotationZ(Math.PI / 2)
      return screwClamp(vector(0, 0.1, 0), id, 6).map((it) => ({
        ...it,
        geometry: it.geometry.applyMatrix4(turned).applyMatrix4(lie),
      }))
    })
    return built(row.flat(), [turnsOf(id, turns, radius, 'lead', cable, -0.1)])
  }

/** A round bar along z, so far from the middle. */
export const lying = (length: number, radius: number, z = 0, end = radius): BufferGeometry =>
  at(cylinder(end, radius, length, 12), [0, Math.max(radius, end), z], [Math.PI / 2, 0, 0])

export const strap =
  (points: readonly (readonly [number, number])[]): Shape =>
  (id) =>
    built(
      [],
      [
        wire(
          points.map(([x, z]) => vector(x, 0.02, z)),
          0.018,
          'strap',
          id,
          2,
          5,
        ),
      ],
    )

export const arc = (x: number, z: number, radius: number, from: number, to: number): [number, number][] =>
  Array.from({ length: 13 }, (_, k) => {
    const angle = from + ((to - from) * k) / 12
    return [x + Math.cos(angle) * radius, z + Math.sin(angle) * radius]
  })
