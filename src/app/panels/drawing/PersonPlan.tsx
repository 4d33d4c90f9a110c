/** A person seen from above: shoulders, helmet, tick for the face; and the flag with the letters of the role. */
import { tenth } from './pen'

export interface PersonPlanProps {
  readonly x: number
  readonly y: number
  /** Degrees clockwise from north. */
  readonly facing: number
}

export function PersonPlan({ x, y, facing }: PersonPlanProps) {
  return (
    <g transform={`translate(${tenth(x)} ${tenth(y)}) rotate(${tenth(facing)})`}>
      <ellipse rx='11' ry='6.5' style={{ fill: 'var(--field)', stroke: 'var(--ink)', strokeWidth: 2 }} />
      <circle r='5.5' className='d-edge' style={{ fill: 'var(--field)' }} />
      <path d='M0 -4.5v-5' className='d-edge' />
    </g>
  )
}

/** Pixels. */
export const flagWidth = (letters: string): number => letters.length * 8 + 12

export interface PersonFlagProps {
  readonly left: number
  readonly middle: number
  readonly letters: string
  readonly isSelected: boolean
}

export function PersonFlag({ left, middle, letters, isSelected }: PersonFlagProps) {
  const width = flagWidth(letters)
  return (
    <g transform={`translate(${tenth(left)} ${tenth(middle - 10)})`}>
      <rect
        width={width}
        height='20'
        style={{
          fill: isSelected ? 'var(--accent)' : 'var(--field)',
          stroke: 'var(--ink)',
          strokeWidth: 'var(--p-thin)',
        }}
      />
      <text x={width / 2} y={14.5} className={isSelected ? 't-b t-on mid' : 't-b mid'}>
        {letters}
      </text>
    </g>
  )
}
