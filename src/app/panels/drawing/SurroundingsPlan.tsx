/** What stands and lies about the pole, on the plan: road, path and fence along the line, the others where they are. */
import { say } from '../../../text'
import { type Scale, tenth } from './pen'
import type { Surrounding } from './siteView'

interface Props {
  readonly surroundings: readonly Surrounding[]
  readonly scale: Scale
  readonly width: number
  readonly height: number
}

export function SurroundingsPlan({ surroundings, scale, width, height }: Props) {
  return surroundings.map((it) => {
    const y = scale.y(it.at.y)
    if (it.looks === 'road')
      return <Strip key={it.id} from={it.at.y} wide={roadWide} name='road' {...{ scale, width }} />
    if (it.looks === 'path') return <Strip key={it.id} from={it.at.y} wide={1.6} name='path' {...{ scale, width }} />
    if (it.looks === 'fence') return <Fence key={it.id} y={y} width={width} />
    // Only what lies on the sheet whole.
    const [x, far] = [scale.x(it.at.x), reachOf(it.looks) * scale.perMetre]
    const isOnSheet = x > far && x < width - far && y > far && y < height - far
    return isOnSheet && <Mark key={it.id} it={it} scale={scale} />
  })
}

/** As in the scene, metres; common practice, no source. */
const roadWide = 5

/** Away from the pole, from its near edge. */
function Strip({
  from,
  wide,
  name,
  scale,
  width,
}: {
  from: number
  wide: number
  name: 'road' | 'path'
  scale: Scale
  width: number
}) {
  const to = from < 0 ? from - wide : from + wide
  const [top, bottom] = [scale.y(Math.max(from, to)), scale.y(Math.min(from, to))]
  const word = scale.y(from) + (from < 0 ? 15 : -5)
  return (
    <g>
      <rect x='0' y={tenth(top)} width={width} height={tenth(bottom - top)} style={{ fill: 'url(#road)' }} />
      <path d={`M0 ${tenth(top)}H${width}M0 ${tenth(bottom)}H${width}`} className='d-thin' />
      <text x='10' y={tenth(word)} className='t-i halo'>
        {say(`drawing.${name}`)}
      </text>
    </g>
  )
}

function Fence({ y, width }: { y: number; width: number }) {
  let crosses = ''
  for (let x = 8; x < width; x += 26) crosses += `M${x - 3} ${y - 3}l6 6m0 -6l-6 6`
  return (
    <g>
      <path d={`M0 ${y}H${width}${crosses}`} className='d-thin' />
      <text x='10' y={y - 7} className='t-i halo'>
        {say('drawing.fence')}
      </text>
    </g>
  )
}

/** Metres across and along of what is drawn by its outline. */
const outlines: Readonly<Partial<Record<Surrounding['looks'], readonly [number, number]>>> = {
  building: [9, 6],
  hut: [2.2, 1.9],
  gate: [3.4, 0.3],
  bench: [1.6, 0.5],
  block: [1.3, 0.7],
}

/** From its middle, metres. */
const reachOf = (looks: Surrounding['looks']): number => (looks === 'water' ? 3.8 : (outlines[looks]?.[0] ?? 2.8) / 2)

function Mark({ it: { looks, at }, scale }: { it: Surrounding; scale: Scale }) {
  const [x, y] = [tenth(scale.x(at.x)), tenth(scale.y(at.y))]
  const size = outlines[looks]
  if (looks === 'service-span' || looks === 'animals') return null
  if (looks === 'water')
    return (
      <ellipse
        cx={x}
        cy={y}
        rx={3.8 * scale.perMetre}
        ry={2.4 * scale.perMetre}
        className='d-thin'
        strokeDasharray='6 3'
      />
    )
  if (!size) return <circle cx={x} cy={y} r={looks === 'trees' ? 1.4 * scale.perMetre : 3} className='d-thin' />
  const [long, wide] = [size[0] * scale.perMetre, size[1] * scale.perMetre]
  return (
    <rect x={tenth(x - long / 2)} y={tenth(y - wide / 2)} width={tenth(long)} height={tenth(wide)} className='d-thin' />
  )
}
