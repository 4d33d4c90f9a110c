/**
 * The livening's own seconds as a drafting rule: bars where a source is on, a mark for each thing that happens, a blue
 * pointer that a hand or the keys move. The picture follows it.
 */
import { type KeyboardEvent, type PointerEvent, type ReactNode, useRef } from 'react'
import { useStore } from 'zustand'
import { say } from '../../../text'
import { type Course, markBefore, marksOf, nextMark, slownessOf, stepOf } from '../../stores/course'
import { courseStore, freeze, lookAt, run } from '../../stores/courseStore'
import { useReducedMotion } from '../useReducedMotion'
import { exactSeconds, wordsAt } from './happeningWords'

interface StripProps {
  /** At the right of the strip's buttons: how the second is drawn. */
  readonly children: ReactNode
}

export function TimeStrip({ children }: StripProps) {
  const course = useStore(courseStore, (it) => it.course)
  if (!course) return null
  return (
    <section className='course' aria-label={say('course.name')}>
      <Controls course={course}>{children}</Controls>
      <Rule course={course} />
      <Marks course={course} />
    </section>
  )
}

function Controls({ course, children }: StripProps & { readonly course: Course }) {
  const second = useStore(courseStore, (it) => it.second)
  const isRunning = useStore(courseStore, (it) => it.isRunning)
  const isStill = useReducedMotion()
  const times = slownessOf(course)
  const runWords = times > 1 ? say('course.run', { times }) : say('course.runTrue')
  return (
    <div className='courserow'>
      {isStill ? (
        <button type='button' className='btn' onClick={() => lookAt(nextMark(course, second))}>
          {say('course.next')}
        </button>
      ) : (
        <button type='button' className='btn' onClick={isRunning ? freeze : run}>
          {isRunning ? say('course.freeze') : runWords}
        </button>
      )}
      <button type='button' className='btn' disabled={second === 0} onClick={() => lookAt(0)}>
        {say('course.again')}
      </button>
      <output className='n coursenow'>
        {say('course.at', { second: exactSeconds(second), end: exactSeconds(course.end) })}
      </output>
      <div className='livebar'>{children}</div>
    </div>
  )
}

function Rule({ course }: { course: Course }) {
  const second = useStore(courseStore, (it) => it.second)
  const isRunning = useStore(courseStore, (it) => it.isRunning)
  const isStill = useReducedMotion()
  const rule = useRef<HTMLDivElement>(null)
  const step = stepOf(course)
  const percent = (at: number): string => `${(100 * at) / course.end}%`
  const toPointer = (event: PointerEvent): void => {
    const { left, width } = rule.current!.getBoundingClientRect()
    lookAt(((event.clientX - left) / width) * course.end)
  }
  const keys: Readonly<Record<string, () => void>> = {
    ArrowRight: () => lookAt(tidy(second + step, step)),
    ArrowUp: () => lookAt(tidy(second + step, step)),
    ArrowLeft: () => lookAt(tidy(second - step, step)),
    ArrowDown: () => lookAt(tidy(second - step, step)),
    PageUp: () => lookAt(nextMark(course, second)),
    PageDown: () => lookAt(markBefore(course, second)),
    Home: () => lookAt(0),
    End: () => lookAt(course.end),
    ' ': isStill ? () => lookAt(nextMark(course, second)) : isRunning ? freeze : run,
  }
  const onKeyDown = (event: KeyboardEvent): void => {
    const act = keys[event.key]
    if (!act || event.altKey || event.ctrlKey || event.metaKey) return
    event.preventDefault()
    event.stopPropagation()
    if (event.key !== ' ') freeze()
    act()
  }
  return (
    <div
      className='courserule'
      role='slider'
      tabIndex={0}
      aria-label={say('course.name')}
      title={say(isStill ? 'course.keysStill' : 'course.keys')}
      aria-valuemin={0}
      aria-valuemax={course.end}
      aria-valuenow={second}
      aria-valuetext={[exactSeconds(second), ...wordsAt(course, second)].join(', ')}
      onKeyDown={onKeyDown}
      onPointerDown={(event) => {
        freeze()
        event.currentTarget.setPointerCapture(event.pointerId)
        toPointer(event)
      }}
      onPointerMove={(event) => event.currentTarget.hasPointerCapture(event.pointerId) && toPointer(event)}
    >
      <div className='coursescale' ref={rule}>
        {course.stretches
          .filter(({ isLive }) => isLive)
          .map(({ from, to }) => (
            <span key={from} className='courselive' style={{ left: percent(from), width: percent(to - from) }} />
          ))}
        {ticksOf(course.end).map((at) => (
          <span key={at} className='coursetick' style={{ left: percent(at) }}>
            <span className='q'>{at}</span>
          </span>
        ))}
        {marksOf(course).map((at) => (
          <span key={at} className='coursemark' style={{ left: percent(at) }} />
        ))}
        <span className='coursepointer' style={{ left: percent(second) }} />
      </div>
    </div>
  )
}

/** A key lands on whole steps, so that the same keys give the same second. */
const tidy = (second: number, step: number): number => Math.round(second / step) * step

/** Six to thirteen ticks on the 1-2-5 ladder. */
function ticksOf(end: number): readonly number[] {
  const steps = [0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100]
  const step = steps.find((it) => end / it <= 12) ?? 500
  return Array.from({ length: Math.floor(end / step) + 1 }, (_, i) => Number((i * step).toFixed(2)))
}

function Marks({ course }: { course: Course }) {
  const second = useStore(courseStore, (it) => it.second)
  return (
    <ol className='coursemarks'>
      {marksOf(course).map((at) => (
        <li key={at}>
          <button
            type='button'
            className='coursejump'
            aria-current={at === second ? 'time' : undefined}
            onClick={() => {
              freeze()
              lookAt(at)
            }}
          >
            <span className='n'>{exactSeconds(at)}</span> {wordsAt(course, at).join(', ')}
          </button>
        </li>
      ))}
    </ol>
  )
}
