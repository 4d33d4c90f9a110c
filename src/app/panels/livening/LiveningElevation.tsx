/** Elevation of the instant: what stands at which voltage by height, what flows down, and the way through whoever it reaches. */
import { useMemo } from 'react'
import { amperes, say, verdictWords, volts } from '../../../text'
import { currentsOf } from '../../stores/flows'
import type { BodyPath } from '../drawing/PeopleElevation'
import { SiteElevation } from '../drawing/SiteElevation'
import { type Point, tenth } from '../drawing/pen'
import type { Scale } from '../drawing/pen'
import type { SiteView } from '../drawing/siteView'
import { useSpeaker } from '../useSpeaker'
import { handholdWords } from './FeelersBox'
import { liveView } from './liveView'
import type { Shown } from './useShown'
import { drawnPath, strokesOf, worstByPerson } from './verdicts'

const width = 776
const height = 462
const frame = { width, height, perMetre: 37, origin: [322, 386] as Point }

export interface LiveningElevationProps {
  readonly shown: Shown
  readonly title: string
  readonly hasFigures: boolean
}

export function LiveningElevation({ shown, title, hasFigures }: LiveningElevationProps) {
  const site = useMemo(() => liveView(shown), [shown])
  const currents = useMemo(() => currentsOf(shown.instant), [shown])
  const paths = useMemo(() => pathsOf(shown), [shown])
  return (
    <SiteElevation {...frame} site={site} title={title} currents={currents} paths={paths}>
      {(scale) => (
        <>
          <Volts shown={shown} site={site} scale={scale} />
          {hasFigures && <Amperes shown={shown} site={site} scale={scale} />}
        </>
      )}
    </SiteElevation>
  )
}

/** Nothing flows through anybody while it is dead. */
function pathsOf({ instant, isDead }: Shown): ReadonlyMap<string, BodyPath> {
  const reached = isDead ? [] : worstByPerson(instant.exposures)
  return new Map(
    reached.map((exposure) => [
      exposure.person,
      {
        joints: drawnPath(exposure).path,
        isHarm: strokesOf(exposure) >= 2,
        words: `${amperes(exposure.bodyCurrent)}: ${verdictWords(exposure)}`,
      },
    ]),
  )
}

interface Placed {
  readonly node: string
  readonly at: Point
  readonly words: string
}

const column = { x: 566, from: 26, gap: 21 } as const

/** A column of figures at the right, from the top down, each with a leader to its thing. */
function Volts({ shown, site, scale }: { shown: Shown; site: SiteView; scale: Scale }) {
  const speaker = useSpeaker()
  const placed = placesOf(site, scale).flatMap(({ nodes, at, name }): Placed[] => {
    const found = shown.instant.nodes.find(({ node }) => nodes.includes(node))
    return found ? [{ node: found.node, at, words: `${volts(found.size)}  ${handholdWords(name, speaker)}` }] : []
  })
  const sorted = [...placed].sort((a, b) => a.at[1] - b.at[1])
  const ys = spread(sorted.map(({ at }) => at[1]))
  return sorted.map(({ node, at, words }, i) => (
    <g key={node} data-node={node}>
      <circle cx={tenth(at[0])} cy={tenth(at[1])} r='2.5' style={{ fill: 'var(--ink)' }} />
      <path
        d={`M${tenth(at[0])} ${tenth(at[1])}L${column.x - 22} ${ys[i]! - 4}h16`}
        className='d-thin'
        style={{ stroke: 'var(--ink-3)' }}
      />
      <text x={column.x} y={ys[i]!} className='halo'>
        {words}
      </text>
    </g>
  ))
}

/** Each as near to where it would stand as its neighbours let it. */
function spread(wanted: readonly number[]): readonly number[] {
  const ys = [...wanted]
  for (let i = 0; i < ys.length; i++) ys[i] = Math.max(ys[i]!, i === 0 ? column.from : ys[i - 1]! + column.gap)
  for (let i = ys.length - 1; i >= 0; i--)
    ys[i] = Math.min(ys[i]!, i === ys.length - 1 ? height - 12 : ys[i + 1]! - column.gap)
  return ys.map(tenth)
}

interface Place {
  /** Whichever of these the circuit has. */
  readonly nodes: readonly string[]
  readonly at: Point
  readonly name: string
}

function placesOf(site: SiteView, { x: X, y: Y }: Scale): readonly Place[] {
  const { pole, stay, rods } = site
  return [
    ...site.wires.map(
      ({ id, across, height: up }): Place => ({ nodes: [`${id}@pole`], at: [X(-across), Y(up)], name: id }),
    ),
    { nodes: ['arm'], at: [X(0.9), Y(pole.arm + 0.1)], name: 'arm' },
    ...(stay ? [{ nodes: ['stay-upper'], at: [X(0.9), Y(pole.arm - 1.2)], name: 'stay-upper' } as const] : []),
    ...site.lv.map(({ id, across }): Place => ({ nodes: [id], at: [X(-across), Y(pole.lv)], name: id })),
    { nodes: ['cage', 'steel'], at: [X(0), Y(3)], name: 'pole' },
    ...(stay
      ? [{ nodes: ['stay-lower'], at: [X(-stay.y * 0.85), Y((pole.arm - 0.3) * 0.15)], name: 'stay-lower' } as const]
      : []),
    ...rods.map(({ id, y }): Place => ({ nodes: [`rod/${id}`], at: [X(-y), Y(0.25)], name: `rod/${id}` })),
  ]
}

/** The current of each lead and of the pole, where it runs down. */
function Amperes({ shown, site, scale }: { shown: Shown; site: SiteView; scale: Scale }) {
  const currents = currentsOf(shown.instant)
  const written = [
    ...site.leads
      .filter(({ on }) => on[0]?.startsWith('rod'))
      .map(({ id }) => ({
        key: id,
        amps: currents.of(`piece/${id}/earth-`),
        x: scale.x(1.1) + 12,
        y: scale.y(4) + 22,
        side: '',
      })),
    { key: 'pole', amps: currents.of('pole/arm-bolt'), x: scale.x(-0.35), y: scale.y(3.6), side: ' end' },
  ]
  return written
    .filter(({ amps }) => Math.abs(amps) > 0.005)
    .map(({ key, amps, x, y, side }) => (
      <text key={key} x={x} y={y} className={`t-n halo${side}`}>
        {say('livening.arrow', { current: amperes(Math.abs(amps)) })}
      </text>
    ))
}
