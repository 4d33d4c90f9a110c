/** Plan of the instant: contours under everything, electrodes boxed with their own amperes, the livened wire barbed. */
import { useMemo } from 'react'
import type { DrawnLivening } from '../../workers/grading'
import { amperes, say, volts } from '../../../text'
import { GroundContours } from '../drawing/GroundContours'
import { Aim } from '../drawing/Marks'
import { SitePlan, spreadOf } from '../drawing/SitePlan'
import type { Scale } from '../drawing/pen'
import type { SiteView } from '../drawing/siteView'
import { viewOfSite } from '../drawing/viewOfSite'

const width = 776
const height = 478
const perMetre = 24
const frame = { width, height, perMetre, origin: [360, 236] as const }
const groundScale: Scale = {
  perMetre,
  x: (m) => frame.origin[0] + m * perMetre,
  y: (m) => frame.origin[1] - m * perMetre,
}

export interface LiveningPlanProps {
  readonly drawn: DrawnLivening
  readonly title: string
  readonly feelers?: FeelersAim
}

/** Where the feelers stand, and setting them by a press on the plan. */
export interface FeelersAim {
  readonly at: { readonly x: number; readonly y: number } | undefined
  readonly onPoint: (at: { x: number; y: number }) => void
}

export function LiveningPlan({ drawn, title, feelers }: LiveningPlanProps) {
  const site = liveView(drawn)
  // The contours are long work: drawn once for each livening, not at each move of the feelers.
  const ground = useMemo(
    () => (
      <GroundContours
        grid={drawn.grid}
        volts={drawn.volts}
        tolerable={drawn.instant.tolerable.step}
        scale={groundScale}
        width={width}
        height={height}
      />
    ),
    [drawn],
  )
  return (
    <SitePlan
      site={site}
      frame={frame}
      selectedPersons={[]}
      title={title}
      hasFlow
      {...(feelers ? { onPoint: feelers.onPoint } : {})}
      ground={ground}
    >
      {(own) => (
        <>
          <Electrodes drawn={drawn} scale={own} />
          <LiveArrow drawn={drawn} site={site} scale={own} />
          {feelers?.at && <Aim x={own.x(feelers.at.x)} y={own.y(feelers.at.y)} />}
        </>
      )}
    </SitePlan>
  )
}

/** Above this an earthed wire is drawn as standing at site potential, volts. */
const risenFrom = 50

/** The livened wires are live; earthed ones stand where the site stands. */
function liveView(drawn: DrawnLivening): SiteView {
  const view = viewOfSite(drawn.belief)
  const voltsOf = (id: string) =>
    drawn.instant.nodes.find((it) => it.node === `${id}@pole` || it.node === id)?.size ?? 0
  return {
    ...view,
    wires: view.wires.map((wire) => {
      const isClamped = drawn.belief.clamps.some((clamp) => clamp.on === wire.id)
      const isRisen = voltsOf(wire.id) > risenFrom
      return { ...wire, state: isRisen ? (isClamped ? 'site-potential' : 'live') : wire.state }
    }),
  }
}

const names: Readonly<Record<string, string>> = {
  cage: 'electrode.cage',
  'stay-lower': 'electrode.stay',
  'stay-anchor': 'electrode.stay',
}

function Electrodes({ drawn, scale }: { drawn: DrawnLivening; scale: Scale }) {
  const near = drawn.instant.electrodes.filter(({ at }) => Math.abs(at.x) < 14 && Math.abs(at.y) < 9)
  return near.map(({ node, at, size }, i) => {
    const x = scale.x(at.x)
    const y = scale.y(at.y)
    const toLeft = at.x < 0.5
    const boxX = toLeft ? x - 180 : x + 60
    const boxY = y - 40 - i * 6
    const key = names[node]
    const words =
      key === undefined
        ? node.replace('rod/', '')
        : key === 'electrode.cage'
          ? say('electrode.cage')
          : say('electrode.stay')
    return (
      <g key={node}>
        <path d={`M${x} ${y}L${toLeft ? boxX + 104 : boxX} ${boxY + 18}`} className='d-thin' />
        <rect x={boxX} y={boxY} width='104' height='38' className='d-thin' style={{ fill: 'var(--field)' }} />
        <text x={boxX + 7} y={boxY + 15} className='t-b'>
          {words}
        </text>
        <text x={boxX + 7} y={boxY + 32} className='t-n'>
          {amperes(size)}
        </text>
      </g>
    )
  })
}

function LiveArrow({ drawn, site, scale }: { drawn: DrawnLivening; site: SiteView; scale: Scale }) {
  const phase = /-([a-c])$/.exec(drawn.livening)?.[1]?.toUpperCase()
  const wire = site.wires.find((it) => it.letter === phase) ?? site.wires[1]
  if (!wire) return null
  const y = scale.y(0) - wire.across * scale.perMetre * spreadOf(site, scale)
  const x = scale.x(13)
  return (
    <g>
      <path d={`M${x} ${y - 14}h-34m8 -5l-8 5l8 5`} className='d-live' />
      <rect x={x - 34} y={y - 62} width='126' height='38' className='d-thin' style={{ fill: 'var(--field)' }} />
      <text x={x - 27} y={y - 47} className='t-b t-live'>
        {say('livening.arrow', { current: amperes(drawn.liveCurrent) })}
      </text>
      <text x={x - 27} y={y - 30} className='t-n'>
        {say('livening.rise', { rise: volts(drawn.siteRise) })}
      </text>
    </g>
  )
}
