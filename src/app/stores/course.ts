/**
 * The course of a livening as it is played: which stretch a second lies in, how much slower than it was, and that light
 * and dark never follow each other faster than once a second. Pure.
 */
import type { Happening } from '../../engine'

export interface Stretch {
  readonly from: number
  readonly to: number
  readonly isLive: boolean
}

export interface Course {
  readonly stretches: readonly Stretch[]
  /** Seconds from the first current to the last. */
  readonly end: number
  /** Something ended it, so that after the end there is nothing. */
  readonly isCleared: boolean
  readonly happenings: readonly Happening[]
}

/** After the end. */
export const over = -1

export function stretchAt({ stretches, end, isCleared }: Course, second: number): number {
  if (isCleared && second >= end) return over
  const found = stretches.findIndex((it) => second < it.to)
  return found < 0 ? stretches.length - 1 : found
}

export const isLiveAt = (course: Course, index: number): boolean => course.stretches[index]?.isLive ?? false

/** Some source comes on again later. */
export const comesAgain = (course: Course, index: number): boolean =>
  index >= 0 && course.stretches.some((it, i) => i > index && it.isLive)

/** Times slower than it was: as slow as fits into half a minute, never faster than it was. */
const slownesses = [100, 50, 20, 10, 5, 2, 1] as const
const longestPlay = 30
export const slownessOf = ({ end }: Pick<Course, 'end'>): number =>
  slownesses.find((it) => it * end <= longestPlay) ?? 1

/** Of a key: about two hundred steps from end to end, on the 1-2-5 ladder, a hundredth of a second at least. */
export function stepOf({ end }: Pick<Course, 'end'>): number {
  const ladder = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10]
  return ladder.find((it) => end / it <= 250) ?? 20
}

/** Milliseconds that a picture stays light, or dark, at least. */
export const leastBetweenFlips = 1000

export interface Played {
  readonly second: number
  /** When the picture last went from light to dark or back, milliseconds. */
  readonly flippedAt: number
}

/**
 * So many milliseconds later. Where the picture would flip too soon the clock waits at the edge.
 * @param now milliseconds, on the clock of `flippedAt`
 */
export function playOn(course: Course, { second, flippedAt }: Played, passed: number, now: number): Played {
  const next = Math.min(course.end, second + passed / 1000 / slownessOf(course))
  const was = isLiveAt(course, stretchAt(course, second))
  const edge = edgesOf(course).find(
    (it) => it > second && it <= next && isLiveAt(course, stretchAt(course, it)) !== was,
  )
  if (edge === undefined) return { second: next, flippedAt }
  return now - flippedAt < leastBetweenFlips ? { second, flippedAt } : { second: edge, flippedAt: now }
}

const edgesOf = ({ stretches, end }: Course): readonly number[] => [...stretches.map(({ to }) => to), end]

/** Seconds at which something happens, each once, the start first and the end last. */
export function marksOf({ happenings, end }: Pick<Course, 'happenings' | 'end'>): readonly number[] {
  return [...new Set([0, ...happenings.map(({ at }) => at), end])].sort((a, b) => a - b)
}

export const nextMark = (course: Course, second: number): number =>
  marksOf(course).find((at) => at > second + 1e-9) ?? course.end

export const markBefore = (course: Course, second: number): number =>
  marksOf(course).findLast((at) => at < second - 1e-9) ?? 0
