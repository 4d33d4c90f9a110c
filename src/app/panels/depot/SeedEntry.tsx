/** Which variant, and where in the job to begin. */
import { say } from '../../../text/front'
import type { FolderCard } from '../../storage/makeCard'

export function SeedEntry({ seed, onChange }: { seed: string; onChange: (seed: string) => void }) {
  return (
    <label className='seed'>
      <span className='q'>{say('depot.seed')}</span>
      <input className='entry n' inputMode='numeric' value={seed} onChange={(event) => onChange(event.target.value)} />
    </label>
  )
}

interface PartChoiceProps {
  readonly parts: FolderCard['parts']
  readonly part: string
  readonly onChoose: (part: string) => void
}

export function PartChoice({ parts, part, onChoose }: PartChoiceProps) {
  return (
    <label className='field'>
      {say('depot.part')}
      <select className='entry' value={part} onChange={(event) => onChoose(event.target.value)}>
        {parts.map((each) => (
          <option key={each} value={each}>
            {say(`part.${each}`)}
          </option>
        ))}
      </select>
    </label>
  )
}
