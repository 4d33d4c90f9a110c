/** Takes a field or an entry out. */
import { say } from '../../../text/office'
import { change } from '../../stores/office/officeStore'
import type { Place } from '../../stores/office/place'

export function TakeOut({ place, name }: { place: Place; name: string }) {
  return (
    <button
      type='button'
      className='btn plain'
      aria-label={say('office.takeOutOf', { name })}
      onClick={() => change(place, undefined)}
    >
      {say('office.takeOut')}
    </button>
  )
}
