/** Arms of the pole in elevation: as long as the wires that they carry ask for. */
import { say } from '../../../text'
import { Callout } from './Lines'
import { type Scale, pathOf, tenth } from './pen'
import type { SiteView } from './siteView'

/** Past the outer insulators, metres; common practice, no source. */
const past = 0.23

export function ElevationArms({ site, scale }: { site: SiteView; scale: Scale }) {
  const { x: X, y: Y } = scale
  const { arm, secondLeg } = site.pole
  const [west, east] = reach([...site.wires.map((wire) => -wire.across), ...(secondLeg ? [-secondLeg.y] : [])])
  const brace = (side: number) =>
    pathOf([
      [X(side * 0.6), Y(arm)],
      [X(side * 0.12), Y(arm - 0.5)],
    ])
  return (
    <g>
      {west < -0.6 && <path d={brace(-1)} className='d-edge' />}
      {east > 0.6 && <path d={brace(1)} className='d-edge' />}
      <rect
        x={tenth(X(west))}
        y={Y(arm + 0.06)}
        width={tenth((east - west) * scale.perMetre)}
        height={tenth(0.12 * scale.perMetre)}
        className='d-edge'
        style={{ fill: `var(--m-${site.arm})` }}
      />
      {site.lv.length > 0 && <LowArm site={site} scale={scale} />}
    </g>
  )
}

const reach = (across: readonly number[]): readonly [number, number] => [
  Math.min(0, ...across) - past,
  Math.max(0, ...across) + past,
]

function LowArm({ site, scale }: { site: SiteView; scale: Scale }) {
  const { x: X, y: Y } = scale
  const { lv } = site.pole
  const [west, east] = reach(site.lv.map((wire) => -wire.across))
  return (
    <g>
      <rect
        x={tenth(X(west))}
        y={Y(lv - 0.12)}
        width={tenth((east - west) * scale.perMetre)}
        height={tenth(0.1 * scale.perMetre)}
        className='d-edge'
        style={{ fill: 'var(--m-wood)' }}
      />
      {site.lv.map((wire) => {
        const x = X(-wire.across)
        const y = Y(lv)
        return (
          <g key={wire.id}>
            <rect x={x - 3.5} y={y - 3} width='7' height='7' style={{ fill: 'var(--m-glaze)' }} className='d-thin' />
            <circle cx={x} cy={y - 6} r='3.2' style={{ fill: 'var(--live)' }} />
            {wire.isGuarded && (
              <g style={{ fill: 'none' }}>
                <path d={`M${x - 6} ${y}v-7a6 6 0 0 1 12 0v7`} style={{ stroke: 'var(--ink)', strokeWidth: 5.5 }} />
                <path
                  d={`M${x - 6} ${y - 1}v-6a6 6 0 0 1 12 0v6`}
                  style={{ stroke: 'var(--m-rubber)', strokeWidth: 3 }}
                />
              </g>
            )}
          </g>
        )
      })}
      <Callout at={[X(east - 0.08), Y(lv - 0.06)]} word={[X(1.55), Y(lv - 0.06)]} label={say('drawing.lv')} />
    </g>
  )
}
