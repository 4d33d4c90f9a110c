/**
 * One frozen instant of a livening as plain data, for drawing and export: who is at what potential, what current runs
 * where, what the ground does. Phasors: rms, to remote earth; a current is positive from `from` to `to`.
 */
import { magnitude, type Complex } from '../math/complex'
import { tolerable } from '../physics/body'
import { isUnsolvable, type Element, type Unsolvable } from '../physics/network'
import type { GroundPoint } from '../site/place'
import type { Exposure, Story } from './exposure'
import type { Corner } from './corner'
import { phaseAt, type LinePhase } from './lineStory'
import { lineOf, liven, scenarioInCorner, type LiveMoment } from './liven'
import { createSweepCache, type SweepCache } from './sweepCache'

export interface InstantNode {
  /** A node of circuit/nodes.ts: `conductor-b@pole`, `lead/E-07/1`, `arm`, `cage`, `stay-upper`, `rod/R-1`, `lv-n` … */
  readonly node: string
  readonly voltage: Complex
  readonly size: number
}

export interface InstantBranch {
  readonly id: string
  readonly from: string
  readonly to: string
  readonly current: Complex
  readonly size: number
}

/** One axis of an electrode: several that metal joins, or a wire, have more than one, all with the whole current. */
export interface InstantElectrode {
  readonly node: string
  readonly at: GroundPoint
  readonly current: Complex
  readonly size: number
  /** Ohm over distance from the axis, the electrode alone: volts per ampere of its whole current, added up over its axes. */
  readonly radii: readonly number[]
  readonly ohm: readonly number[]
}

/** A stretch of the story in which nothing changes. */
export interface Stretch {
  readonly from: number
  readonly to: number
  readonly isLive: boolean
  readonly shot: number
}

export interface Instant {
  readonly kind: 'instant'
  readonly livening: string
  readonly corner: string
  /** The stretch of the story that is drawn, seconds from its start. */
  readonly from: number
  readonly to: number
  /** All of the story, one after the other. */
  readonly stretches: readonly Stretch[]
  readonly nodes: readonly InstantNode[]
  readonly branches: readonly InstantBranch[]
  readonly electrodes: readonly InstantElectrode[]
  /** Bystander, 50 kg, at the actual clearing time. */
  readonly tolerable: {
    readonly step: number
    readonly touch: number
    readonly duration: number
    readonly beyondRange: boolean
  }
  readonly story: Story
  readonly exposures: readonly Exposure[]
}

/** @param second of the story, counted from its start; 0 when not given */
export function solveInstant(
  moment: LiveMoment,
  livening: string,
  corner: Corner,
  options: { readonly second?: number; readonly cache?: SweepCache } = {},
): Instant | Unsolvable {
  const cache = options.cache ?? createSweepCache()
  const line = lineOf(moment.site, livening, corner, cache)
  if (isUnsolvable(line)) return line
  const story = liven(moment, livening, corner, cache)
  if (story.kind !== 'story') return story
  const second = options.second ?? 0
  const phase = phaseAt(line, second)
  const { soil } = scenarioInCorner(moment.site.scenario, corner)
  const values = tolerable(50, line.duration, { surface: soil.layers[0]!.resistivity })
  return {
    kind: 'instant',
    livening,
    corner: corner.id,
    from: phase.from,
    to: phase.to,
    stretches: line.phases.map(({ from, to, isLive, shot }) => ({ from, to, isLive, shot })),
    ...drawn(phase),
    tolerable: { step: values.step, touch: values.touch, duration: line.duration, beyondRange: values.beyondRange },
    story,
    exposures: story.exposures,
  }
}

function drawn({ view }: LinePhase): Pick<Instant, 'nodes' | 'branches' | 'electrodes'> {
  const solution = view.solution()
  const sized = (value: Complex) => magnitude(value)
  return {
    nodes: view.factored().nodes.map((node) => {
      const voltage = view.voltage(node)
      return { node, voltage, size: sized(voltage) }
    }),
    branches: view.circuit.elements.flatMap(endsOf).map(({ id, from, to }) => {
      const current = solution.current(id)
      return { id, from, to, current, size: sized(current) }
    }),
    electrodes: view.ground.electrodes.flatMap(({ node }, i) => {
      const current = view.electrodeCurrents[i]!
      return view.ground.system.radialTables(i).map((table) => ({ node, current, size: sized(current), ...table }))
    }),
  }
}

function endsOf(element: Element): readonly { id: string; from: string; to: string }[] {
  switch (element.kind) {
    case 'impedance':
    case 'admittance':
    case 'voltage':
    case 'current':
      return [{ id: element.id, from: element.from, to: element.to }]
    case 'coupled':
      return element.branches
    case 'shunt':
    case 'electrodes':
      return []
  }
}
