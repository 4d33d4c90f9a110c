/** The pole looking east along the line: north to the left, south to the right. */
import type { ReactNode } from 'react'
import { say } from '../../../text'
import type { Currents } from '../../stores/flows'
import { FlowLine } from './FlowLine'
import { Callout, Dimension, Hatch, Lead } from './Lines'
import { ElevationArms } from './ElevationArms'
import { Flag, stateColour } from './Marks'
import { type BodyPath, PeopleElevation } from './PeopleElevation'
import { type Point, type Scale, makeScale, pathOf, tenth } from './pen'
import type { SiteView, WireView } from './siteView'

export interface ElevationProps {
  readonly site: SiteView
  readonly width: number
  readonly height: number
  readonly perMetre: number
  /** Pixels of the pole axis at ground level. */
  readonly origin: Point
  readonly title: string
  /** Of a livening: dashes run where current flows, and through whom. */
  readonly currents?: Currents
  readonly paths?: ReadonlyMap<string, BodyPath>
  readonly children?: (scale: Scale) => ReactNode
}

/** y north is to the left on this sheet. */
const acrossToSheet = (across: number) => -across

export function SiteElevation({
  site,
  width,
  height,
  perMetre,
  origin,
  title,
  currents,
  paths,
  children,
}: ElevationProps) {
  const scale = makeScale(perMetre, origin[0], origin[1])
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} role='img' aria-label={title}>
      <defs>
        <Hatch id='cutGround' colour='var(--ink-2)' gap={7} />
        <Hatch id='concrete' gap={5} />
        <Hatch id='rubber' colour='var(--ink)' gap={5} angle={-45} />
      </defs>
      <Ground scale={scale} width={width} />
      {site.pole.secondLeg && <Pole site={site} scale={scale} axis={acrossToSheet(site.pole.secondLeg.y)} />}
      <Pole site={site} scale={scale} axis={0} />
      {site.stay && <StayLine top={site.pole.arm - 0.3} anchor={acrossToSheet(site.stay.y)} scale={scale} />}
      <ElevationArms site={site} scale={scale} />
      <Cover site={site} scale={scale} />
      <Rods site={site} scale={scale} />
      {currents && <PoleFlow site={site} scale={scale} currents={currents} />}
      <Earthing site={site} scale={scale} {...(currents ? { currents } : {})} />
      <Conductors wires={site.wires} scale={scale} arm={site.pole.arm} newOn={site.isInsulatorNew ? site.work : null} />
      <Dimensions site={site} scale={scale} />
      <PeopleElevation site={site} scale={scale} width={width} {...(paths ? { paths } : {})} />
      {children?.(scale)}
      <text x='0' y={height - 20} className='t-q halo'>
        {say('drawing.looksEast')}
      </text>
      <text x='0' y={height - 4} className='t-q halo'>
        {say('drawing.inMetres')}
      </text>
    </svg>
  )
}

function Ground({ scale, width }: { scale: Scale; width: number }) {
  const y = scale.y(0)
  return (
    <g>
      <rect x='0' y={y} width={width} height='9' style={{ fill: 'url(#cutGround)' }} />
      <path d={`M0 ${y}H${width}`} className='d-wire' />
    </g>
  )
}

const half = { foot: 0.17, top: 0.12 }

const poleAt = (height: number, top: number) => half.foot + ((half.top - half.foot) * height) / top

/** @param axis of this leg; the bolts are on the one at the origin */
function Pole({ site, scale, axis }: { site: SiteView; scale: Scale; axis: number }) {
  const X = (across: number): number => scale.x(axis + across)
  const { y: Y } = scale
  const { pole } = site
  const top = pole.height - pole.butt
  const bolts: string[] = []
  for (let h = 2.5; h < pole.boltsTo; h += 0.5) {
    bolts.push(`M${X(-poleAt(h, top))} ${Y(h)}h-5`)
    if (h + 0.25 < pole.boltsTo) bolts.push(`M${X(poleAt(h, top))} ${Y(h + 0.25)}h5`)
  }
  return (
    <g>
      <path
        d={pathOf([
          [X(-half.foot), Y(0)],
          [X(-half.foot), Y(-pole.butt)],
          [X(half.foot), Y(-pole.butt)],
          [X(half.foot), Y(0)],
        ])}
        className='d-hid'
      />
      <path
        d={pathOf(
          [
            [X(-half.foot), Y(0)],
            [X(-half.top), Y(top)],
            [X(half.top), Y(top)],
            [X(half.foot), Y(0)],
          ],
          true,
        )}
        className='d-edge'
        style={{ fill: `var(--m-${pole.kind === 'steel' ? 'steel' : pole.kind === 'wood' ? 'wood' : 'concrete'})` }}
      />
      {pole.kind === 'concrete' && (
        <path
          d={pathOf(
            [
              [X(0.04), Y(0)],
              [X(0.03), Y(top)],
              [X(half.top), Y(top)],
              [X(half.foot), Y(0)],
            ],
            true,
          )}
          style={{ fill: 'url(#concrete)' }}
        />
      )}
      {axis === 0 && <path d={bolts.join('')} className='d-edge' />}
    </g>
  )
}

