/**
 * What the ground does to anybody who stands on it at one instant of a livening: where a pace is more than tolerable, how
 * far from each electrode, whether the barrier encloses that, and what a hand feels on each thing within reach. The
 * public's limits: 50 kg, no shoes, the longest shot.
 */
import { magnitude } from '../../math/complex'
import { isUnsolvable, type Unsolvable } from '../../physics/network'
import type { GroundPoint, GroundGrid } from '../../physics/soil'
import type { PhaseView } from '../circuit/phaseView'
import type { Corner } from '../corner'
import { limitOf } from '../limits'
import { fittedOnce, lineOf, scenarioInCorner, type LiveMoment } from '../liven'
import { createSweepCache, type SweepCache } from '../sweepCache'
import { phaseAt } from '../lineStory'
import { shapeOf, touchables } from '../touchable'
import { barrierCheck, type BarrierCheck } from './barrierCheck'
import { clearBoxes, reachOfPace } from './clearBoxes'
import { safeDistances, type SafeDistance } from './safeDistance'
import { tolerableContour } from './tolerableContour'
import { worstTouch, type Touch } from './touchVoltage'

export interface GroundHazard {
  readonly kind: 'ground-hazard'
  /** Seconds: the longest shot, which the tolerable voltages are for. */
  readonly duration: number
  /** Something ended it before the horizon. */
  readonly cleared: boolean
  readonly beyondRange: boolean
  readonly tolerableStep: number
  readonly tolerableTouch: number
  /** Outlines of where a pace is more than tolerable; clockwise ones are holes in it. */
  readonly contour: readonly (readonly GroundPoint[])[]
  readonly safeDistances: readonly ({ readonly node: string } & SafeDistance)[]
  readonly barrier: BarrierCheck
  /** The worst on each thing that can be touched, wherever the barrier is. */
  readonly touches: readonly ({ readonly node: string; readonly thingVoltage: number } & Touch)[]
}

/** Metre: all places that are asked for lie nearer to most electrodes; beyond, a table goes on as 1/distance. */
const tableReach = 250

export interface GroundOptions {
  /** Of the story, counted from its start; 0 when not given. */
  readonly second?: number
  readonly cache?: SweepCache
}

export function groundHazard(
  moment: LiveMoment,
  livening: string,
  corner: Corner,
  { second = 0, cache = createSweepCache() }: GroundOptions = {},
): GroundHazard | Unsolvable {
  const { site } = moment
  const line = lineOf(site, livening, corner, cache)
  if (isUnsolvable(line)) return line
  const phase = phaseAt(line, second)
  const scenario = scenarioInCorner(site.scenario, corner)
  const step = limitOf('tolerable-step', scenario, line.duration)
  const touch = limitOf('tolerable-touch', scenario, line.duration)
  const things = touchables(scenario, fittedOnce(site)).filter(({ node }) => phase.view.has(node))
  const { electrodeCurrents } = phase.view
  const electrodes = phase.view.ground.electrodes.map(({ node, shape }, i) => {
    return { node, shape, current: electrodeCurrents[i]! }
  })
  const reach = reachOfPace(scenario.soil, electrodeCurrents, step.limit)
  const surface = drivenIn(phase.view, tableReach)
  const contour = clearBoxes(electrodes, reach).flatMap((box) => tolerableContour(surface, step.limit, box))
  return {
    kind: 'ground-hazard',
    duration: line.duration,
    cleared: line.cleared,
    beyondRange: step.beyondRange,
    tolerableStep: step.limit,
    tolerableTouch: touch.limit,
    contour,
    safeDistances: safeDistances(surface, step.limit, electrodes, reach).map((found, i) => {
      return { node: electrodes[i]!.node, ...found }
    }),
    barrier: barrierCheck(surface, step.limit, contour, site.barrier),
    touches: things.map((thing) => {
      const voltage = phase.view.voltage(thing.node)
      const found = worstTouch(surface, { shape: shapeOf(thing), voltage })
      return { node: thing.node, thingVoltage: magnitude(voltage), ...found }
    }),
  }
}

/** Volt (rms) at each place of the grid, row by row, at a second of the story, its start when not given. */
export function groundVoltages(
  moment: LiveMoment,
  livening: string,
  corner: Corner,
  grid: GroundGrid,
  cache: SweepCache = createSweepCache(),
  second = 0,
): Float64Array | Unsolvable {
  const line = lineOf(moment.site, livening, corner, cache)
  if (isUnsolvable(line)) return line
  return groundMap(phaseAt(line, second).view, grid)
}

/** A map of 512 × 512 places takes some hundredths of a second. */
function groundMap(view: PhaseView, grid: GroundGrid): Float64Array {
  const { from, step, columns, rows } = grid
  const corners = [from, { x: from.x + step * columns, y: from.y + step * rows }]
  const furthest = view.ground.electrodes.reduce((most, { at }) => {
    const apart = corners.map(({ x, y }) => Math.abs(x - at.x) + Math.abs(y - at.y))
    return Math.max(most, ...apart)
  }, 1)
  const { re, im } = drivenIn(view, furthest).map(grid)
  for (let place = 0; place < re.length; place++) {
    re[place] = Math.sqrt(re[place]! * re[place]! + im[place]! * im[place]!)
  }
  return re
}

function drivenIn({ ground, electrodeCurrents }: PhaseView, reach: number) {
  return ground.system.drivenBy(electrodeCurrents, reach)
}
