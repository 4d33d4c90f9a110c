/** The instant in three dimensions, frozen or in slow motion; or in plan, where there is no scene or it is wished. */
import { Suspense, useContext, useState } from 'react'
import { useStore } from 'zustand'
import { say } from '../../../text'
import { showDrawing, viewStore } from '../../stores/viewStore'
import type { DrawnLivening } from '../../workers/grading'
import { StageSlot } from '../site/stageSlot'
import { type FeelersAim, LiveningPlan } from './LiveningPlan'

interface Props {
  readonly drawn: DrawnLivening
  readonly title: string
  readonly feelers?: FeelersAim
}

export function LiveningPicture({ drawn, title, feelers }: Props) {
  const isScene = useStore(viewStore, (view) => view.drawing === 'scene')
  const Stage = useContext(StageSlot)
  const [lost, setLost] = useState<'none' | 'lost' | null>(null)
  const [isFrozen, setFrozen] = useState(true)
  if (Stage === null || !isScene || lost === 'none')
    return (
      <>
        {Stage && lost === null && (
          <button type='button' className='btn plain' onClick={() => showDrawing('scene')}>
            {say('scene.open')}
          </button>
        )}
        <PlanWithScale drawn={drawn} title={title} {...(feelers ? { feelers } : {})} />
      </>
    )
  const bar = (
    <>
      <button type='button' className='scene-view' aria-pressed={isFrozen} onClick={() => setFrozen(!isFrozen)}>
        {say('scene.frozen')}
      </button>
      <button type='button' className='btn plain drawingswitch' onClick={() => showDrawing('drawings')}>
        {say('livening.plan')}
      </button>
    </>
  )
  return (
    <>
      {lost && <PlanWithScale drawn={drawn} title={title} />}
      <div className='stagebox' hidden={lost !== null}>
        <p className='vh'>{title}</p>
        <Suspense fallback={<p className='note'>{say('scene.loading')}</p>}>
          <Stage drawn={drawn} isFrozen={isFrozen} extra={bar} onLost={setLost} onRestored={() => setLost(null)} />
        </Suspense>
      </div>
    </>
  )
}

function PlanWithScale({ drawn, title, feelers }: Props) {
  const { step, duration } = drawn.instant.tolerable
  const isLasting = drawn.clearedBy === 'nothing'
  return (
    <>
      <LiveningPlan drawn={drawn} title={title} {...(feelers ? { feelers } : {})} />
      <p className='caprow'>
        <span>{say('livening.interval')}</span>
        <span>{isLasting ? say('livening.paceLasting', { step }) : say('livening.pace', { step, duration })}</span>
        <span>{say('livening.metres')}</span>
      </p>
    </>
  )
}