const insulatorAt = 0.45

/** @param top its height on the pole; @param anchor where it goes into the ground; metres */
function StayLine({ top, anchor, scale }: { top: number; anchor: number; scale: Scale }) {
  const { x: X, y: Y } = scale
  return (
    <g>
      <path d={`M${X(half.top)} ${Y(top)}L${X(anchor)} ${Y(0)}`} className='d-edge' />
      <path d={`M${X(anchor)} ${Y(0)}L${X(anchor + 0.7)} ${Y(-1.2)}`} className='d-hid' />
      <rect
        x={X(anchor + 0.7) - 10}
        y={Y(-1.2) - 4}
        width='20'
        height='8'
        className='d-hid'
        style={{ fill: 'var(--paper)' }}
        transform={`rotate(-30 ${X(anchor + 0.7)} ${Y(-1.2)})`}
      />
      <ellipse
        cx={X(anchor * insulatorAt)}
        cy={Y(top * (1 - insulatorAt))}
        rx='10'
        ry='5'
        transform={`rotate(58 ${X(anchor * insulatorAt)} ${Y(top * (1 - insulatorAt))})`}
        style={{ fill: 'var(--m-glaze)', stroke: 'var(--ink)', strokeWidth: 'var(--p-thin)' }}
      />
      <Callout
        at={[X(anchor * 0.56), Y(top * 0.44)]}
        word={[X(anchor * 0.49), Y(2.2)]}
        label={say('drawing.stay')}
        toLeft={anchor > 0}
      />
    </g>
  )
}

function Cover({ site, scale }: { site: SiteView; scale: Scale }) {
  if (!site.cover) return null
  const { x: X, y: Y } = scale
  const { from, to } = site.cover
  const outline = pathOf(
    [
      [X(-0.21), Y(from)],
      [X(-0.18), Y(to)],
      [X(0.18), Y(to)],
      [X(0.21), Y(from)],
    ],
    true,
  )
  const bands = [0.15, 0.5, 0.85].map((share) => `M${X(-0.21)} ${Y(from + (to - from) * share)}H${X(0.21)}`).join('')
  return (
    <g>
      <path d={outline} className='d-edge' style={{ fill: 'var(--m-rubber)' }} />
      <path d={outline} style={{ fill: 'url(#rubber)', opacity: 0.35 }} />
      <path d={bands} className='d-edge' />
      <Callout at={[X(0.19), Y((from + to) / 2)]} word={[X(1.55), Y((from + to) / 2)]} label={say('drawing.cover')} />
    </g>
  )
}

function Rods({ site, scale }: { site: SiteView; scale: Scale }) {
  const { x: X, y: Y } = scale
  return site.rods.map((rod) => {
    const x = X(acrossToSheet(rod.y))
    return (
      <g key={rod.id}>
        <path d={`M${x} ${Y(0.3)}V${Y(0)}`} style={{ stroke: 'var(--ink)', strokeWidth: 6 }} />
        <path d={`M${x} ${Y(0.3) + 1.5}V${Y(0)}`} style={{ stroke: 'var(--m-copper)', strokeWidth: 3 }} />
        <path d={`M${x - 3} ${Y(0) + 9}V${Y(-rod.depth)}l3 6l3 -6V${Y(0) + 9}`} className='d-hid' />
        <Dimension from={[x, Y(0)]} to={[x, Y(-rod.depth)]} label={rod.depth.toFixed(2)} offset={-20} />
      </g>
    )
  })
}

/** Where a thing hangs in this elevation. */
function pointOf(thing: string, site: SiteView, scale: Scale): Point {
  const { x: X, y: Y } = scale
  const wire = site.wires.find((each) => each.id === thing)
  if (wire) return [X(acrossToSheet(wire.across)), Y(wire.height)]
  const lv = site.lv.find((each) => each.id === thing)
  if (lv) return [X(acrossToSheet(lv.across)), Y(site.pole.lv) - 6]
  const rod = site.rods.find((each) => `rod/${each.id}` === thing)
  if (rod) return [X(acrossToSheet(rod.y)), Y(0.22)]
  return [X(-0.5), Y(site.pole.arm)]
}

/** Down the inside of the pole. */
function PoleFlow({ site, scale, currents }: { site: SiteView; scale: Scale; currents: Currents }) {
  const x = scale.x(-0.03)
  return (
    <FlowLine
      isOnWire
      path={`M${x} ${scale.y(site.pole.arm - 0.1)}V${scale.y(-site.pole.butt)}`}
      amperes={currents.of('pole/arm-bolt')}
      most={currents.most}
      head={{ at: [x, scale.y(1.2)], along: [0, 1] }}
    />
  )
}

