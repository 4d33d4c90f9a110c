/** What is wrong at one place, right below its field. */
import { say } from '../../../text/office'
import { type Place, placeText } from '../../stores/office/place'
import { useBoard } from './boardContext'
import { idText } from './idText'

export function Issues({ place }: { place: Place }) {
  const found = useBoard().issues.get(placeText(place))
  if (!found) return null
  return (
    <span className='crit officeissue' id={idText(`${placeText(place)} issues`)}>
      {found.map((it) => say('office.found', { found: it.found, allowed: it.allowed })).join('. ')}
    </span>
  )
}
