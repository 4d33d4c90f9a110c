/** A line of a list that leads to the field it speaks of. */
import type { Draft } from '../../stores/office/draft'
import { goTo } from '../../stores/office/officeStore'
import { findSection } from './sections'

interface PlaceLineProps {
  readonly draft: Draft
  readonly place: Parameters<typeof findSection>[1]
  readonly name: string
  readonly words: string
}

export function PlaceLine({ draft, place, name, words }: PlaceLineProps) {
  const open = () => {
    const { section, within } = findSection(draft, place)
    goTo(place, section, within)
  }
  return (
    <li>
      <button type='button' className='pick' onClick={open}>
        <span>
          <b className='n'>{name}</b>
          <br />
          <span className='q'>{words}</span>
        </span>
      </button>
    </li>
  )
}
