/** The site from above, north up. */
import type { ReactNode } from 'react'
import { say } from '../../../text'
import type { Currents } from '../../stores/flows'
import { FlowLine } from './FlowLine'
import { Hatch, Lead, Wire } from './Lines'
import { Flag, North, ScaleBar } from './Marks'
import { type Point, type Scale, makeScale, pathOf, tenth } from './pen'
import { PeoplePlan } from './PeoplePlan'
import type { PlanFrame } from './planFrame'
import type { SiteView } from './siteView'
import { SurroundingsPlan } from './SurroundingsPlan'

export interface SitePlanProps {
  readonly site: SiteView
  readonly frame: PlanFrame
  readonly selectedPersons: readonly string[]
  /** Ground potential, drawn under everything. */
  readonly ground?: ReactNode
  readonly children?: (scale: Scale) => ReactNode
  readonly onPoint?: (at: { x: number; y: number }) => void
  readonly title: string
  /** Of a livening: dashes run where current flows. */
  readonly currents?: Currents
}

export function SitePlan({ site, frame, selectedPersons, ground, children, onPoint, title, currents }: SitePlanProps) {
  const { width, height, perMetre, origin } = frame
  const scale = makeScale(perMetre, origin[0], origin[1])
  const { x: X, y: Y } = scale
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      role='img'
      aria-label={title}
      className={onPoint ? 'hit' : undefined}
      onClick={
        onPoint &&
        ((event) => {
          const toScreen = event.currentTarget.getScreenCTM()
          if (!toScreen) return
          const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(toScreen.inverse())
          onPoint({ x: (at.x - origin[0]) / perMetre, y: (origin[1] - at.y) / perMetre })
        })
      }
    >
      <defs>
        <Hatch id='road' colour='var(--rule)' gap={7} angle={-45} />
        <clipPath id='planEdge'>
          <rect width={width} height={height} />
        </clipPath>
      </defs>
      <g clipPath='url(#planEdge)'>
        {ground}
        <Grid frame={frame} scale={scale} />
        <SurroundingsPlan surroundings={site.surroundings} scale={scale} width={width} height={height} />
        <Lines site={site} scale={scale} width={width} height={height} />
        <Barrier outline={site.barrier} scale={scale} />
        {site.stay && <Stay anchor={site.stay} scale={scale} />}
        {currents && <WireFlows site={site} scale={scale} width={width} currents={currents} />}
        <Leads site={site} scale={scale} {...(currents ? { currents } : {})} />
        <Pole scale={scale} />
        {site.truck && <Truck x={X(site.truck.x)} y={Y(site.truck.y)} scale={perMetre} />}
        {site.rods.map((rod) => (
          <g key={rod.id}>
            <circle cx={X(rod.x)} cy={Y(rod.y)} r='8' className='d-edge' style={{ fill: 'var(--field)' }} />
            <circle
              cx={X(rod.x)}
              cy={Y(rod.y)}
              r='3.5'
              style={{ fill: 'var(--m-copper)', stroke: 'var(--ink)', strokeWidth: 1 }}
            />
          </g>
        ))}
        {children?.(scale)}
        <PeoplePlan people={site.people} scale={scale} frame={frame} selected={selectedPersons} />
        <ScaleBar x={width - 5 * perMetre - 30} y={height - 14} perMetre={perMetre} marks={[0, 1, 2, 5]} />
        <North x={width - 20} y={24} />
      </g>
    </svg>
  )
}

function Grid({ frame, scale }: { frame: PlanFrame; scale: Scale }) {
  const lines: string[] = []
  const { width, height, perMetre, origin } = frame
  for (let m = Math.ceil(-origin[0] / perMetre / 5) * 5; scale.x(m) < width; m += 5)
    lines.push(`M${scale.x(m)} 0V${height}`)
  for (let m = Math.floor(origin[1] / perMetre / 5) * 5; scale.y(m) < height; m -= 5)
    lines.push(`M0 ${scale.y(m)}H${width}`)
  return <path d={lines.join('')} className='d-grid' />
}

/** Conductors are spread to at least 11 px, so that their states can be told apart. */
function Lines({ site, scale, width, height }: { site: SiteView; scale: Scale; width: number; height: number }) {
  const spread = spreadOf(site, scale)
  const middle = site.crossingAlong === null ? null : scale.x(site.crossingAlong)
  const crossing = middle !== null && middle > 0 && middle < width ? middle : null
  return (
    <g>
      <path
        d={site.lv
          .map((wire) => `M0 ${tenth(scale.y(0) - wire.across * scale.perMetre * spread * 0.9)}H${width}`)
          .join('')}
        className='d-live'
        style={{ strokeWidth: 1, strokeDasharray: '2 3' }}
      />
      {site.wires.map((wire) => (
        <Wire
          key={wire.id}
          state={wire.state}
          points={[
            [0, tenth(scale.y(0) - wire.across * scale.perMetre * spread)],
            [width, tenth(scale.y(0) - wire.across * scale.perMetre * spread)],
          ]}
        />
      ))}
      {crossing !== null &&
        [-8, 0, 8].map((shift) => (
          <Wire
            key={shift}
            state='live'
            step={46}
            points={[
              [crossing + shift + 14, 0],
              [crossing + shift - 14, height],
            ]}
          />
        ))}
      {site.wires.map((wire, i) => (
        <Flag
          key={wire.id}
          x={20 + (i % 2) * 32}
          y={tenth(scale.y(0) - wire.across * scale.perMetre * spread)}
          letter={wire.letter}
          state={wire.state}
        />
      ))}
    </g>
  )
}

