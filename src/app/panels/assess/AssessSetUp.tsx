/** The assessor's set-up: names, rules, pass phrase. The variant is drawn and shown to nobody. */
import { type FormEvent, useState } from 'react'
import { say } from '../../../text'
import { packShelf } from '../../storage/packShelf'
import { findCard } from '../../storage/shelf'
import { hasAttempt, setUpAssessment } from '../../stores/assessing'
import { speakerOf } from '../useSpeaker'

/** Shorter ones are guessed. */
const shortest = 6

export function AssessSetUp({ scenario }: { scenario: string }) {
  const [assessor, setAssessor] = useState('')
  const [candidate, setCandidate] = useState('')
  const [chosenPack, setPack] = useState<string | null>(null)
  const pack = chosenPack ?? findCard(scenario)?.pack ?? packShelf[0]?.id ?? ''
  const [phrase, setPhrase] = useState('')
  const [again, setAgain] = useState('')
  const [isSame, setSame] = useState(false)
  const missing = missingOf(assessor, candidate, phrase, again)
  const submit = (event: FormEvent) => {
    event.preventDefault()
    if (missing === null)
      setUpAssessment({ assessor: assessor.trim(), candidate: candidate.trim(), scenario, pack, phrase, isSame })
  }
  return (
    <form className='stack grow' onSubmit={submit}>
      <h1 className='title'>{say('assess.title')}</h1>
      <p className='q'>{say('assess.forAssessor', { scenario: speakerOf(scenario, '').say('scenario.name') })}</p>
      <Entry label={say('assess.assessor')} value={assessor} onChange={setAssessor} />
      <Entry label={say('assess.candidate')} value={candidate} onChange={setCandidate} />
      <label className='field'>
        {say('block.pack')}
        <select className='entry' value={pack} onChange={(event) => setPack(event.target.value)}>
          {packShelf.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <Entry label={say('assess.phrase')} value={phrase} onChange={setPhrase} isSecret />
      <Entry label={say('assess.phraseAgain')} value={again} onChange={setAgain} isSecret />
      {hasAttempt(scenario) && (
        <button type='button' className='pick' role='checkbox' aria-checked={isSame} onClick={() => setSame(!isSame)}>
          <span className='box' />
          {say('assess.same')}
        </button>
      )}
      <p className='note gap'>{say('assess.how')}</p>
      <div className='foot'>
        <button type='submit' className='btn go grow' disabled={missing !== null}>
          {say('assess.handOver')}
        </button>
      </div>
      <p className='note' role='status'>
        {missing ?? ''}
      </p>
    </form>
  )
}

function missingOf(assessor: string, candidate: string, phrase: string, again: string): string | null {
  if (assessor.trim() === '' || candidate.trim() === '') return say('assess.namesMissing')
  if (phrase.length < shortest) return say('assess.phraseShort', { count: shortest })
  return phrase === again ? null : say('assess.phraseDiffers')
}

interface EntryProps {
  readonly label: string
  readonly value: string
  readonly onChange: (value: string) => void
  readonly isSecret?: boolean
}

function Entry({ label, value, onChange, isSecret = false }: EntryProps) {
  return (
    <label className='field'>
      {label}
      <input
        className='entry'
        type={isSecret ? 'password' : 'text'}
        autoComplete='off'
        maxLength={80}
        value={value}
        onChange={(event) => onChange(event.target.value)}
      />
    </label>
  )
}