function Earthing({ site, scale, currents }: { site: SiteView; scale: Scale; currents?: Currents }) {
  const { x: X, y: Y } = scale
  return site.leads.map((lead) => {
    const points = lead.on.map((thing) => pointOf(thing, site, scale))
    const flowOf = (from: string | undefined, to: string | undefined) =>
      currents ? { flow: { amperes: currents.of(`piece/${lead.id}/${from}-${to}`), most: currents.most } } : {}
    if (lead.isBond || lead.on.length === 0)
      return points.length > 1 ? (
        <Lead
          key={lead.id}
          isThin
          path={`M${points[0]![0]} ${points[0]![1]}Q${X(-0.5)} ${Y(site.pole.arm - 0.9)} ${points[1]![0]} ${points[1]![1]}`}
          {...flowOf(lead.ends[0], lead.ends[1])}
        />
      ) : null
    const hasEarthEnd = lead.on[0]!.startsWith('rod')
    const rise = hasEarthEnd ? points[0]! : null
    const first = hasEarthEnd ? (points[1] ?? ([X(0.42), Y(7.6)] as const)) : points[0]!
    const hops = points.slice(hasEarthEnd ? 2 : 1)
    return (
      <g key={lead.id}>
        {rise && (
          <Lead
            path={`M${rise[0]} ${rise[1]}C${tenth((rise[0] + X(0.4)) / 2)} ${Y(0.02)} ${X(0.5)} ${Y(0.05)} ${X(0.45)} ${Y(1.2)}L${X(0.42)} ${Y(6.4)}C${X(0.42)} ${Y(7.4)} ${first[0]} ${Y(7.6)} ${first[0]} ${first[1]}`}
            {...flowOf('earth', lead.ends[1])}
          />
        )}
        {hops.map((to, i) => {
          const from = i === 0 ? first : hops[i - 1]!
          return (
            <Lead
              key={i}
              path={`M${from[0]} ${from[1]}Q${tenth((from[0] + to[0]) / 2)} ${tenth(Math.max(from[1], to[1]) + 34)} ${to[0]} ${to[1]}`}
              {...flowOf(lead.ends[i + (hasEarthEnd ? 1 : 0)], lead.ends[i + (hasEarthEnd ? 2 : 1)])}
            />
          )
        })}
        {rise && (
          <rect
            x={rise[0] - 6}
            y={rise[1] - 5}
            width='12'
            height='10'
            className='d-edge'
            style={{ fill: 'var(--m-aluminium)' }}
          />
        )}
        {rise && <Callout at={[X(0.43), Y(4)]} word={[X(1.1), Y(4)]} label={lead.id} />}
        {points.slice(hasEarthEnd ? 1 : 0).map(([x, y], i) => (
          <g key={i} style={{ fill: 'none' }}>
            <path d={`M${x - 7} ${y + 6}v-9a7 7 0 0 1 14 0`} style={{ stroke: 'var(--ink)', strokeWidth: 4 }} />
            <path
              d={`M${x - 7} ${y + 5}v-8a7 7 0 0 1 13 -1`}
              style={{ stroke: 'var(--m-aluminium)', strokeWidth: 2 }}
            />
          </g>
        ))}
      </g>
    )
  })
}

function Conductors({
  wires,
  scale,
  arm,
  newOn,
}: {
  wires: readonly WireView[]
  scale: Scale
  arm: number
  newOn: string | null
}) {
  return wires.map((wire) => {
    const x = scale.x(acrossToSheet(wire.across))
    const y = scale.y(wire.height)
    const foot = scale.y(arm + 0.06)
    return (
      <g key={wire.id}>
        <path
          d={`M${x - 7} ${foot}q7 ${tenth((y - foot) * 0.9)} 14 0Z`}
          className='d-thin'
          style={{ fill: wire.id === newOn ? 'var(--field)' : 'var(--m-glaze)' }}
        />
        {wire.state === 'live' ? (
          <circle cx={x} cy={y} r='5' style={{ fill: 'var(--live)' }} />
        ) : (
          <circle
            cx={x}
            cy={y}
            r='5'
            style={{ fill: 'var(--paper)', stroke: stateColour[wire.state], strokeWidth: 'var(--p-wire)' }}
          />
        )}
        <Flag x={x} y={y - 30} letter={wire.letter} state={wire.state} />
      </g>
    )
  })
}

function Dimensions({ site, scale }: { site: SiteView; scale: Scale }) {
  const { x: X, y: Y } = scale
  const { lv, arm } = site.pole
  const left = X(-2.7)
  const rod = site.rods[0]
  return (
    <g>
      <path d={`M${left} ${Y(arm)}H${X(-1.1)}`} className='d-hair' />
      {site.lv.length > 0 ? (
        <>
          <path d={`M${left} ${Y(lv)}H${X(-0.8)}`} className='d-hair' />
          <Dimension from={[left, Y(0)]} to={[left, Y(lv)]} label={lv.toFixed(1)} />
          <Dimension from={[left, Y(lv)]} to={[left, Y(arm)]} label={(arm - lv).toFixed(1)} />
        </>
      ) : (
        <Dimension from={[left, Y(0)]} to={[left, Y(arm)]} label={arm.toFixed(1)} />
      )}
      {rod && Math.abs(rod.y) > 0.4 && (
        <Dimension
          from={[X(0), Y(0)]}
          to={[X(acrossToSheet(rod.y)), Y(0)]}
          label={Math.abs(rod.y).toFixed(1)}
          offset={rod.y < 0 ? 34 : -34}
        />
      )}
    </g>
  )
}
