/** After a scored run: the sheet that hands the device back, then, with the pass phrase, debrief, marks and record. */
import { useState } from 'react'
import { useStore } from 'zustand'
import { say } from '../../../text'
import { assessStore } from '../../stores/assessStore'
import { release } from '../../stores/assessing'
import { jobStore } from '../../stores/jobStore'
import { finish } from '../../stores/orders'
import { goTo } from '../../stores/viewStore'
import { DebriefPlace } from '../debrief/DebriefPlace'
import { AssessorSheet } from './AssessorSheet'

export function AssessPlace() {
  const phase = useStore(assessStore, (assessment) => assessment.phase)
  const isOver = useStore(jobStore, (job) => job.isOver)
  const [sheet, setSheet] = useState<'marks' | 'debrief'>('marks')
  if (!isOver) return <NotYet />
  if (phase !== 'released') return <HandOver />
  return sheet === 'marks' ? (
    <AssessorSheet onDebrief={() => setSheet('debrief')} />
  ) : (
    <DebriefPlace onMarks={() => setSheet('marks')} />
  )
}

/** Only *finish* ends a scored run, and it asks once more. */
function NotYet() {
  return (
    <main className='stack sheetpage'>
      <h1 className='title'>{say('assess.finishTitle')}</h1>
      <p>{say('assess.finishText')}</p>
      <div className='foot'>
        <button type='button' className='btn' onClick={() => goTo('site')}>
          {say('assess.backToSite')}
        </button>
        <button type='button' className='btn' onClick={finish}>
          {say('assess.finish')}
        </button>
      </div>
    </main>
  )
}

function HandOver() {
  const setUp = useStore(assessStore, (assessment) => assessment.setUp)
  const [phrase, setPhrase] = useState('')
  const [isWrong, setWrong] = useState(false)
  return (
    <main className='stack sheetpage'>
      <h1 className='title'>{say('assess.handBackTitle')}</h1>
      <p>{say('assess.handBackText', { assessor: setUp?.assessor ?? '' })}</p>
      <form
        onSubmit={(event) => {
          event.preventDefault()
          setWrong(!release(phrase))
          setPhrase('')
        }}
      >
        <label className='field'>
          {say('assess.phrase')}
          <input
            className='entry'
            type='password'
            autoComplete='off'
            value={phrase}
            onChange={(event) => setPhrase(event.target.value)}
          />
        </label>
        <div className='foot'>
          <button type='submit' className='btn go'>
            {say('assess.open')}
          </button>
          {isWrong && <span role='alert'>{say('assess.wrongPhrase')}</span>}
        </div>
      </form>
    </main>
  )
}
