/**
 * The second that is looked at in three dimensions, in plan or in elevation: the same currents, contours and volts. The
 * drawings are what prints, and what is left where there is no scene.
 */
import { Suspense, useContext, useMemo, useState } from 'react'
import { useStore } from 'zustand'
import type { GroundPoint } from '../../../engine'
import { plain, say, seconds, volts } from '../../../text'
import { courseStore } from '../../stores/courseStore'
import type { Felt } from '../../stores/gradeStore'
import { showDrawing, viewStore } from '../../stores/viewStore'
import { StageSlot } from '../site/stageSlot'
import { LiveningElevation } from './LiveningElevation'
import { LiveningPlan, leastTop } from './LiveningPlan'
import { TimeStrip } from './TimeStrip'
import { toldOf } from './happeningWords'
import { useFeelers } from './useFeelers'
import { usePrinting } from './usePrinting'
import type { Shown } from './useShown'

/** Where the feelers are, and setting them by a press on the picture. */
export interface Feeling {
  readonly kind: Felt['kind']
  readonly at: GroundPoint | undefined
  readonly hands: readonly [string | null, string | null]
  readonly onPoint: (at: GroundPoint) => void
  readonly onPick: (id: string) => void
}

interface Props {
  readonly shown: Shown
  readonly title: string
  readonly feeling: Feeling | null
}

type Sheet = 'scene' | 'plan' | 'elevation'

export function LiveningPicture({ shown, title, feeling }: Props) {
  const isScene = useStore(viewStore, (view) => view.drawing === 'scene')
  const isRunning = useStore(courseStore, (it) => it.isRunning)
  const Stage = useContext(StageSlot)
  const [lost, setLost] = useState<'none' | 'lost' | null>(null)
  const [drawing, setDrawing] = useState<'plan' | 'elevation'>('plan')
  const [hasFigures, setFigures] = useState(false)
  const isPrinting = usePrinting()
  const canScene = Stage !== null && lost !== 'none'
  const sheet: Sheet = canScene && isScene && lost === null ? 'scene' : drawing
  const choose = (chosen: Sheet): void => {
    showDrawing(chosen === 'scene' ? 'scene' : 'drawings')
    if (chosen !== 'scene') setDrawing(chosen)
  }
  const both = isPrinting ? (['plan', 'elevation'] as const) : sheet === 'scene' ? [] : [sheet]
  return (
    <div className={isRunning ? 'livepicture' : 'livepicture is-frozen'}>
      <TimeStrip>
        <Choice sheet={sheet} canScene={canScene && lost === null} onChoose={choose} />
        <button type='button' className='btn' aria-pressed={hasFigures} onClick={() => setFigures(!hasFigures)}>
          {say('livening.figures')}
        </button>
      </TimeStrip>
      <p className='livedead' role='status' hidden={!shown.isDead}>
        {shown.isDead && say(shown.isDead === 'between' ? 'livening.dead' : 'livening.over')}
      </p>
      {lost === 'lost' && <p className='note'>{say('scene.lost')}</p>}
      {both.map((it) =>
        it === 'plan' ? (
          <PlanWithScale key={it} shown={shown} title={title} feeling={feeling} hasFigures={hasFigures} />
        ) : (
          <LiveningElevation key={it} shown={shown} title={title} hasFigures={hasFigures} />
        ),
      )}
      {canScene && isScene && (
        <div className='stagebox' hidden={lost !== null}>
          <p className='vh'>{title}</p>
          <Suspense fallback={<p className='note'>{say('scene.loading')}</p>}>
            <InScene
              Stage={Stage}
              shown={shown}
              feeling={feeling}
              hasFigures={hasFigures}
              isFrozen={!isRunning}
              onLost={setLost}
            />
          </Suspense>
        </div>
      )}
    </div>
  )
}

interface ChoiceProps {
  readonly sheet: Sheet
  readonly canScene: boolean
  readonly onChoose: (sheet: Sheet) => void
}

function Choice({ sheet, canScene, onChoose }: ChoiceProps) {
  const sheets: readonly Sheet[] = canScene ? ['scene', 'plan', 'elevation'] : ['plan', 'elevation']
  return (
    <div className='seg' role='radiogroup' aria-label={say('livening.sheet')}>
      {sheets.map((it) => (
        <button
          key={it}
          type='button'
          role='radio'
          className='btn'
          aria-checked={it === sheet}
          onClick={() => onChoose(it)}
        >
          {say(`livening.${it}`)}
        </button>
      ))}
    </div>
  )
}

interface InSceneProps {
  readonly Stage: NonNullable<React.ContextType<typeof StageSlot>>
  readonly shown: Shown
  readonly feeling: Feeling | null
  readonly hasFigures: boolean
  readonly isFrozen: boolean
  readonly onLost: (how: 'lost' | 'none' | null) => void
}

function InScene({ Stage, shown, feeling, hasFigures, isFrozen, onLost }: InSceneProps) {
  const [isPressing, setPressing] = useState(false)
  const told = useTold()
  const feelers = useFeelers(
    feeling && { kind: feeling.kind, at: feeling.at ?? null, hands: feeling.hands.filter((it) => it !== null) },
  )
  const isOnGround = isPressing && feeling !== null && feeling.kind !== 'hands'
  const bar = feeling && (
    <button type='button' className='scene-view' aria-pressed={isPressing} onClick={() => setPressing(!isPressing)}>
      {say('feelers.press')}
    </button>
  )
  return (
    <Stage
      drawn={shown}
      isFrozen={isFrozen}
      hasFigures={hasFigures}
      extra={bar}
      feelers={feelers}
      told={told}
      {...(isOnGround ? { onGroundPoint: (at, how) => how === 'press' && feeling.onPoint(at) } : {})}
      {...(isPressing && feeling?.kind === 'hands' ? { onPick: feeling.onPick } : {})}
      onLost={onLost}
      onRestored={() => onLost(null)}
    />
  )
}

/** What has happened by the second that is looked at: the last of it with its time, and what gave way. */
function useTold() {
  const course = useStore(courseStore, (it) => it.course)
  const count = useStore(courseStore, (it) => it.course?.happenings.filter(({ at }) => at <= it.second).length ?? 0)
  return useMemo(() => (course ? toldOf(course, count) : null), [course, count])
}

interface PlanProps extends Props {
  readonly hasFigures: boolean
}

function PlanWithScale({ shown, title, feeling, hasFigures }: PlanProps) {
  const aim = feeling && { at: feeling.at, onPoint: feeling.onPoint }
  return (
    <>
      <LiveningPlan shown={shown} title={title} hasFigures={hasFigures} {...(aim ? { feelers: aim } : {})} />
      <p className='caprow'>
        {shown.top >= leastTop && (
          <span>{say('livening.interval', { interval: `${plain(shown.interval, 1)}\u00a0V` })}</span>
        )}
        <span>{paceWords(shown)}</span>
        {shown.ground.contour.length > 0 && <span>{barrierWords(shown)}</span>}
        <span>{say('livening.metres')}</span>
      </p>
    </>
  )
}

function paceWords({ ground, instant, clearedBy }: Shown): string {
  const step = volts(ground.tolerableStep)
  const duration = seconds(instant.tolerable.duration)
  if (ground.contour.length === 0) return say('livening.noZone', { step, duration })
  return clearedBy === 'nothing' ? say('livening.paceLasting', { step }) : say('livening.pace', { step, duration })
}

function barrierWords({ ground, belief }: Shown): string {
  if (belief.barrier === null) return say('livening.noBarrier')
  return say(ground.barrier.isEnclosing ? 'livening.enclosed' : 'livening.sticksOut')
}
