/** Small marks: brand, earth, conductor flags, tally verdicts, severity pennants, hazard triangles. */
import { tenth } from './pen'

/** What the crew knows of a conductor; `site-potential` is an earthed conductor after a livening. */
export type WireState = 'live' | 'proven' | 'earthed' | 'site-potential'

export const stateColour: Readonly<Record<WireState, string>> = {
  live: 'var(--live)',
  proven: 'var(--proven)',
  earthed: 'var(--earthed)',
  'site-potential': 'var(--risen)',
}

export function BrandMark() {
  return (
    <svg width='26' height='26' viewBox='0 0 26 26' aria-hidden='true'>
      <path d='M13 2V11' className='d-wire' />
      <path d='M2 12H24M6 17H20M10 22H16' className='d-wire' style={{ stroke: 'var(--accent)' }} />
    </svg>
  )
}

/** diamond = treat as live, ring = proven dead, ring on earth bars = earthed, ring on a wave = at site potential */
export function Flag({ x, y, letter, state }: { x: number; y: number; letter: string; state: WireState }) {
  const colour = stateColour[state]
  if (state === 'live')
    return (
      <g>
        <path d={`M${x} ${y - 13}L${x + 13} ${y}L${x} ${y + 13}L${x - 13} ${y}Z`} style={{ fill: colour }} />
        <text x={x} y={y + 4.5} className='t-b t-paper mid'>
          {letter}
        </text>
      </g>
    )
  return (
    <g>
      <circle cx={x} cy={y} r='10' style={{ fill: 'var(--paper)', stroke: colour, strokeWidth: 'var(--p-edge)' }} />
      <text x={x} y={y + 4.5} className='t-b mid' style={{ fill: colour }}>
        {letter}
      </text>
      {state === 'earthed' && (
        <path
          d={`M${x - 9} ${y + 13.5}h18M${x - 5} ${y + 17}h10`}
          style={{ stroke: colour, strokeWidth: 'var(--p-edge)' }}
        />
      )}
      {state === 'site-potential' && (
        <path
          d={`M${x - 10} ${y + 16}q5 -6 10 0t10 0`}
          style={{ stroke: colour, strokeWidth: 'var(--p-wire)', fill: 'none' }}
        />
      )}
    </g>
  )
}

/** Ring = not felt, then one to five strokes; the fifth crosses. */
export function Tally({ strokes }: { strokes: number }) {
  const own = { stroke: 'currentColor' }
  return (
    <svg width='28' height='20' viewBox='0 0 28 20' aria-hidden='true'>
      {strokes === 0 && <circle cx='14' cy='10' r='5.5' className='d-edge' style={own} />}
      {Array.from({ length: Math.min(strokes, 4) }, (_, i) => (
        <path key={i} d={`M${4 + i * 6.5} 3V17`} className='d-wire' style={own} />
      ))}
      {strokes >= 5 && <path d='M0 15L28 5' className='d-wire' style={own} />}
    </svg>
  )
}

/** open = minor, half = major, full red = critical */
export function Pennant({ severity }: { severity: 'critical' | 'major' | 'minor' }) {
  const isCritical = severity === 'critical'
  return (
    <svg width='20' height='18' viewBox='0 0 20 18' aria-hidden='true'>
      {isCritical && <path d='M4 2L18 6.5L4 11Z' style={{ fill: 'var(--live)' }} />}
      {severity === 'major' && <path d='M4 2L11 4.25V8.75L4 11Z' style={{ fill: 'var(--ink)' }} />}
      <path
        d='M4 1V17M4 2L18 6.5L4 11'
        className='d-edge'
        style={{ stroke: isCritical ? 'var(--live)' : 'var(--ink)' }}
      />
    </svg>
  )
}

/** The trainee's own mark. */
export function HazardMark({ x, y, label }: { x: number; y: number; label: string }) {
  return (
    <g transform={`translate(${tenth(x)} ${tenth(y)})`}>
      <path d='M0 -13L12 8H-12Z' style={{ fill: 'var(--accent)', stroke: 'var(--accent)', strokeWidth: 1.5 }} />
      <text y={4.5} className='t-b t-on mid'>
        {label}
      </text>
    </g>
  )
}

/** A finger never hides the point: a ring with a cross. */
export function Aim({ x, y }: { x: number; y: number }) {
  return (
    <g>
      <circle cx={x} cy={y} r='15' className='d-acc' style={{ strokeWidth: 2.5 }} />
      <path d={`M${x - 24} ${y}h48M${x} ${y - 24}v48`} className='d-acc' />
    </g>
  )
}

export function North({ x, y }: { x: number; y: number }) {
  return (
    <g transform={`translate(${x} ${y})`}>
      <circle r='15' style={{ fill: 'var(--paper)', stroke: 'var(--ink)', strokeWidth: 'var(--p-thin)' }} />
      <path d='M0 -12L5 7L0 3L-5 7Z' style={{ fill: 'var(--ink)' }} />
      <text y={31} className='t-b halo mid'>
        N
      </text>
    </g>
  )
}

export function ScaleBar({
  x,
  y,
  perMetre,
  marks,
}: {
  x: number
  y: number
  perMetre: number
  marks: readonly number[]
}) {
  const last = marks.at(-1)!
  return (
    <g>
      <rect x={x - 12} y={y - 26} width={tenth(last * perMetre + 36)} height='40' style={{ fill: 'var(--paper)' }} />
      <path d={`M${x} ${y}h${tenth(last * perMetre)}`} className='d-edge' />
      {marks.map((mark, i) => (
        <g key={mark}>
          <path d={`M${tenth(x + mark * perMetre)} ${y - 5}v10`} className='d-edge' />
          <text x={tenth(x + mark * perMetre)} y={y - 9} className='mid'>
            {i === marks.length - 1 ? `${mark} m` : mark}
          </text>
          {i % 2 === 0 && marks[i + 1] !== undefined && (
            <rect
              x={tenth(x + mark * perMetre)}
              y={y - 2.5}
              width={tenth((marks[i + 1]! - mark) * perMetre)}
              height='5'
              style={{ fill: 'var(--ink)' }}
            />
          )}
        </g>
      ))}
    </g>
  )
}
