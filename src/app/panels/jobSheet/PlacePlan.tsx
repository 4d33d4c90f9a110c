/**
 * On the plan, what stands about the pole beside what every scenario has: a second leg, transformers, somebody's source,
 * lines beside, fences, taps, other people's earths, the truck's pads. Drawn and named as anybody sees it who comes there.
 */
import type { Belief } from '../../../engine'
import type { Speaker } from '../../../text'
import type { Scale } from '../drawing/pen'

interface PlaceProps {
  readonly belief: Belief
  readonly speaker: Speaker
  readonly scale: Scale
  readonly width: number
  readonly height: number
}

export function PlacePlan({ belief, speaker, scale: { x: X, y: Y }, width, height }: PlaceProps) {
  const { place } = belief.sheet
  const isOnSheet = ({ x, y }: { x: number; y: number }) => X(x) > 0 && X(x) < width && Y(y) > 0 && Y(y) < height
  const leg = place.secondLeg
  return (
    <g>
      {place.parallels.map(({ id, from, to, conductors }) => {
        const seen = conductors.filter((it) => Y(it.x) > 0 && Y(it.x) < height)
        const ends = [Math.max(0, X(from)), Math.min(width, X(to))] as const
        return (
          seen.length > 0 &&
          ends[0] < ends[1] && (
            <g key={id}>
              {seen.map((it) => (
                <path
                  key={it.x}
                  d={`M${ends[0]} ${Y(it.x)}H${ends[1]}`}
                  className='d-live'
                  style={{ strokeWidth: 1.5 }}
                />
              ))}
              <text
                x={(ends[0] + 2 * ends[1]) / 3}
                y={Y(Math.max(...seen.map((it) => it.x))) - 5}
                className='t-live halo'
              >
                {speaker.say(`thing.${id}`)}
              </text>
            </g>
          )
        )
      })}
      {place.grounds.map(({ id, kind, points }) => {
        const seen = points.filter(isOnSheet)
        const [first] = seen
        if (!first) return null
        return (
          <g key={id}>
            {kind === 'fence' && (
              <path d={seen.map((it, i) => `${i ? 'L' : 'M'}${X(it.x)} ${Y(it.y)}`).join('')} className='d-thin' />
            )}
            {seen.map((it) => (
              <path
                key={`${it.x} ${it.y}`}
                d={kind === 'fence' ? cross(X(it.x), Y(it.y)) : earth(X(it.x), Y(it.y))}
                className='d-thin'
              />
            ))}
            <text x={X(first.x) + 9} y={Y(first.y) - 5} className='t-i halo'>
              {speaker.say(`thing.${id}`)}
            </text>
          </g>
        )
      })}
      {place.transformers
        .filter(({ along }) => isOnSheet({ x: along, y: 0 }))
        .map(({ id, along }) => (
          <g key={id}>
            <circle cx={X(along)} cy={Y(0) - 5} r='6' className='d-edge' style={{ fill: 'var(--paper)' }} />
            <circle cx={X(along)} cy={Y(0) + 4} r='6' className='d-edge' />
            <text x={X(along) + 10} y={Y(0) + 34} className='t-b halo'>
              {speaker.say(`thing.${id}`)}
            </text>
          </g>
        ))}
      {place.sources
        .filter(({ at }) => isOnSheet(at))
        .map(({ id, at }) => (
          <g key={id}>
            <rect
              x={X(at.x) - 7}
              y={Y(at.y) - 7}
              width='14'
              height='14'
              className='d-edge'
              style={{ fill: 'var(--paper)' }}
            />
            <text x={X(at.x) + 11} y={Y(at.y) + 4} className='halo'>
              {speaker.say(`thing.${id}`)}
            </text>
          </g>
        ))}
      {leg && <circle cx={X(leg.x)} cy={Y(leg.y)} r='5' className='d-edge' style={{ fill: 'var(--m-wood)' }} />}
      {place.truck?.outriggers.map((pad) => (
        <circle
          key={`${pad.x} ${pad.y}`}
          cx={X(belief.truck.x + pad.x)}
          cy={Y(belief.truck.y + pad.y)}
          r='4'
          className='d-edge'
          style={{ fill: 'var(--field)' }}
        />
      ))}
    </g>
  )
}

const cross = (x: number, y: number): string => `M${x - 3} ${y - 3}l6 6m0 -6l-6 6`
const earth = (x: number, y: number): string => `M${x} ${y - 8}v8m-6 0h12m-9 3h6m-4 3h2`