export function spreadOf(site: SiteView, scale: Scale): number {
  const outer = Math.max(...site.wires.map((wire) => Math.abs(wire.across)), 0.6)
  return Math.max(1, 15 / (outer * scale.perMetre))
}

function Barrier({ outline, scale }: { outline: SiteView['barrier']; scale: Scale }) {
  if (!outline || outline.length < 2) return null
  const points = outline.map((p): Point => [scale.x(p.x), scale.y(p.y)])
  return (
    <g>
      <path d={pathOf(points, true)} style={{ fill: 'none', stroke: 'var(--paper)', strokeWidth: 6 }} />
      <path d={pathOf(points, true)} className='d-edge' style={{ strokeDasharray: '18 5' }} />
      {points.map(([x, y], i) => (
        <rect
          key={i}
          x={tenth(x - 3)}
          y={tenth(y - 3)}
          width='6'
          height='6'
          className='d-edge'
          style={{ fill: 'var(--field)' }}
        />
      ))}
    </g>
  )
}

function Stay({ anchor, scale }: { anchor: NonNullable<SiteView['stay']>; scale: Scale }) {
  const x = scale.x(anchor.x)
  const y = scale.y(anchor.y)
  return (
    <g>
      <path d={`M${scale.x(0)} ${scale.y(0)}L${x} ${y}M${x - 7} ${y}h14M${x} ${y - 7}v14`} className='d-edge' />
      <circle cx={x} cy={y} r='5' className='d-edge' style={{ fill: 'var(--m-steel)' }} />
      <text x={x + 11} y={y + 4.5} className='halo'>
        {say('drawing.stayAnchor')}
      </text>
    </g>
  )
}

/** West and east of the pole: the section's current comes in on the one and goes on along the other. */
function WireFlows({
  site,
  scale,
  width,
  currents,
}: {
  site: SiteView
  scale: Scale
  width: number
  currents: Currents
}) {
  const spread = spreadOf(site, scale)
  const x = scale.x(0)
  return site.wires.map(({ id, across }) => {
    const y = tenth(scale.y(0) - across * scale.perMetre * spread)
    return (
      <g key={id}>
        <FlowLine
          isOnWire
          path={`M0 ${y}H${x}`}
          amperes={currents.of(`${id}/${site.west}-pole`)}
          most={currents.most}
          head={{ at: [x * 0.72, y], along: [1, 0] }}
        />
        <FlowLine
          isOnWire
          path={`M${x} ${y}H${width}`}
          amperes={currents.of(`${id}/pole-`)}
          most={currents.most}
          head={{ at: [x + (width - x) * 0.28, y], along: [1, 0] }}
        />
      </g>
    )
  })
}

function Leads({ site, scale, currents }: { site: SiteView; scale: Scale; currents?: Currents }) {
  return site.leads
    .filter((lead) => !lead.isBond && lead.on[0]?.startsWith('rod'))
    .map((lead) => {
      const rod = site.rods.find((each) => `rod/${each.id}` === lead.on[0])
      if (!rod) return null
      const start: Point = [scale.x(rod.x), scale.y(rod.y)]
      const end: Point = [scale.x(0), scale.y(0)]
      const bend: Point = [start[0] + (end[0] - start[0]) * 0.5 + 4, start[1] + (end[1] - start[1]) * 0.5 + 5]
      const flow = currents && {
        amperes: currents.of(`piece/${lead.id}/earth-`),
        most: currents.most,
        head: { at: bend, along: [end[0] - start[0], end[1] - start[1]] as const },
      }
      return <Lead key={lead.id} path={pathOf([start, bend, end])} {...(flow ? { flow } : {})} />
    })
}

function Pole({ scale }: { scale: Scale }) {
  const x = scale.x(0)
  const y = scale.y(0)
  return (
    <g>
      <rect x={x - 4} y={y - 19} width='8' height='38' className='d-edge' style={{ fill: 'var(--m-steel)' }} />
      <circle cx={x} cy={y} r='5.5' className='d-wire' style={{ fill: 'var(--m-concrete)' }} />
    </g>
  )
}

function Truck({ x, y, scale }: { x: number; y: number; scale: number }) {
  const long = 6.5 * scale
  const wide = 2.3 * scale
  // Over it where the sheet has room: people stand beside its bed.
  const isAbove = y - wide / 2 > 18
  return (
    <g transform={`translate(${x} ${y})`}>
      <rect
        x={tenth(-long / 2)}
        y={tenth(-wide / 2)}
        width={tenth(long)}
        height={tenth(wide)}
        className='d-edge'
        style={{ fill: 'var(--field)' }}
      />
      <path d={`M${tenth(long / 4)} ${tenth(-wide / 2)}v${tenth(wide)}`} className='d-edge' />
      <text x='0' y={tenth(isAbove ? -wide / 2 - 5 : wide / 2 + 15)} className='mid halo'>
        {say('drawing.truck')}
      </text>
    </g>
  )
}
