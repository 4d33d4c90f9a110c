/**
 * What looks at an item showed, on the item itself as it lies there: a few small pieces of ink, mud or rust where it is.
 * What is wrong and what only looks wrong are drawn with the same pens, so that the picture gives no verdict.
 */
import { Box3, type BufferGeometry, Vector3 } from 'three'
import { gearCatalogue } from '../../../engine'
import { findFinding } from '../../stores/findFinding'
import { at, ball, box, cylinder, ring, vector } from '../geometry/shapes'
import type { Slot } from '../ink/palette'
import { type Built, built, type Part, part } from '../ink/part'

type Pen = (place: Vector3) => readonly (readonly [BufferGeometry, Slot])[]

const dot: Pen = ({ x, y, z }) => [[at(cylinder(0.012, 0.012, 0.006, 10), [x, y, z]), 'ink']]
const slash: Pen = ({ x, y, z }) => [
  [at(box(0.008, 0.008, 0.05), [x - 0.008, y, z - 0.018], [0, 0.5, 0]), 'ink'],
  [at(box(0.008, 0.008, 0.05), [x + 0.006, y, z + 0.018], [0, -0.3, 0]), 'ink'],
]
const lines: Pen = ({ x, y, z }) =>
  [-1, 0, 1].map((k) => [at(box(0.003, 0.005, 0.05), [x + k * 0.012, y, z + k * 0.006], [0, 0.35, 0]), 'ink'] as const)
const spot =
  (slot: Slot): Pen =>
  ({ x, y, z }) => [
    [at(ball(0.026, 8), [x, y, z], [0, 0, 0], [1.2, 0.25, 0.9]), slot],
    [at(ball(0.016, 8), [x + 0.022, y, z + 0.014], [0, 0, 0], [1, 0.25, 1]), slot],
  ]
/** Where something ought to be and is not. */
const gone: Pen = ({ x, y, z }) => [[at(ring(0.03, 0.003, 14), [x, y + 0.004, z], [Math.PI / 2, 0, 0]), 'tape']]
const loose: Pen = ({ x, y, z }) =>
  [-0.6, 0, 0.6].map(
    (turn) => [at(box(0.003, 0.003, 0.06), [x, y + 0.01, z], [turn, turn * 1.4, 0]), 'copper'] as const,
  )

/** By what its name tells; the first that fits. */
const pens: readonly (readonly [RegExp, Pen])[] = [
  [/missing|gone|short|too-few|no-shroud|open|not-in-bag|odd-pair|no-depth|faded|blunt|bald|misted/, gone],
  [/hole|nail|wire-in/, dot],
  [/mud|dirt|dust|soil/, spot('wood')],
  [/rust|corroded|burn|oil|stain|coffee/, spot('glaze')],
  [/paint|green|talc|chalk|oxide/, spot('white')],
  [/wet|swell|swollen/, spot('glass')],
  [/strand|bird|fray|bare|torn-strap|broken-lead|chain/, loose],
  [/crack|cut|split|torn|gouge|broken|splinter|track|chip|neck|bent|thread|loose|mushroom|stripped|page/, slash],
]

const penOf = (name: string): Pen => pens.find(([names]) => names.test(name))?.[1] ?? lines

/** One finding on a surface of something that lies nowhere: its pens turned from above to face west. */
export const markAt = (finding: string, place: Vector3, id: string): readonly Part[] =>
  penOf(finding)(vector(0, 0, 0)).map(([geometry, slot]) => {
    return part(
      geometry
        .rotateZ(Math.PI / 2)
        .scale(3, 3, 3)
        .translate(place.x, place.y, place.z),
      slot,
      id,
      0.04,
    )
  })

/** @param found by `findFinding`; @param shape the item round its own middle */
export function marksOn(shape: Built, type: string, found: readonly string[], id: string): Built {
  const marks = found.flatMap((finding): Part[] => {
    const place = placeOf(shape, type, finding)
    return penOf(finding)(place).map(([geometry, slot]) => part(geometry, slot, id, 0.02))
  })
  return built(marks)
}

/** Spread along the item in the order of the catalogue; of an end of a lead at its clamp. */
function placeOf(shape: Built, type: string, finding: string): Vector3 {
  const of = gearCatalogue.get(type)
  const [, end] = finding.split('@')
  const ends = of?.ends ?? []
  if (end !== undefined && ends.includes(end)) {
    const again = namesOf(type).filter((it) => it.endsWith(`@${end}`))
    const along = (ends.indexOf(end) - (ends.length - 1) / 2) * 0.12
    return onTop(shape, 0.24 + 0.03 * again.indexOf(finding), along)
  }
  const names = namesOf(type).filter((it) => !it.includes('@'))
  const share = (names.indexOf(finding) + 1) / (names.length + 1) - 0.5
  const { min, max } = boxOf(shape)
  const [wide, long] = [max.x - min.x, max.z - min.z]
  const [x, z] = [(min.x + max.x) / 2, (min.z + max.z) / 2]
  const isLeft = finding.includes('left') ? -1 : finding.includes('right') ? 1 : 0
  if (isLeft !== 0) return onTop(shape, x + (isLeft * wide) / 4, z + share * long)
  return long >= wide ? onTop(shape, x, z + share * long * 0.9) : onTop(shape, x + share * wide * 0.9, z)
}

function namesOf(type: string): readonly string[] {
  return (gearCatalogue.get(type)?.defects ?? []).flatMap(({ evidence, end, foundBy }) => {
    const name = findFinding({ says: evidence, values: end === undefined ? {} : { end } })
    return foundBy === 'look' && name !== undefined ? [name] : []
  })
}

const pointsOf = ({ parts, wires }: Built): readonly Vector3[] => [
  ...parts.flatMap(({ geometry }) => {
    const { array } = geometry.getAttribute('position')
    return Array.from({ length: array.length / 3 }, (_, i) => new Vector3().fromArray(array, i * 3))
  }),
  ...wires.flatMap(({ points, radius }) => points.map((it) => it.clone().setY(it.y + radius))),
]

const boxOf = (shape: Built): Box3 => new Box3().setFromPoints([...pointsOf(shape)])

/** On the surface of the item there; beside it, as far as the item is from that place, where it is hollow. */
function onTop(shape: Built, x: number, z: number): Vector3 {
  const away = (it: Vector3): number => Math.hypot(it.x - x, it.z - z)
  const points = pointsOf(shape)
  const nearest = points.reduce((best, it) => (away(it) < away(best) ? it : best), points[0] ?? vector(0, 0, 0))
  const top = points.filter((it) => Math.hypot(it.x - nearest.x, it.z - nearest.z) < 0.03)
  const { min, max } = boxOf(shape)
  const isLong = max.z - min.z >= max.x - min.x
  const y = Math.max(...top.map((it) => it.y)) + 0.002
  return isLong ? vector(x + (nearest.x - x) * 0.6, y, z) : vector(x, y, z + (nearest.z - z) * 0.6)
}
