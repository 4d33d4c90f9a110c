/** By whose rules, and in whose words; what those rules are stands right below. */
import { say } from '../../../text/front'
import { cautionOf, packShelf } from '../../storage/packShelf'

export function PackChoice({ pack, onChoose }: { pack: string; onChoose: (pack: string) => void }) {
  return (
    <>
      <label className='field'>
        {say('block.pack')}
        <select className='entry' value={pack} onChange={(event) => onChoose(event.target.value)}>
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
