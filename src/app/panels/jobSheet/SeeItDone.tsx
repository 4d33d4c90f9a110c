/** Before the first order of a practice run: the same job, done by a crew that errs in nothing. */
import { useStore } from 'zustand'
import { say } from '../../../text'
import { jobStore } from '../../stores/jobStore'
import { openShown } from '../../stores/showJob'

export function SeeItDone() {
  const head = useStore(jobStore, (job) => job.head)
  const ordered = useStore(jobStore, (job) => job.ordered)
  if (head?.purpose !== 'practise' || head.isShowing || ordered > 0) return null
  return (
    <div className='foot'>
      <button type='button' className='btn grow' onClick={() => openShown(head)}>
        {say('depot.see')}
      </button>
    </div>
  )
}
