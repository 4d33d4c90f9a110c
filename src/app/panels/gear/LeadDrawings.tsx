/** Leads and sets as they lie before one: every end with its clamp, in order, so that each can be turned over by itself. */
import type { ReactNode } from 'react'
import { Cable, Clamp, fill } from './DrawingParts'

export interface EndPlace {
  readonly x: number
  readonly y: number
  readonly size: number
}

type Places = Readonly<Record<string, EndPlace>>

const row = (ends: readonly string[], from: number, pitch: number, size: number, y = 20): Places =>
  Object.fromEntries(ends.map((end, i) => [end, { x: from + i * pitch, y, size }]))

const along = ['earth', '1', '2', '3']
const chain = row(along, 24, 154, 0.72)
const star = { ...row(['earth'], 24, 0, 0.72), ...row(['1', '2', '3'], 226, 138, 0.72) }
const bar = row(['n', '1', '2', '3', '4'], 50, 112, 0.66, 12)
const pair = (a: string, b: string): Places => row([a, b], 80, 390, 1, 30)

/** Where on its sketch each end of a lead lies. */
export const endPlaces: Readonly<Record<string, Places>> = {
  'earth-lead': chain,
  'spring-lead': chain,
  'earth-set': star,
  'lv-bond-set': bar,
  'bond-lead': pair('metal', 'line'),
  'bypass-lead': pair('near', 'far'),
  'truck-bond-lead': pair('truck', 'earth'),
}

/** Where the cable leaves its ferrule. */
const tail = ({ x, y, size }: EndPlace): readonly [number, number] => [x + 102 * size, y + 94.5 * size]

/** Hangs from ferrule to ferrule. */
function loops(places: readonly EndPlace[]): string {
  const [first, ...others] = places.map(tail)
  let from = first!
  const pieces = others.map((to) => {
    const piece = `C${from[0] + 26} 262 ${to[0] + 26} 262 ${to[0]} ${to[1]}`
    from = to
    return piece
  })
  return `M${first![0]} ${first![1]}${pieces.join('')}`
}

const toHub = (place: EndPlace, x: number, y: number): string => {
  const [from, at] = tail(place)
  return `M${from} ${at}C${from + 24} ${at + 60} ${x} ${at + 40} ${x} ${y}`
}

const clamps = (places: Places, without: readonly string[] = []): ReactNode =>
  Object.entries(places).map(([end, place]) => (without.includes(end) ? null : <Clamp key={end} {...place} />))

/** Two arms on a hinge, pressed together by the coil round it. */
const SpringClamp = ({ x, y, size }: EndPlace) => (
  <g transform={`translate(${x} ${y}) scale(${size})`}>
    <path
      d='M30 150L26 92L8 40C4 14 30 4 40 26L46 92L42 150ZM58 150L62 92L78 40C82 14 56 4 48 26L42 92L46 150Z'
      className='d-edge'
      style={fill('aluminium')}
    />
    <circle cx='44' cy='92' r='15' className='d-edge' style={fill('steel')} />
    <path d='M32 92h24M33 86h22M33 98h22' className='d-thin' />
    <path d='M78 88h24v13h-24Z' className='d-edge' style={fill('copper')} />
  </g>
)

const boss = (
  <g>
    <path d='M292 196h76v36h-76Z' className='d-edge' style={fill('copper')} />
    <circle cx='330' cy='214' r='9' className='d-edge' style={fill('steel')} />
  </g>
)

const starred = (places: Places): ReactNode => (
  <g>
    {Object.entries(places).map(([end, place], i) => (
      <Cable key={end} d={toHub(place, 300 + i * 20, 200)} material='copper' width={12} />
    ))}
    {boss}
  </g>
)

const twoEnded = (places: Places, width: number): ReactNode => (
  <g>
    <Cable d={loops(Object.values(places))} material='copper' width={width} />
    {clamps(places)}
  </g>
)

export const leadDrawings: Readonly<Record<string, ReactNode>> = {
  'earth-lead': (
    <g>
      <Cable d={loops(along.map((end) => chain[end]!))} material='copper' width={14} />
      {clamps(chain)}
    </g>
  ),
  'spring-lead': (
    <g>
      <Cable d={loops(along.map((end) => chain[end]!))} material='copper' width={14} />
      <Clamp {...chain.earth!} />
      {['1', '2', '3'].map((end) => (
        <SpringClamp key={end} {...chain[end]!} />
      ))}
    </g>
  ),
  'earth-set': (
    <g>
      {starred(star)}
      {clamps(star)}
    </g>
  ),
  'isolation-earth': (
    <g>
      {starred(star)}
      {clamps(star, ['earth'])}
      <path d='M24 60h70l8 20h-86Z' className='d-edge' style={fill('copper')} />
    </g>
  ),
  'lv-bond-set': (
    <g>
      {Object.entries(bar).map(([end, place]) => {
        const [x, y] = tail(place)
        return <Cable key={end} d={`M${x} ${y}C${x + 18} ${y + 60} ${x} 170 ${x} 214`} material='copper' width={9} />
      })}
      <path d='M96 206h500v24h-500Z' className='d-edge' style={fill('copper')} />
      {Object.values(bar).map((place) => (
        <circle key={place.x} cx={tail(place)[0]} cy='218' r='7' className='d-edge' style={fill('steel')} />
      ))}
      {clamps(bar)}
    </g>
  ),
  'bond-lead': twoEnded(pair('metal', 'line'), 12),
  'bypass-lead': twoEnded(pair('near', 'far'), 15),
  'truck-bond-lead': (
    <g>
      {twoEnded(pair('truck', 'earth'), 11)}
      <circle cx='330' cy='110' r='62' className='d-edge' style={fill('steel')} />
      <circle cx='330' cy='110' r='44' className='d-edge' style={fill('copper')} />
      <circle cx='330' cy='110' r='16' className='d-edge' style={{ fill: 'var(--field)' }} />
    </g>
  ),
}
