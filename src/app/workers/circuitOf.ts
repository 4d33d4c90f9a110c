/** The circuit of any instant of the run: any moment, livening, corner and stretch of the story. */
import { type OpenTimeline, type createSweepCache, angle, cornersOf, isUnsolvable, solveInstant } from '../../engine'
import { type ShownCase, findCase } from './shownCase'

/** No answer: why, and at which point of the circuit. */
type WithoutAnswer = Exclude<ReturnType<typeof solveInstant>, { kind: 'instant' }>

export interface CircuitChoice extends ShownCase {
  /** Of the livening's own time. */
  readonly second: number
}

export interface CircuitNode {
  readonly node: string
  /** Volt, rms, to remote earth; degrees. */
  readonly voltage: number
  readonly degrees: number
}

export interface CircuitBranch {
  readonly id: string
  readonly from: string
  readonly to: string
  /** Ampere, rms; degrees. */
  readonly current: number
  readonly degrees: number
}

export interface ShownCircuit {
  readonly choice: CircuitChoice
  readonly from: number
  readonly to: number
  /** The story is over then. */
  readonly end: number
  readonly nodes: readonly CircuitNode[]
  readonly branches: readonly CircuitBranch[]
  readonly moments: readonly number[]
  readonly livenings: readonly string[]
  readonly corners: readonly string[]
}

/** What was asked comes back with it. */
export type CircuitAnswer = ShownCircuit | (WithoutAnswer & { readonly choice: CircuitChoice })

const halfTurn = 180 / Math.PI

export function circuitOf(
  timeline: OpenTimeline,
  choice: CircuitChoice,
  cache: ReturnType<typeof createSweepCache>,
): CircuitAnswer {
  const { moments, scenario } = timeline
  const { moment, corner } = findCase(timeline, choice)
  const instant = solveInstant(moment, choice.livening, corner, { second: choice.second, cache })
  if (isUnsolvable(instant)) return { ...instant, choice }
  return {
    choice,
    from: instant.from,
    to: instant.to,
    end: instant.story.end,
    nodes: instant.nodes.map(({ node, voltage, size }) => ({
      node,
      voltage: size,
      degrees: angle(voltage) * halfTurn,
    })),
    branches: instant.branches.map(({ id, from, to, current, size }) => ({
      id,
      from,
      to,
      current: size,
      degrees: angle(current) * halfTurn,
    })),
    moments: moments.map((it) => it.from),
    livenings: ['none', ...scenario.livenings.map((it) => it.id)],
    corners: cornersOf(scenario).map((it) => it.id),
  }
}
