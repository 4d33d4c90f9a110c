/**
 * The second of a livening that is looked at, and its play in slow motion. The pointer follows a hand at once; the picture
 * follows it no faster than light and dark may change. What belongs to a second is asked of the grader.
 */
import { createStore } from 'zustand/vanilla'
import type { DrawnLivening } from '../workers/grading'
import { type Course, isLiveAt, leastBetweenFlips, playOn, stretchAt } from './course'
import { askSecond } from './gradeStore'

export interface Playing {
  readonly course: Course | null
  readonly second: number
  readonly isRunning: boolean
  /** The stretch that is drawn. */
  readonly index: number
}

const atStart: Playing = { course: null, second: 0, isRunning: false, index: 0 }

export const courseStore = createStore<Playing>(() => atStart)

let flippedAt = -Infinity
let waiting: ReturnType<typeof setTimeout> | undefined
let beat: ReturnType<typeof setInterval> | undefined

/** Milliseconds from one step of the play to the next. */
const tick = 100

export function openCourse({ instant, clearedBy }: DrawnLivening): void {
  freeze()
  const { stretches, story } = instant
  const isCleared = clearedBy !== 'nothing' && clearedBy !== 'not-live'
  courseStore.setState({ ...atStart, course: { stretches, end: story.end, isCleared, happenings: story.happenings } })
}

export function lookAt(second: number): void {
  const { course } = courseStore.getState()
  if (!course) return
  courseStore.setState({ second: Math.min(course.end, Math.max(0, second)) })
  follow()
}

/** Brings the picture to where the pointer is, now or as soon as it may. */
function follow(): void {
  clearTimeout(waiting)
  const { course, second, index } = courseStore.getState()
  if (!course) return
  const wanted = stretchAt(course, second)
  const isFlip = isLiveAt(course, wanted) !== isLiveAt(course, index)
  const wait = flippedAt + leastBetweenFlips - performance.now()
  if (isFlip && wait > 0) {
    waiting = setTimeout(follow, wait)
    return
  }
  if (isFlip) flippedAt = performance.now()
  if (wanted !== index) courseStore.setState({ index: wanted })
  askSecond(second, wanted)
}

export function run(): void {
  const { course, second } = courseStore.getState()
  if (!course || beat !== undefined) return
  if (second >= course.end) lookAt(0)
  let before = performance.now()
  courseStore.setState({ isRunning: true })
  beat = setInterval(() => {
    const now = performance.now()
    const played = playOn(course, { second: courseStore.getState().second, flippedAt }, now - before, now)
    before = now
    lookAt(played.second)
    if (played.second >= course.end) freeze()
  }, tick)
}

export function freeze(): void {
  clearInterval(beat)
  beat = undefined
  courseStore.setState({ isRunning: false })
}

export function closeCourse(): void {
  freeze()
  clearTimeout(waiting)
  courseStore.setState(atStart)
}
