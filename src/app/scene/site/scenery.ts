/** The setting: grass, hills, trees, what the scenario says stands about, rain. Seeded, so always the same. */
import { BufferAttribute, BufferGeometry, SphereGeometry } from 'three'
import { at, indexed, strut, vector } from '../geometry/shapes'
import { type Built, built, join, type Part, part } from '../ink/part'
import type { Layout } from './layout'
import { surroundingsView } from './surroundings'

type Random = () => number

function seeded(seed: number): Random {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

/** Grass as pen strokes: tufts of three short lines in patches, thick near the pole, none on the road. */
export function grass(road: Layout['road'], tufts = 6500): BufferGeometry {
  const random = seeded(7)
  const position: number[] = []
  const shade: number[] = []
  for (let i = 0; i < tufts; i++) {
    const angle = random() * Math.PI * 2
    const distance = 1 + 46 * Math.sqrt(random()) * (0.35 + 0.65 * random())
    const [x, z] = [Math.cos(angle) * distance, Math.sin(angle) * distance]
    const patch = Math.sin(x * 0.55 + 1.3 * Math.sin(z * 0.31)) + Math.sin(z * 0.47 + x * 0.13)
    if ((road && x > road.from - 0.7 && x < road.to + 0.7) || patch < -0.25 + random() * 0.6) continue
    const height = 0.07 + 0.13 * random()
    const strength = 0.4 + 0.6 * random()
    for (let blade = -1; blade <= 1; blade++) {
      const lean = blade * 0.055 + (random() - 0.5) * 0.05
      const turn = random() * 3
      position.push(x + blade * 0.02, 0.002, z)
      position.push(
        x + blade * 0.03 + Math.cos(turn) * lean,
        height * (1 - 0.22 * Math.abs(blade)),
        z + Math.sin(turn) * lean,
      )
      shade.push(strength, strength * 0.4)
    }
  }
  return strokesOf(position, shade)
}

/** A strip round the horizon whose upper edge is a sum of slow waves; it faces inward. */
function hills(distance: number, base: number, swing: number, phase: number): BufferGeometry {
  const count = 120
  const position: number[] = []
  const index: number[] = []
  for (let i = 0; i <= count; i++) {
    const angle = (i / count) * Math.PI * 2
    const waves =
      Math.sin(angle * 5 + phase) * 0.5 +
      Math.sin(angle * 11 + phase * 2.1) * 0.3 +
      Math.sin(angle * 23 + phase * 0.7) * 0.12
    const [x, z] = [Math.cos(angle) * distance, Math.sin(angle) * distance]
    position.push(x, -1, z, x, base + swing * waves, z)
    const k = i * 2
    if (i < count) index.push(k, k + 2, k + 1, k + 2, k + 3, k + 1)
  }
  return indexed(position, index)
}

/** Detail above 40 m marks the skyline for the shaders: a flat wash rising out of the mist. */
export const skyline = (): Built =>
  built([part(hills(330, 16, 10, 1.2), 'hillFar', '', 60, 180), part(hills(240, 7, 6, 4.1), 'hill', '', 60, 180)])

/** A crown of lumps on a trunk, leaning away from the wind; low facets, the ink does the work. */
function tree(x: number, z: number, height: number, wind: number, random: Random): readonly Part[] {
  const lean = Math.min(0.12, wind * 0.009)
  const lumps = 7
  const crown = Array.from({ length: lumps }, (_, i) => {
    const isTop = i === lumps - 1
    const angle = (i / (lumps - 1)) * 6.28 + random() * 0.8
    const out = isTop ? 0 : height * (0.14 + 0.12 * random())
    const size = height * (0.15 + 0.08 * random())
    const place = [
      x + Math.cos(angle) * out,
      height * (isTop ? 0.82 : 0.5 + 0.24 * random()),
      z + Math.sin(angle) * out,
    ] as const
    const blown = [
      place[0] + windward[0] * lean * place[1],
      place[1],
      place[2] + windward[1] * lean * place[1],
    ] as const
    return part(at(lump(size, i), blown, [0, random() * 3, 0], [1.15 + lean, 0.8, 1.15 + lean]), 'leaf', '', 0.5, 180)
  })
  const top = vector(x + windward[0] * lean * height * 0.5, height * 0.5, z + windward[1] * lean * height * 0.5)
  return [part(strut(vector(x, 0, z), top, 0.22, 0.1, 8), 'wood', '', 0.4, 60), ...crown]
}

/** Where the wind of the picture blows to, across and along: east-north-east. */
const windward = [0.35, 0.94] as const

function lump(size: number, phase: number): BufferGeometry {
  const geometry = new SphereGeometry(size, 9, 6)
  const position = geometry.getAttribute('position')
  for (let k = 0; k < position.count; k++) {
    const swell =
      1 + 0.1 * Math.sin((position.getX(k) * 5) / size + phase) * Math.sin((position.getY(k) * 4) / size + 2 * phase)
    position.setXYZ(k, position.getX(k) * swell, position.getY(k) * swell, position.getZ(k) * swell)
  }
  return geometry
}

const trees = [
  [-24, 28, 7],
  [-28, 22, 6],
  [-21, 56, 8],
  [27, 40, 8.5],
  [32, 47, 6.5],
  [25, 66, 7],
  [38, -4, 7.5],
  [34, -22, 8],
  [-29, -12, 7.5],
  [-33, -26, 6],
  [24, -52, 8],
  [-22, 82, 7],
] as const

/** @param wind metres a second */
export function scenery(wind: number, layout: Layout): Built {
  const random = seeded(21)
  const { road } = layout
  const isOnRoad = (x: number) => road !== null && x > road.from - 2 && x < road.to + 2
  const grown = trees.flatMap(([x, z, height]) => (isOnRoad(x) ? [] : tree(x, z, height, wind, random)))
  const around = surroundingsView(layout, (x, z, height) => tree(x, z, height, wind, random))
  return join(built(grown), around)
}

/** Sparse strokes of rain that slant with the wind: two ends each, thicker near the pole. */
export function rain(wind: number, strokes = 520): BufferGeometry {
  const random = seeded(33)
  const position: number[] = []
  const shade: number[] = []
  const slant = Math.min(0.9, 0.06 + wind * 0.045)
  for (let i = 0; i < strokes; i++) {
    const [x, z] = [(random() - 0.5) * 44, (random() - 0.5) * 44]
    const top = 0.6 + 12 * random()
    const length = 0.35 + 0.5 * random()
    position.push(
      x,
      top,
      z,
      x + windward[0] * slant * length,
      Math.max(0, top - length),
      z + windward[1] * slant * length,
    )
    const strength = 0.25 + 0.5 * random()
    shade.push(strength, strength * 0.6)
  }
  splash(random, position, shade)
  return strokesOf(position, shade)
}

/** Rings where drops fall. */
function splash(random: Random, position: number[], shade: number[]): void {
  for (let i = 0; i < 90; i++) {
    const [x, z] = [(random() - 0.5) * 40, (random() - 0.5) * 40]
    const radius = 0.05 + 0.06 * random()
    for (let k = 0; k < 8; k++)
      for (const turn of [k, k + 1]) {
        const angle = (turn / 8) * Math.PI * 2
        position.push(x + Math.cos(angle) * radius, 0.004, z + Math.sin(angle) * radius * 0.8)
        shade.push(0.4, 0.4)
      }
  }
}

function strokesOf(position: readonly number[], shade: readonly number[]): BufferGeometry {
  const geometry = new BufferGeometry()
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(position), 3))
  geometry.setAttribute('shade', new BufferAttribute(new Float32Array(shade), 1))
  return geometry
}
