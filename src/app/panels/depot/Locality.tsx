/** The line as a surveyor would sketch it before going there: switches, the worked pole, what crosses, and how far apart. */
import { say } from '../../../text/front'
import { plain } from '../../../text/quantities'
import type { FolderCard, Station } from '../../storage/makeCard'

/** Open country: hills and trees of nowhere in particular. */
const contours = [
  'M330 22C372 14 402 44 396 82C390 118 344 140 306 126C266 112 262 74 284 50C296 36 312 26 330 22Z',
  'M334 42C362 38 380 56 376 80C372 102 342 114 318 106C294 96 292 74 306 60C314 50 324 44 334 42Z',
  'M336 60C350 58 360 68 358 80C354 92 340 96 330 92C318 86 318 76 324 70C328 64 332 60 336 60Z',
  'M0 52C40 44 66 22 78 0',
  'M0 78C58 68 96 40 112 0',
  'M0 104C76 92 128 58 146 0',
]
const trees = [
  [42, 46],
  [58, 58],
  [30, 66],
  [344, 214],
  [360, 204],
  [372, 222],
] as const

/** Pixels: the line lies at this height of the sketch, its first and last station this far in. */
const [height, margin, width] = [158, 46, 416]

export function Locality({ card }: { card: FolderCard }) {
  const { stations } = card
  const step = (width - 2 * margin) / Math.max(1, stations.length - 1)
  const at = (index: number): number => margin + index * step
  const crossing = stations.findIndex((it) => it.kind === 'crossing')
  return (
    <svg viewBox={`0 0 ${width} 250`} width='100%' role='img' aria-label={textOf(card)} className='map'>
      <rect width={width} height='250' style={{ fill: 'var(--paper)', stroke: 'var(--ink)', strokeWidth: 3 }} />
      {contours.map((d, i) => (
        <path
          key={d}
          d={d}
          style={{ fill: 'none', stroke: 'var(--contour)', strokeWidth: i % 3 === 0 ? 1.5 : 0.75, opacity: 0.75 }}
        />
      ))}
      {trees.map(([x, y]) => (
        <circle
          key={x}
          cx={x}
          cy={y}
          r='6'
          style={{ fill: 'var(--m-leaf)', stroke: 'var(--ink)', strokeWidth: 'var(--p-hair)' }}
        />
      ))}
      <path d={`M0 ${height}H${width}`} className='d-wire' />
      {crossing >= 0 && <Crossing x={at(crossing)} />}
      {stations.map((station, i) => (
        <Mark key={`${station.kind}${station.label}`} station={station} x={at(i)} />
      ))}
      {stations.slice(1).map((station, i) => (
        <text key={station.along} x={at(i) + step / 2} y={height + 46} className='t-n halo mid'>
          {say('depot.metres', { metres: plain(Math.round(station.along - stations[i]!.along), 0) })}
        </text>
      ))}
    </svg>
  )
}

function Crossing({ x }: { x: number }) {
  return (
    <>
      <path d={`M${x + 18} 20L${x - 14} 232`} className='d-live' />
      {[58, 100, 196].map((y) => (
        <path key={y} d={`M${x + 21 - y * 0.151 - 8} ${y - 3}l14 6`} className='d-live' />
      ))}
      <text x={x + 26} y='30' className='t-live halo'>
        {say('depot.crossing')}
      </text>
    </>
  )
}

function Mark({ station: { kind, label }, x }: { station: Station; x: number }) {
  if (kind === 'crossing') return null
  const isPole = kind === 'pole'
  return (
    <>
      <circle
        cx={x}
        cy={height}
        r={isPole ? 8 : 4.5}
        style={{
          fill: 'var(--paper)',
          stroke: isPole ? 'var(--accent)' : 'var(--ink)',
          strokeWidth: isPole ? 3 : 1.5,
        }}
      />
      <text x={x} y={height - 16} className='t-b halo mid'>
        {label}
      </text>
    </>
  )
}

function textOf({ stations }: FolderCard): string {
  const told = stations.map(({ kind, label, along }) => {
    const metres = plain(Math.round(Math.abs(along)), 0)
    if (kind === 'switch') return say('depot.station.switch', { label, metres })
    return kind === 'pole' ? label : say('depot.station.crossing', { metres })
  })
  return `${say('depot.map')}: ${told.join(', ')}`
}
