/** In place of the buttons of the hour: how the job is shown, and taking it over. */
import { useStore } from 'zustand'
import { say } from '../../../text'
import { jobStore } from '../../stores/jobStore'
import { backAPart, doItYourself, jumpTo, oneOn, playOrHold, takeOver } from '../../stores/showJob'
import { paces, setPace, shownStore } from '../../stores/shownStore'

export function ShownButtons() {
  const { job, isPlaying, pace } = useStore(shownStore)
  const ordered = useStore(jobStore, (it) => it.ordered)
  const isOver = job !== null && ordered >= job.orders.length
  return (
    <div className='buttons' role='group' aria-label={say('shown.controls')}>
      <button type='button' className='btn go' disabled={!job || isOver} onClick={playOrHold}>
        {say(isPlaying ? 'shown.hold' : 'shown.play')} <kbd>C</kbd>
      </button>
      <button type='button' className='btn' disabled={!job} onClick={oneOn}>
        {say('shown.next')} <kbd>G</kbd>
      </button>
      <button type='button' className='btn' disabled={!job || ordered === 0} aria-keyshortcuts='U' onClick={backAPart}>
        {say('shown.backPart')}
      </button>
      <JumpTo />
      <div className='seg wide' role='radiogroup' aria-label={say('shown.pace')}>
        {paces.map((each) => (
          <button
            key={each}
            type='button'
            role='radio'
            className='btn'
            aria-checked={pace === each}
            onClick={() => setPace(each)}
          >
            {say(`shown.pace.${each}`)}
          </button>
        ))}
      </div>
      <button type='button' className='btn wide' disabled={!job} onClick={isOver ? doItYourself : takeOver}>
        {say(isOver ? 'shown.yourself' : 'shown.takeOver')}
      </button>
    </div>
  )
}

/** Shows the part that the job is in; choosing one goes to where it begins. */
function JumpTo() {
  const job = useStore(shownStore, (shown) => shown.job)
  const ordered = useStore(jobStore, (it) => it.ordered)
  const here = job?.openings.findLast((it) => it.orders <= ordered)
  return (
    <select
      className='entry'
      aria-label={say('shown.jump')}
      disabled={!job}
      value={here?.part ?? ''}
      onChange={(event) => {
        const opening = job?.openings.find((it) => it.part === event.target.value)
        if (opening) jumpTo(opening.orders)
      }}
    >
      {job?.openings.map(({ part }) => (
        <option key={part} value={part}>
          {say('shown.at', { part: say(`part.${part}`) })}
        </option>
      ))}
    </select>
  )
}
