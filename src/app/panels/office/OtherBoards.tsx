/** Drafts that this browser keeps beside the one on the board: of another tab, or of one that was closed. */
import { useStore } from 'zustand'
import { say } from '../../../text/office'
import { officeStore, takeOther, throwOther } from '../../stores/office/officeStore'

export function OtherBoards() {
  const others = useStore(officeStore, (office) => office.others)
  if (others.length === 0) return null
  return (
    <ul className='officeothers' aria-label={say('office.others')}>
      {others.map((it) => {
        const name = say(it.kind === 'pack' ? 'office.pack' : 'office.scenario', { id: it.id })
        return (
          <li key={it.name}>
            <span>{say('office.alsoKept', { name })}</span>
            <button type='button' className='btn' onClick={() => takeOther(it)}>
              {say('office.take')}
            </button>
            <button type='button' className='btn' onClick={() => throwOther(it)}>
              {say('office.throw')}
            </button>
          </li>
        )
      })}
    </ul>
  )
}
