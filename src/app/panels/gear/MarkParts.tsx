/** Pens for findings on a sketch of gear: cracks, cuts, holes, stains. The same for what is wrong and what only looks wrong. */
import type { ReactNode } from 'react'

/** Along the turn of a group, so that each finding is written once and lies where it is needed. */
export const put = (x: number, y: number, turn: number, what: ReactNode) => (
  <g transform={`translate(${x} ${y}) rotate(${turn})`}>{what}</g>
)

export const crack = (x: number, y: number, turn = 0, size = 1) =>
  put(x, y, turn, <path d='M-26 0L-14 5L-6 -4L4 4L13 -3L26 2' className='d-wire' transform={`scale(${size})`} />)
export const cut = (x: number, y: number, turn = 0, length = 30) =>
  put(
    x,
    y,
    turn,
    <path
      d={`M${-length} 0Q0 -7 ${length} 0Q0 7 ${-length} 0Z`}
      className='d-edge'
      style={{ fill: 'var(--m-steel)' }}
    />,
  )
export const hole = (x: number, y: number, r = 6) => (
  <g>
    <circle cx={x} cy={y} r={r} style={{ fill: 'var(--ink)' }} />
    <circle cx={x} cy={y} r={r + 4} className='d-thin' style={{ fill: 'none' }} />
  </g>
)
export const stain = (x: number, y: number, material: string, size = 1) => (
  <path
    transform={`translate(${x} ${y}) scale(${size})`}
    d='M-34 2C-30 -16 -8 -20 6 -14C22 -20 38 -8 32 6C28 20 6 16 -4 20C-20 22 -38 16 -34 2Z'
    style={{ fill: `var(--m-${material})`, opacity: 0.75 }}
  />
)
export const strokes = (x: number, y: number, turn: number, count: number, length: number) =>
  put(
    x,
    y,
    turn,
    <path
      d={Array.from(
        { length: count },
        (_, i) => `M${(i - (count - 1) / 2) * 9} ${(i % 3) * 3}v${length - (i % 2) * 5}`,
      ).join('')}
      className='d-thin'
    />,
  )
export const specks = (x: number, y: number, wide: number, high: number, material: string) => (
  <g style={{ fill: `var(--m-${material})`, stroke: 'var(--ink)', strokeWidth: 0.75 }}>
    {Array.from({ length: 14 }, (_, i) => (
      <circle
        key={i}
        cx={x + (((i * 37) % 100) / 100 - 0.5) * wide}
        cy={y + (((i * 61) % 100) / 100 - 0.5) * high}
        r={2 + (i % 3)}
      />
    ))}
  </g>
)
/** Strands that stand off. */
export const fray = (x: number, y: number, turn = 0, material = 'copper') =>
  put(
    x,
    y,
    turn,
    <path
      d='M-30 0C-12 -18 12 -18 30 0M-30 0C-12 -8 12 -8 30 0M-30 0C-12 18 12 18 30 0M-30 0C-12 8 12 8 30 0M-8 -12L-14 -28M6 -13L14 -30M2 12L8 27'
      style={{ fill: 'none', stroke: `var(--m-${material})`, strokeWidth: 3.5 }}
    />,
  )
export const drops = (x: number, y: number) => (
  <g style={{ fill: 'var(--m-water)', stroke: 'var(--ink)', strokeWidth: 0.75 }}>
    {[0, 1, 2, 3, 4].map((i) => (
      <path
        key={i}
        transform={`translate(${x + (i - 2) * 26} ${y + (i % 2) * 18})`}
        d='M0 -12C6 -3 7 1 7 4A7 7 0 0 1 -7 4C-7 1 -6 -3 0 -12Z'
      />
    ))}
  </g>
)
/** Where something ought to be and is not. */
export const gone = (x: number, y: number, width: number, height: number) => (
  <rect
    x={x}
    y={y}
    width={width}
    height={height}
    style={{ fill: 'var(--paper)', stroke: 'var(--ink)', strokeWidth: 1.5, strokeDasharray: '6 5' }}
  />
)
export const swelling = (x: number, y: number, material: string, turn = 0) =>
  put(x, y, turn, <ellipse rx='34' ry='17' className='d-edge' style={{ fill: `var(--m-${material})` }} />)
export const mud = (x: number, y: number, size = 1) => stain(x, y, 'soil', size)
