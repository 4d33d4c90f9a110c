/** On every other sheet of a job that is being shown: why no order is taken, and the ways on. */
import { useStore } from 'zustand'
import { say } from '../../../text'
import { jobStore } from '../../stores/jobStore'
import { takeOver } from '../../stores/showJob'
import { goTo, viewStore } from '../../stores/viewStore'

export function ShownBanner() {
  const isShowing = useStore(jobStore, (job) => job.head?.isShowing === true)
  const place = useStore(viewStore, (view) => view.place)
  if (!isShowing || !['job-sheet', 'gear', 'debrief'].includes(place)) return null
  return (
    <div className='banner' role='status'>
      <p>{say('shown.banner')}</p>
      <button type='button' className='btn' onClick={() => goTo('site')}>
        {say('shown.toSite')}
      </button>
      <button type='button' className='btn' onClick={takeOver}>
        {say('shown.takeOver')}
      </button>
    </div>
  )
}
