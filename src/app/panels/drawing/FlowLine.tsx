/** A current along a line: dashes as dense as the logarithm of its amperes, all passing at one pace, and an arrow head. */
import { type CSSProperties } from 'react'
import { dashDensity, leastShare } from '../../stores/flows'
import { type Point, tenth } from './pen'

export interface FlowLineProps {
  readonly path: string
  /** Signed: negative runs against the path. */
  readonly amperes: number
  readonly most: number
  /** Where the arrow head stands, and which way the path runs there. */
  readonly head?: { readonly at: Point; readonly along: Point }
  /** On a wire instead of in a lead. */
  readonly isOnWire?: boolean
}

/** Pixels from dash to dash, sparse and dense, and the share of it that is a dash. */
const period = { sparse: 30, dense: 8 } as const
const fill = { sparse: 0.2, dense: 0.6 } as const

export function FlowLine({ path, amperes, most, head, isOnWire = false }: FlowLineProps) {
  const size = Math.abs(amperes)
  if (size < most * leastShare) return null
  const density = dashDensity(size, most)
  const length = period.sparse + (period.dense - period.sparse) * density
  const dash = length * (fill.sparse + (fill.dense - fill.sparse) * density)
  const style = {
    strokeDasharray: `${tenth(dash)} ${tenth(length - dash)}`,
    '--flow-step': tenth(amperes < 0 ? length : -length),
  } as CSSProperties
  return (
    <g>
      <path d={path} className={isOnWire ? 'd-flow d-flow-wire' : 'd-flow'} style={style} />
      {head && <path d={arrowAt(head.at, head.along, Math.sign(amperes))} className='d-flow-head' />}
    </g>
  )
}

function arrowAt([x, y]: Point, along: Point, sign: number): string {
  const length = Math.hypot(along[0], along[1]) || 1
  const [ux, uy] = [(sign * along[0]) / length, (sign * along[1]) / length]
  const corner = (back: number, aside: number): string =>
    `${tenth(x - ux * back - uy * aside)} ${tenth(y - uy * back + ux * aside)}`
  return `M${corner(-6, 0)}L${corner(5, 5.5)}L${corner(5, -5.5)}Z`
}
