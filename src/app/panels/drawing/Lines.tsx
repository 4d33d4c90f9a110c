/** Drafting lines: wires in plan, dimensions, callouts, leads, hatching. */
import { FlowLine, type FlowLineProps } from './FlowLine'
import { type Point, pathOf, tenth } from './pen'
import { type WireState, stateColour } from './Marks'

/** Live: solid and barbed. Proven: hollow. Earthed: hollow with earth marks. At site potential: hollow and waved. */
export function Wire({ points, state, step = 40 }: { points: readonly Point[]; state: WireState; step?: number }) {
  const line = pathOf(points)
  const colour = stateColour[state]
  return (
    <g>
      {state === 'live' ? (
        <>
          <path d={line} style={{ stroke: 'var(--paper)', strokeWidth: 6.5, fill: 'none' }} />
          <path d={line} className='d-live' />
        </>
      ) : (
        <>
          <path d={line} style={{ stroke: colour, strokeWidth: 6, fill: 'none' }} />
          <path d={line} style={{ stroke: 'var(--paper)', strokeWidth: 3, fill: 'none' }} />
        </>
      )}
      <path
        d={marksAlong(points, state, step)}
        style={{ stroke: colour, strokeWidth: 'var(--p-edge)', fill: 'none' }}
      />
    </g>
  )
}

function marksAlong(points: readonly Point[], state: WireState, step: number): string {
  if (state === 'proven') return ''
  let marks = ''
  const every = state === 'live' ? step : step * 2
  for (let i = 1; i < points.length; i++) {
    const a = points[i - 1]!
    const b = points[i]!
    const length = Math.sqrt((b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2)
    const u: Point = [(b[0] - a[0]) / length, (b[1] - a[1]) / length]
    for (let t = step / 2; t < length; t += every) marks += markAt([a[0] + u[0] * t, a[1] + u[1] * t], u, state)
  }
  return marks
}

function markAt(at: Point, u: Point, state: WireState): string {
  const v: Point = [-u[1], u[0]]
  const to = (along: number, across: number) =>
    `${tenth(at[0] + u[0] * along + v[0] * across)} ${tenth(at[1] + u[1] * along + v[1] * across)}`
  if (state === 'live') return `M${to(-4, -5)}L${to(4, 5)}`
  if (state === 'site-potential') return `M${to(-9, 8)}Q${to(-4.5, 4)} ${to(0, 8)}T${to(9, 8)}`
  return [
    [4, 7],
    [7.5, 4.5],
    [11, 2],
  ]
    .map(([across, half]) => `M${to(-half!, across!)}L${to(half!, across!)}`)
    .join('')
}

/** Oblique ticks, extension lines that stop 3 px short, figure in a gap of the line. */
export function Dimension({ from, to, label, offset = 0 }: { from: Point; to: Point; label: string; offset?: number }) {
  const length = Math.sqrt((to[0] - from[0]) ** 2 + (to[1] - from[1]) ** 2)
  if (length < 1) return null
  const u: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length]
  const v: Point = [-u[1], u[0]]
  const shift = (p: Point, by: number): Point => [p[0] + v[0] * by, p[1] + v[1] * by]
  const a = shift(from, offset)
  const b = shift(to, offset)
  let angle = (Math.atan2(u[1], u[0]) * 180) / Math.PI
  if (angle > 89 || angle <= -90) angle += 180
  if (angle > 180) angle -= 360
  const sign = Math.sign(offset) || 1
  const tick = (p: Point) =>
    pathOf([
      [p[0] - u[0] * 4 + v[0] * 4, p[1] - u[1] * 4 + v[1] * 4],
      [p[0] + u[0] * 4 - v[0] * 4, p[1] + u[1] * 4 - v[1] * 4],
    ])
  return (
    <g>
      {offset !== 0 && (
        <path
          d={[from, to].map((p) => pathOf([shift(p, 3 * sign), shift(p, offset + 5 * sign)])).join('')}
          className='d-hair'
        />
      )}
      <path d={pathOf([a, b])} className='d-hair' style={{ stroke: 'var(--ink-2)' }} />
      <path d={tick(a) + tick(b)} className='d-thin' />
      <text
        className='halo mid'
        transform={`translate(${tenth((a[0] + b[0]) / 2)} ${tenth((a[1] + b[1]) / 2)}) rotate(${tenth(angle)})`}
        dy='4.5'
      >
        {label}
      </text>
    </g>
  )
}

/** Dot on the thing, straight leader, 8 px foot, word. */
export function Callout({
  at,
  word,
  label,
  toLeft = false,
}: {
  at: Point
  word: Point
  label: string
  toLeft?: boolean
}) {
  const foot = toLeft ? -8 : 8
  return (
    <g>
      <circle cx={tenth(at[0])} cy={tenth(at[1])} r='2' style={{ fill: 'var(--ink)' }} />
      <path d={`${pathOf([at, word])}h${foot}`} className='d-thin' />
      <text x={tenth(word[0] + foot * 1.5)} y={tenth(word[1] + 4.5)} className={toLeft ? 'halo end' : 'halo'}>
        {label}
      </text>
    </g>
  )
}

/** Copper between two ink lines, true route; thin for hops and bonds. */
export function Lead({ path, isThin = false, flow }: { path: string; isThin?: boolean; flow?: LeadFlow }) {
  return (
    <g className={isThin ? 'd-thin-lead' : undefined}>
      <path d={path} className='d-lead-o' />
      <path d={path} className='d-lead-i' />
      {flow && <FlowLine path={path} {...flow} />}
    </g>
  )
}

type LeadFlow = Pick<FlowLineProps, 'amperes' | 'most' | 'head'>

export function Hatch({
  id,
  colour = 'var(--ink-3)',
  gap = 6,
  angle = 45,
}: {
  id: string
  colour?: string
  gap?: number
  angle?: number
}) {
  return (
    <pattern id={id} width={gap} height={gap} patternUnits='userSpaceOnUse' patternTransform={`rotate(${angle})`}>
      <path d={`M0 0V${gap}`} style={{ stroke: colour, strokeWidth: 'var(--p-hair)' }} />
    </pattern>
  )
}
