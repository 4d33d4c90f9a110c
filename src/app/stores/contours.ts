/** Contours of the ground's potential, the same on the sheet and in the scene: one even interval, so that spacing is steepness. Pure. */

interface Electrode {
  readonly size: number
  readonly radii: readonly number[]
  readonly ohm: readonly number[]
}

/** Metres from the axis at which the ground's top is taken: nearer, a figure says more of the rod than of the ground. */
const beside = 0.3

/** Volts beside the electrode that lifts the ground most, by itself. */
export function groundTop(electrodes: readonly Electrode[]): number {
  return Math.max(0, ...electrodes.map(({ size, radii, ohm }) => size * ohmAt(radii, ohm)))
}

function ohmAt(radii: readonly number[], ohm: readonly number[]): number {
  const next = radii.findIndex((it) => it >= beside)
  if (next <= 0) return ohm[Math.max(0, next)] ?? 0
  const [a, b] = [radii[next - 1]!, radii[next]!]
  const t = (beside - a) / (b - a)
  return ohm[next - 1]! + t * (ohm[next]! - ohm[next - 1]!)
}

/** Lines wanted at least, and at most; the 1-2-5 ladder has gaps of 2.5, so that now and then it is a few more or fewer. */
const [fewest, most, mostAtAll] = [15, 30, 34] as const

/** Every fifth line is heavy. */
export const heavyEach = 5

export function contourInterval(top: number): number {
  const ladder = Array.from({ length: 8 }, (_, i) => [1, 2, 5].map((digit) => digit * 10 ** (i - 1))).flat()
  const index = ladder.findIndex((step) => top / step <= most)
  const step = ladder[index] ?? 1e6
  const finer = ladder[index - 1]
  return finer !== undefined && top / step < fewest && top / finer <= mostAtAll ? finer : step
}
