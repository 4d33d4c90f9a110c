/** Points of the ground by figures: metres east and north of the pole, a row each. */
import { useState } from 'react'
import { say } from '../../../text'
import type { Spot } from '../../stores/aimStore'
import { figureOf } from '../../stores/entries'

export interface SpotFieldsProps {
  readonly points: readonly Spot[]
  /** Rows at most; one more than there are points: the last row adds one. */
  readonly most: number
  readonly onChange: (points: readonly Spot[]) => void
}

export function SpotFields({ points, most, onChange }: SpotFieldsProps) {
  const rows = Math.min(most, points.length + 1)
  const isList = most > 1
  return (
    <div className='spots' role='group' aria-label={say('spot.figures')}>
      {Array.from({ length: rows }, (_, i) => (
        <SpotRow
          key={i}
          number={isList ? i + 1 : null}
          at={points[i] ?? null}
          onSet={(at) => onChange([...points.slice(0, i), at, ...points.slice(i + 1)])}
          onRemove={
            isList && points[i] && points.length > 3 ? () => onChange(points.filter((_point, k) => k !== i)) : null
          }
        />
      ))}
    </div>
  )
}

interface RowProps {
  readonly number: number | null
  readonly at: Spot | null
  readonly onSet: (at: Spot) => void
  readonly onRemove: (() => void) | null
}

const sides = { x: 'spot.east', y: 'spot.north' } as const

function SpotRow({ number, at, onSet, onRemove }: RowProps) {
  const [written, setWritten] = useState<Readonly<Record<'x' | 'y', string>> | null>(null)
  const shown = written ?? { x: at ? String(at.x) : '', y: at ? String(at.y) : '' }
  const write = (side: 'x' | 'y', text: string) => {
    const now = { ...shown, [side]: text }
    const [x, y] = [figureOf(now.x), figureOf(now.y)]
    setWritten(now)
    if (x !== undefined && y !== undefined) onSet({ x, y })
  }
  return (
    <div
      className='spotrow'
      // What is half written stays until the row is left, not its first field.
      onBlur={({ currentTarget, relatedTarget }) => {
        if (!currentTarget.contains(relatedTarget)) setWritten(null)
      }}
    >
      {number !== null && <span className='q'>{number}</span>}
      {(['x', 'y'] as const).map((side) => (
        <label key={side} className='seed'>
          <span className='q'>{say(sides[side])}</span>
          <input
            className='entry n'
            inputMode='decimal'
            value={shown[side]}
            maxLength={8}
            onChange={(event) => write(side, event.target.value)}
          />
        </label>
      ))}
      {onRemove && (
        <button
          type='button'
          className='btn plain'
          aria-label={say('spot.remove', { number: number ?? 1 })}
          onClick={onRemove}
        >
          −
        </button>
      )}
    </div>
  )
}
