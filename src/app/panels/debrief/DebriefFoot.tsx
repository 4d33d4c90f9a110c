/** What can be done with a debrief: looked into, tried otherwise, kept; and, while practising, tried again. */
import { useStore } from 'zustand'
import { say, timeOfDay } from '../../../text'
import { download } from '../../storage/download'
import { exportResult } from '../../stores/exportResult'
import { exportRun } from '../../stores/exportRun'
import { jobStore } from '../../stores/jobStore'
import { backTo } from '../../stores/orders'
import { goTo } from '../../stores/viewStore'
import { unscored } from '../shown/unscored'
import type { Graded } from '../../workers/grading'

export type Sheet = 'debrief' | 'drawing' | 'suppose'

export interface DebriefFootProps {
  readonly graded: Graded
  /** Second of the day. */
  readonly startsAt: number
  readonly onSheet: (sheet: Sheet) => void
  readonly onMarks?: () => void
}

export function DebriefFoot({ graded, startsAt, onSheet, onMarks }: DebriefFootProps) {
  const head = useStore(jobStore, (job) => job.head)
  const { result, drawn } = graded
  const first = firstDeviation(graded)
  return (
    <div className='foot'>
      <button type='button' className='btn' disabled={!drawn} onClick={() => onSheet('drawing')}>
        {say('debrief.drawing')}
      </button>
      <button type='button' className='btn' disabled={!drawn} onClick={() => onSheet('suppose')}>
        {say('debrief.suppose')}
      </button>
      <button type='button' className='btn' onClick={() => print()}>
        {say('debrief.print')}
      </button>
      <button
        type='button'
        className='btn'
        disabled={unscored(head) !== null}
        onClick={() => download('result.json', exportResult(result))}
      >
        {say('debrief.result')}
      </button>
      <button type='button' className='btn' onClick={() => download('run.json', exportRun())}>
        {say('runs.export')}
      </button>
      {onMarks && (
        <button type='button' className='btn' onClick={onMarks}>
          {say('assess.marksTitle')}
        </button>
      )}
      {head?.purpose === 'practise' && !head.isShowing && first !== null && (
        <button
          type='button'
          className='btn go'
          onClick={() => {
            backTo(first.entry)
            goTo('site')
          }}
        >
          {say('debrief.retry', { time: timeOfDay(startsAt + first.at).slice(0, 5) })}
        </button>
      )}
    </div>
  )
}

/** `entry`: as many orders were given before it. */
function firstDeviation({ result }: Graded): Graded['result']['findings'][number] | null {
  return result.findings.find((finding) => finding.entry >= 0) ?? null
}
