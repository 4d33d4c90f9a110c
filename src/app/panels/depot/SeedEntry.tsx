/** Which variant, and where in the job to begin. */
import { parts } from '../../../engine'
import { say } from '../../../text'
import { speakerOf } from '../useSpeaker'

export function SeedEntry({ seed, onChange }: { seed: string; onChange: (seed: string) => void }) {
  return (
    <label className='seed'>
      <span className='q'>{say('depot.seed')}</span>
      <input className='entry n' inputMode='numeric' value={seed} onChange={(event) => onChange(event.target.value)} />
    </label>
  )
}

export function PartChoice({ part, onChoose }: { part: string; onChoose: (part: string) => void }) {
  const speaker = speakerOf('', '')
  return (
    <label className='field'>
      {say('depot.part')}
      <select className='entry' value={part} onChange={(event) => onChoose(event.target.value)}>
        {parts.map((each) => (
          <option key={each} value={each}>
            {speaker.say(`part.${each}`)}
          </option>
        ))}
      </select>
    </label>
  )
}
