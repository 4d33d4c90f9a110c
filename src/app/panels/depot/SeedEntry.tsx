/** Which variant, and where in the job to begin. */
import { useStore } from 'zustand'
import { say } from '../../../text/front'
import type { FolderCard } from '../../storage/makeCard'
import { depotStore, setDepot } from '../../stores/depotStore'

export function SeedEntry({ seed, onChange }: { seed: string; onChange: (seed: string) => void }) {
  return (
    <label className='seed'>
      <span className='q'>{say('depot.seed')}</span>
      <input className='entry n' inputMode='numeric' value={seed} onChange={(event) => onChange(event.target.value)} />
    </label>
  )
}

export function PartChoice({ parts }: { parts: FolderCard['parts'] }) {
  const part = useStore(depotStore, (depot) => depot.part)
  return (
    <label className='field'>
      {say('depot.part')}
      <select className='entry' value={part} onChange={(event) => setDepot({ part: event.target.value })}>
        {parts.map((each) => (
          <option key={each} value={each}>
            {say(`part.${each}`)}
          </option>
        ))}
      </select>
    </label>
  )
}
