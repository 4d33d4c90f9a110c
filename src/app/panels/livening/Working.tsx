/** Long work shows how far it is and can be stopped; a failure says so and offers to try again. */
import { useStore } from 'zustand'
import { say } from '../../../text'
import { gradeJob, gradeStore, stopGrading } from '../../stores/gradeStore'

export function Working() {
  const progress = useStore(gradeStore, (grade) => grade.progress)
  const failure = useStore(gradeStore, (grade) => grade.failure)
  if (failure)
    return (
      <div className='working' role='alert'>
        <span>{say('working.failed', { reason: failure })}</span>
        <button type='button' className='btn' onClick={gradeJob}>
          {say('working.again')}
        </button>
      </div>
    )
  if (!progress) return null
  return (
    <div className='working' role='status'>
      <span>{say('working.swept', { done: progress.done, total: progress.total })}</span>
      <progress value={progress.done} max={progress.total} aria-label={say('working.label')} />
      <button type='button' className='btn' onClick={stopGrading}>
        {say('working.stop')}
      </button>
    </div>
  )
}
