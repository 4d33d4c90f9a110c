/** The tape on a drawing: a drafting dimension between two points of it. */
import { metres } from '../../../text'
import { tenth } from './pen'

export interface TapeMarkProps {
  readonly from: readonly [number, number]
  readonly to: readonly [number, number]
  /** Metres, of what this drawing shows true. */
  readonly length: number
}

export function TapeMark({ from: [x1, y1], to: [x2, y2], length }: TapeMarkProps) {
  const long = Math.hypot(x2 - x1, y2 - y1) || 1
  const [nx, ny] = [(-(y2 - y1) / long) * 5, ((x2 - x1) / long) * 5]
  const tick = (x: number, y: number) => `M${tenth(x - nx)} ${tenth(y - ny)}L${tenth(x + nx)} ${tenth(y + ny)}`
  return (
    <g>
      <path
        d={`M${tenth(x1)} ${tenth(y1)}L${tenth(x2)} ${tenth(y2)}${tick(x1, y1)}${tick(x2, y2)}`}
        className='d-acc'
      />
      <text x={tenth((x1 + x2) / 2)} y={tenth((y1 + y2) / 2 - 6)} className='t-b halo mid'>
        {metres(length)}
      </text>
    </g>
  )
}
