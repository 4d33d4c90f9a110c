/** A run as it is kept: what was ordered, on which scenario, under which pack. Nothing derived. */
import type { Order, Part } from '../../engine'

export const runFormat = 'earths-on/run'
export const runVersion = 1

export interface Expectation {
  readonly outcome: 'pass' | 'fail' | 'provisional'
  /** Rule and job second, complete and in order. */
  readonly findings: readonly (readonly [string, number])[]
  readonly exposures: readonly ExpectedExposure[]
}

export interface ExpectedExposure {
  readonly person: string
  readonly path: string
  readonly at: number
  readonly zone: string
  /** Within 5 %. */
  readonly current: number
}

export interface Run {
  readonly scenario: string
  readonly scenarioDigest: string
  readonly pack: string
  readonly packDigest: string
  /** Version of the engine that it was made with. */
  readonly engine: number
  readonly seed: number
  readonly purpose: 'practise' | 'assess'
  readonly startsAt: Part
  /** So many of the first orders were the demonstration's, not the trainee's own: no score. */
  readonly shown?: number
  /** Digest of the run that prepared the site; only when it does not start at the beginning. */
  readonly preparedBy?: string
  readonly orders: readonly Order[]
  /** What `check` must find; grading does not read it. */
  readonly expect?: Expectation
}
