/** The livening as it is at the second that is looked at: its stretch's own currents, contours and volts. */
import { useEffect, useMemo, useState } from 'react'
import { useStore } from 'zustand'
import type { Instant } from '../../../engine'
import { contourInterval, groundTop } from '../../stores/contours'
import { comesAgain, isLiveAt, over } from '../../stores/course'
import { closeCourse, courseStore, openCourse } from '../../stores/courseStore'
import { gradeStore } from '../../stores/gradeStore'
import type { DrawnLivening, StretchPicture } from '../../workers/grading'

export interface Shown extends DrawnLivening {
  /** Volts from contour to contour, and of the highest ground. */
  readonly interval: number
  readonly top: number
  /** Between two shots, or after all. */
  readonly isDead: 'between' | 'over' | null
}

/** Opens the course of the drawn livening, and closes it with the sheet. */
export function useShown(drawn: DrawnLivening | null): Shown | null {
  useEffect(() => {
    if (!drawn) return
    openCourse(drawn)
    return closeCourse
  }, [drawn])
  const wanted = useStore(courseStore, (it) => it.index)
  const course = useStore(courseStore, (it) => it.course)
  const pictures = useStore(gradeStore, (it) => it.pictures)
  // Until the picture of a stretch has come, the one before stays.
  const [index, setIndex] = useState(0)
  if (wanted !== index && (wanted === over || pictures.has(wanted))) setIndex(wanted)
  return useMemo(() => {
    if (!drawn) return null
    const isBetween = course !== null && !isLiveAt(course, index) && comesAgain(course, index)
    const isDead = index === over ? 'over' : isBetween ? 'between' : null
    const picture = index === over ? offOf(drawn) : (pictures.get(index) ?? drawn)
    // While it is dead nothing goes through anybody.
    const instant = isDead ? { ...picture.instant, exposures: [] } : picture.instant
    const top = groundTop(instant.electrodes)
    return { ...drawn, ...picture, instant, top, interval: contourInterval(top), isDead }
  }, [drawn, index, course, pictures])
}

/** Nothing feeds it: no part has a voltage of its own any more. */
function offOf(drawn: DrawnLivening): StretchPicture {
  const instant: Instant = { ...drawn.instant, nodes: [], branches: [], electrodes: [], exposures: [] }
  return {
    instant,
    grid: drawn.grid,
    volts: drawn.volts.map(() => 0),
    ground: { ...drawn.ground, contour: [], safeDistances: [], touches: [] },
  }
}
