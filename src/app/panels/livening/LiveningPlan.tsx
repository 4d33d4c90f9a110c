/** Plan of the instant: contours under everything, electrodes with their amperes and from where a pace is tolerable. */
import { useMemo } from 'react'
import { amperes, plain, say, volts } from '../../../text'
import { currentsOf } from '../../stores/flows'
import { GroundContours } from '../drawing/GroundContours'
import { Dimension } from '../drawing/Lines'
import { Aim } from '../drawing/Marks'
import { SitePlan, spreadOf } from '../drawing/SitePlan'
import type { Scale } from '../drawing/pen'
import type { SiteView } from '../drawing/siteView'
import { liveView } from './liveView'
import type { Shown } from './useShown'

const width = 776
const height = 478
const perMetre = 24
/** Lower ground is level, volts. */
export const leastTop = 1
const frame = { width, height, perMetre, origin: [360, 236] as const }
const groundScale: Scale = {
  perMetre,
  x: (m) => frame.origin[0] + m * perMetre,
  y: (m) => frame.origin[1] - m * perMetre,
}

export interface LiveningPlanProps {
  readonly shown: Shown
  readonly title: string
  readonly hasFigures: boolean
  readonly feelers?: FeelersAim
}

/** Where the feelers stand, and setting them by a press on the plan. */
interface FeelersAim {
  readonly at: { readonly x: number; readonly y: number } | undefined
  readonly onPoint: (at: { x: number; y: number }) => void
}

export function LiveningPlan({ shown, title, hasFigures, feelers }: LiveningPlanProps) {
  const site = useMemo(() => liveView(shown), [shown])
  const currents = useMemo(() => currentsOf(shown.instant), [shown])
  // The contours are long work: drawn once for each stretch, not at each move of the feelers.
  const ground = useMemo(
    () => (
      <GroundContours
        grid={shown.grid}
        volts={shown.volts}
        interval={shown.interval}
        top={shown.top}
        zone={shown.ground.contour}
        strongest={strongestOf(shown)}
        scale={groundScale}
        width={width}
        height={height}
      />
    ),
    [shown],
  )
  return (
    <SitePlan
      site={site}
      frame={frame}
      selectedPersons={[]}
      title={title}
      currents={currents}
      {...(feelers ? { onPoint: feelers.onPoint } : {})}
      ground={shown.top >= leastTop ? ground : null}
    >
      {(own) => (
        <>
          <SafeDistances shown={shown} scale={own} />
          <Electrodes shown={shown} scale={own} />
          {shown.isDead === null && <LiveArrow shown={shown} site={site} scale={own} />}
          {hasFigures && <WireVolts shown={shown} site={site} scale={own} />}
          {feelers?.at && <Aim x={own.x(feelers.at.x)} y={own.y(feelers.at.y)} />}
        </>
      )}
    </SitePlan>
  )
}

function strongestOf({ instant }: Shown): { readonly x: number; readonly y: number } {
  const lift = (it: Shown['instant']['electrodes'][number]): number => it.size * (it.ohm[0] ?? 0)
  return [...instant.electrodes].sort((a, b) => lift(b) - lift(a))[0]?.at ?? { x: 0, y: 0 }
}

/** Over the ground, from where the zone of an electrode ends. */
function SafeDistances({ shown, scale }: { shown: Shown; scale: Scale }) {
  return shown.ground.safeDistances.map(({ node, at, distance }) => {
    const electrode = shown.instant.electrodes.find((it) => it.node === node)
    if (!electrode || !at) return null
    return (
      <Dimension
        key={node}
        from={[scale.x(electrode.at.x), scale.y(electrode.at.y)]}
        to={[scale.x(at.x), scale.y(at.y)]}
        label={plain(distance, 1)}
      />
    )
  })
}

const names: Readonly<Record<string, 'electrode.cage' | 'electrode.stay'>> = {
  cage: 'electrode.cage',
  'stay-lower': 'electrode.stay',
  'stay-anchor': 'electrode.stay',
}

const box = { width: 214, height: 54, gap: 6, foot: 434 } as const

/** Boxes stand under each other at the right above the scale, in the order of the electrodes from north to south, joined by leaders. */
function Electrodes({ shown, scale }: { shown: Shown; scale: Scale }) {
  const near = shown.instant.electrodes
    .filter(({ at }, i, all) => Math.abs(at.x) < 14 && Math.abs(at.y) < 9 && all[i - 1]?.node !== all[i]?.node)
    .sort((a, b) => b.at.y - a.at.y)
  const left = width - box.width - 44
  return near.map(({ node, at, size }, i) => {
    const key = names[node]
    const top = box.foot - (near.length - i) * (box.height + box.gap)
    const safe = shown.ground.safeDistances.find((it) => it.node === node)
    return (
      <g key={node} data-electrode={node}>
        <path d={`M${scale.x(at.x)} ${scale.y(at.y)}L${left} ${top + 18}`} className='d-thin' />
        <circle cx={scale.x(at.x)} cy={scale.y(at.y)} r='2.5' style={{ fill: 'var(--ink)' }} />
        <rect
          x={left}
          y={top}
          width={box.width}
          height={box.height}
          className='d-thin'
          style={{ fill: 'var(--field)' }}
        />
        <text x={left + 7} y={top + 16} className='t-b'>
          {key ? say(key) : node.replace('rod/', '')}
        </text>
        <text x={left + 7} y={top + 33} className='t-n'>
          {amperes(size)}
        </text>
        <text x={left + 7} y={top + 48}>
          {safe?.at ? say('livening.safeFrom', { distance: plain(safe.distance, 1) }) : say('livening.safeAll')}
        </text>
      </g>
    )
  })
}

function LiveArrow({ shown, site, scale }: { shown: Shown; site: SiteView; scale: Scale }) {
  const phase = /-([a-c])$/.exec(shown.livening)?.[1]?.toUpperCase()
  const wire = site.wires.find((it) => it.letter === phase) ?? site.wires[1]
  if (!wire) return null
  const y = scale.y(0) - wire.across * scale.perMetre * spreadOf(site, scale)
  const x = scale.x(13)
  return (
    <g>
      <path d={`M${x} ${y - 14}h-34m8 -5l-8 5l8 5`} className='d-live' />
      <rect x={x - 34} y={y - 62} width='126' height='38' className='d-thin' style={{ fill: 'var(--field)' }} />
      <text x={x - 27} y={y - 47} className='t-b t-live'>
        {say('livening.arrow', { current: amperes(shown.liveCurrent) })}
      </text>
      <text x={x - 27} y={y - 30} className='t-n'>
        {say('livening.rise', { rise: volts(shown.siteRise) })}
      </text>
    </g>
  )
}

/** Above the wires in the west, from north to south as they lie. */
function WireVolts({ shown, site, scale }: { shown: Shown; site: SiteView; scale: Scale }) {
  const wires = [...site.wires].sort((a, b) => b.across - a.across)
  const spread = scale.perMetre * spreadOf(site, scale)
  const top = scale.y(0) - Math.max(...wires.map(({ across }) => across)) * spread
  return wires.map(({ id, letter }, i) => {
    const node = shown.instant.nodes.find((it) => it.node === `${id}@pole`)
    return (
      node && (
        <text key={id} x={64} y={top - 16 - (wires.length - 1 - i) * 17} className='t-n halo'>
          {letter} {volts(node.size)}
        </text>
      )
    )
  })
}
