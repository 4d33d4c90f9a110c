/** A person seen from above: shoulders, helmet, tick for the face, role letters in a flag. */
import { tenth } from './pen'

export interface PersonPlanProps {
  readonly x: number
  readonly y: number
  /** Degrees clockwise from north. */
  readonly facing: number
  readonly letters: string
  readonly isSelected: boolean
  /** Where the flag stands, from the person. */
  readonly flag: readonly [number, number]
}

export function PersonPlan({ x, y, facing, letters, isSelected, flag }: PersonPlanProps) {
  const width = letters.length * 8 + 12
  const left = x + flag[0] - (flag[0] < 0 ? width : 0)
  return (
    <g>
      <path d={`M${tenth(x)} ${tenth(y)}L${tenth(x + flag[0])} ${tenth(y + flag[1])}`} className='d-thin' />
      <g transform={`translate(${tenth(x)} ${tenth(y)}) rotate(${tenth(facing)})`}>
        <ellipse rx='11' ry='6.5' style={{ fill: 'var(--field)', stroke: 'var(--ink)', strokeWidth: 2 }} />
        <circle r='5.5' className='d-edge' style={{ fill: 'var(--field)' }} />
        <path d='M0 -4.5v-5' className='d-edge' />
      </g>
      <g transform={`translate(${tenth(left)} ${tenth(y + flag[1] - 10)})`}>
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
    </g>
  )
}
