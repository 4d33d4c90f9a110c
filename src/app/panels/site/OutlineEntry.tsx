/**
 * An outline on the ground: a rectangle between two corners, or corner by corner. Once it is closed its corners can be
 * moved, added and taken away, by hand in the picture or by figures here.
 */
import { say } from '../../../text'
import { type Entry, rectangle } from '../../stores/entries'
import { AimPad } from './AimPad'
import { SpotFields } from './SpotFields'

interface Props {
  readonly label: string
  readonly entry: Entry
  readonly onChange: (entry: Entry) => void
  /** All of it is set: goes on to the next field, or gives the order. */
  readonly onFilled: (entry: Entry) => void
}

export function OutlineEntry({ label, entry, onChange, onFilled }: Props) {
  const points = entry.points ?? []
  const isFree = entry.text === 'free'
  const isClosed = !isFree && points.length >= 3
  return (
    <div>
      <div className='seg' role='radiogroup' aria-label={say('outline.how')}>
        {['rectangle', 'free'].map((how) => (
          <button
            key={how}
            type='button'
            role='radio'
            tabIndex={-1}
            className='btn'
            aria-checked={isFree === (how === 'free')}
            onClick={() => onChange({ text: how, points: [] })}
          >
            {say(how === 'free' ? 'outline.free' : 'outline.rectangle')}
          </button>
        ))}
      </div>
      <AimPad
        label={label}
        set={points}
        isComplete={isClosed}
        isOpen={points.length > 0 && !isClosed}
        onSet={(at) => {
          if (isClosed) onFilled(entry)
          else if (isFree) onChange({ ...entry, points: [...points, at] })
          else if (points.length === 0) onChange({ ...entry, points: [at] })
          else onFilled({ ...entry, points: rectangle(points[0]!, at) })
        }}
      />
      {isFree && <p className='note'>{say('outline.corners', { count: points.length })}</p>}
      {points.length >= 3 && (
        <SpotFields
          points={points}
          most={points.length + 1}
          onChange={(moved) => onChange({ ...entry, points: moved })}
        />
      )}
    </div>
  )
}
