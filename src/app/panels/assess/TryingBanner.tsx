/** Before a scored run: a place to try the controls, which nobody records. */
import { useStore } from 'zustand'
import { say } from '../../../text'
import { assessStore } from '../../stores/assessStore'
import { beginAssessment } from '../../stores/assessing'
import { jobStore } from '../../stores/jobStore'

export function TryingBanner() {
  const phase = useStore(assessStore, (assessment) => assessment.phase)
  const ordered = useStore(jobStore, (job) => job.ordered)
  const now = useStore(jobStore, (job) => job.now)
  const withdrawn = useStore(jobStore, (job) => job.withdrawn)
  if (phase !== 'trying') return null
  const tasks = [
    { key: 'trying.order', isDone: ordered > 0 },
    { key: 'trying.goOn', isDone: now > 0 },
    { key: 'trying.withdraw', isDone: withdrawn > 0 },
  ] as const
  return (
    <div className='banner' role='status'>
      <b>{say('trying.title')}</b>
      {tasks.map(({ key, isDone }) => (
        <span key={key} className='task'>
          {isDone ? '✓' : '○'} {say(key)}
        </span>
      ))}
      <button type='button' className='btn' onClick={beginAssessment}>
        {say('trying.begin')}
      </button>
    </div>
  )
}
