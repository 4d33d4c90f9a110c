/** By whose rules, and in whose words; what those rules are stands right below. */
import { useStore } from 'zustand'
import { say } from '../../../text/front'
import { cautionOf, packShelf } from '../../storage/packShelf'
import { depotStore, setDepot } from '../../stores/depotStore'

export function PackChoice() {
  const pack = useStore(depotStore, (depot) => depot.pack)
  return (
    <>
      <label className='field'>
        {say('block.pack')}
        <select className='entry' value={pack} onChange={(event) => setDepot({ pack: event.target.value })}>
          {packShelf.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <p className='note'>{cautionOf(pack)}</p>
    </>
  )
}
