/**
 * Where the public can stand: along the barrier's outline, and within `publicApproach` of any electrode that the barrier
 * does not enclose, and at each pipe that comes out of the ground. The ground's share in each point is worked out once for a soil and a barrier; what currents flow
 * only weighs it.
 */
import { ONE, ZERO, type Complex } from '../math/complex'
import { distanceToElectrode, wayRound } from '../physics/soil'
import { isInside, type GroundPoint } from '../site/place'
import type { Scenario } from '../site/scenario'
import type { Ground } from './circuit/ground'
import { outlinePoints } from './outline'

export interface WalkPoint {
  readonly at: GroundPoint
  /** Ohm: volt here per ampere of each electrode. */
  readonly mutual: readonly number[]
  /** Ohm per metre along x and y. */
  readonly slopeX: readonly number[]
  readonly slopeY: readonly number[]
}

const sampleStep = 0.25

const walksByGround = new WeakMap<Ground, Map<string, readonly WalkPoint[]>>()

export function publicWalk(
  scenario: Scenario,
  ground: Ground,
  outline: readonly GroundPoint[] | null,
): readonly WalkPoint[] {
  let walks = walksByGround.get(ground)
  if (walks === undefined) walksByGround.set(ground, (walks = new Map()))
  const key = JSON.stringify([scenario.publicApproach, outline, pipePoints(scenario)])
  const walk = walks.get(key) ?? makeWalk(scenario, ground, outline)
  walks.set(key, walk)
  return walk
}

function makeWalk(scenario: Scenario, ground: Ground, outline: readonly GroundPoint[] | null): readonly WalkPoint[] {
  const around = ground.electrodes
    .filter((it) => it.isOnSite)
    .flatMap((it) => wayRound(it.shape, scenario.publicApproach, sampleStep))
    .filter((at) => isPublic(scenario, ground, outline, at))
  const along = outline === null ? [] : outlinePoints(outline, sampleStep)
  const atPipes = pipePoints(scenario).filter((at) => isPublic(scenario, ground, outline, at))
  return [...along, ...around, ...atPipes].map((at) => walkPoint(ground, at))
}

function pipePoints({ grounds = [] }: Scenario): readonly GroundPoint[] {
  return grounds.flatMap((it) => (it.kind === 'pipe' ? it.points : []))
}

/** Outside the barrier and no nearer to an electrode of the site than the public comes. */
export function isPublic(
  scenario: Scenario,
  ground: Ground,
  outline: readonly GroundPoint[] | null,
  at: GroundPoint,
): boolean {
  if (outline !== null && isInside(outline, at)) return false
  return ground.electrodes.every((it) => {
    return !it.isOnSite || distanceToElectrode(it.shape, at) >= scenario.publicApproach - 1e-6
  })
}

function walkPoint(ground: Ground, at: GroundPoint): WalkPoint {
  const slopes = ground.electrodes.map((_, k) => {
    const currents = ground.electrodes.map((__, i): Complex => (i === k ? ONE : ZERO))
    return ground.system.slopeAt(at, currents)
  })
  return {
    at,
    mutual: ground.system.mutualTo(at),
    slopeX: slopes.map((it) => it.x.re),
    slopeY: slopes.map((it) => it.y.re),
  }
}

export function weigh(ohm: readonly number[], currents: readonly Complex[]): Complex {
  let re = 0
  let im = 0
  for (let k = 0; k < currents.length; k++) {
    re += ohm[k]! * currents[k]!.re
    im += ohm[k]! * currents[k]!.im
  }
  return { re, im }
}
