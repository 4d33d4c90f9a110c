/**
 * Potential of the ground while something is livened, by superposition of the electrodes' radial tables. The same table
 * feeds the shader (as a texture) and the labels, so that a figure stands at its line. Volts, metres, scene plane x, z.
 */
import { DataTexture, FloatType, NearestFilter, RGFormat } from 'three'

export interface GroundElectrode {
  readonly x: number
  readonly z: number
  /** Ampere, with its sign in phase with the largest. */
  readonly amperes: number
  /** Volts per ampere at each distance. */
  readonly radii: readonly number[]
  readonly ohm: readonly number[]
}

/** Distances of the table: dense where it is steep. */
export const nearest = 0.05
export const farthest = 60
export const points = 256
export const distanceAt = (index: number): number => nearest * ((1 + farthest / nearest) ** (index / (points - 1)) - 1)

export interface Field {
  readonly electrodes: readonly GroundElectrode[]
  /** Rows of `points` pairs: volts and volts per metre outward, times the electrode's current. */
  readonly table: Float32Array
}

export function fieldOf(electrodes: readonly GroundElectrode[]): Field {
  const table = new Float32Array(Math.max(1, electrodes.length) * points * 2)
  electrodes.forEach((electrode, row) => {
    for (let i = 0; i < points; i++) {
      const [ohm, slope] = ohmAt(electrode, distanceAt(i))
      table[(row * points + i) * 2] = electrode.amperes * ohm
      table[(row * points + i) * 2 + 1] = electrode.amperes * slope
    }
  })
  return { electrodes, table }
}

/** Cubic Hermite over the logarithm of the distance with central differences; flat inside the first radius. */
function ohmAt({ radii, ohm }: GroundElectrode, distance: number): readonly [number, number] {
  const last = radii.length - 1
  if (distance <= radii[0]!) return [ohm[0]!, 0]
  if (distance >= radii[last]!)
    return [(ohm[last]! * radii[last]!) / distance, (-ohm[last]! * radii[last]!) / distance ** 2]
  let k = 0
  while (k + 1 < last && radii[k + 1]! <= distance) k++
  const [a, b] = [Math.log(radii[k]!), Math.log(radii[k + 1]!)]
  const rise = (i: number): number => {
    const [low, high] = [Math.max(0, i - 1), Math.min(last, i + 1)]
    return (ohm[high]! - ohm[low]!) / (Math.log(radii[high]!) - Math.log(radii[low]!))
  }
  const width = b - a
  const t = (Math.log(distance) - a) / width
  const [p, q, m, n] = [ohm[k]!, ohm[k + 1]!, rise(k) * width, rise(k + 1) * width]
  const value =
    (2 * t ** 3 - 3 * t ** 2 + 1) * p +
    (t ** 3 - 2 * t ** 2 + t) * m +
    (3 * t ** 2 - 2 * t ** 3) * q +
    (t ** 3 - t ** 2) * n
  const slope =
    ((6 * t ** 2 - 6 * t) * p + (3 * t ** 2 - 4 * t + 1) * m + (6 * t - 6 * t ** 2) * q + (3 * t ** 2 - 2 * t) * n) /
    (width * distance)
  return [value, slope]
}

export function tableTexture({ electrodes, table }: Field): DataTexture {
  const texture = new DataTexture(table, points, Math.max(1, electrodes.length), RGFormat, FloatType)
  texture.minFilter = NearestFilter // filtering floats is an extension: the shader mixes for itself
  texture.magFilter = NearestFilter
  texture.needsUpdate = true
  return texture
}

/** As the shader reads it: linear between the table's distances. */
export function potentialAt(
  field: Field,
  x: number,
  z: number,
): { readonly volts: number; readonly slopeX: number; readonly slopeZ: number } {
  let [volts, slopeX, slopeZ] = [0, 0, 0]
  field.electrodes.forEach((electrode, row) => {
    const [dx, dz] = [x - electrode.x, z - electrode.z]
    const distance = Math.max(1e-3, Math.hypot(dx, dz))
    const place = (Math.log(1 + distance / nearest) * (points - 1)) / Math.log(1 + farthest / nearest)
    const k = Math.min(points - 2, Math.floor(place))
    const t = Math.min(1, place - k)
    const at = (offset: number): number => {
      const from = field.table[(row * points + k) * 2 + offset]!
      return from + (field.table[(row * points + k + 1) * 2 + offset]! - from) * t
    }
    volts += at(0)
    slopeX += (at(1) * dx) / distance
    slopeZ += (at(1) * dz) / distance
  })
  return { volts, slopeX, slopeZ }
}

/** Volts across one metre along the steepest way. */
export function paceAt(field: Field, x: number, z: number): number {
  const { slopeX, slopeZ } = potentialAt(field, x, z)
  const length = Math.hypot(slopeX, slopeZ) || 1
  const [hx, hz] = [(slopeX / length) * 0.5, (slopeZ / length) * 0.5]
  return Math.abs(potentialAt(field, x + hx, z + hz).volts - potentialAt(field, x - hx, z - hz).volts)
}

type Quantity = (x: number, z: number) => number

/** Where along a bearing from (x, z) a falling quantity passes a level, by bisection; null when it does not. */
export function crossingAt(
  of: Quantity,
  level: number,
  x: number,
  z: number,
  bearing: number,
  from = 0.15,
  to = 40,
): { x: number; z: number } | null {
  const at = (distance: number): [number, number] => [
    x + Math.cos(bearing) * distance,
    z + Math.sin(bearing) * distance,
  ]
  if (of(...at(from)) < level || of(...at(to)) > level) return null
  let [low, high] = [from, to]
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2
    if (of(...at(middle)) > level) low = middle
    else high = middle
  }
  const [foundX, foundZ] = at(low)
  return { x: foundX, z: foundZ }
}
