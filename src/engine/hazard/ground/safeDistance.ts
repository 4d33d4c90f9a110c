/**
 * How far from each electrode a pace is still more than tolerable. Every place where it is belongs to the electrode that
 * makes the ground fall most there, by its current over the square of the distance; the distance of an electrode is that
 * of the furthest place that belongs to it. So barriers at these distances round all electrodes enclose all such places,
 * and one that only lies in another's field, and carries nothing, needs none.
 */
import { magnitude, type Complex } from '../../math/complex'
import { distanceToElectrode, raysFrom, type Electrode, type GroundPoint } from '../../physics/soil'
import { paceFrom, type Surface } from './pace'

export interface SafeDistance {
  /** Metre from the electrode's surface, over the ground; 0 where no pace beside it is more than tolerable. */
  readonly distance: number
  /** Where that is: the foot nearer to it, and the other one. Null with distance 0. */
  readonly at: GroundPoint | null
  readonly far: GroundPoint | null
}

/** Metre: coarse steps inwards, then to below a millimetre. */
const STEP = 0.25
const HALVINGS = 9

/** Metre: nearer than this counts as this near, so that no division is by 0. */
const NEAREST = 0.01

export interface DrivenElectrode {
  readonly shape: Electrode
  readonly current: Complex
}

/** @param reach metre beyond which every pace is tolerable; @returns in the order of the electrodes */
export function safeDistances(
  surface: Surface,
  tolerable: number,
  electrodes: readonly DrivenElectrode[],
  reach: number,
): readonly SafeDistance[] {
  const amperes = electrodes.map(({ current }) => magnitude(current))
  const fallBy = (i: number, at: GroundPoint): number => {
    const distance = Math.max(NEAREST, distanceToElectrode(electrodes[i]!.shape, at))
    return amperes[i]! / (distance * distance)
  }
  return electrodes.map(({ shape: electrode }, own) => {
    const nothing: SafeDistance = { distance: 0, at: null, far: null }
    if (amperes[own] === 0) return nothing
    const isItsOwn = (at: GroundPoint): boolean => {
      const fall = fallBy(own, at)
      return electrodes.every((_, i) => i === own || fallBy(i, at) <= fall)
    }
    const isOver = (at: GroundPoint): boolean => isItsOwn(at) && paceFrom(surface, at).voltage >= tolerable
    let worst = nothing
    for (const ray of raysFrom(electrode)) {
      const at = furthestOn(ray, reach, isOver)
      if (at === undefined) continue
      const distance = Math.max(0, distanceToElectrode(electrode, at))
      if (worst.at === null || distance > worst.distance) worst = { distance, at, far: paceFrom(surface, at).far }
    }
    return worst
  })
}

interface Ray {
  readonly from: GroundPoint
  /** Unit vector. */
  readonly along: GroundPoint
}

function furthestOn(
  { from, along }: Ray,
  reach: number,
  isOver: (at: GroundPoint) => boolean,
): GroundPoint | undefined {
  const place = (away: number) => ({ x: from.x + away * along.x, y: from.y + away * along.y })
  for (let k = Math.ceil(reach / STEP); k >= 0; k--) {
    if (!isOver(place(k * STEP))) continue
    let inner = k * STEP
    let outer = inner + STEP
    for (let half = 0; half < HALVINGS; half++) {
      const middle = 0.5 * (inner + outer)
      if (isOver(place(middle))) inner = middle
      else outer = middle
    }
    return place(inner)
  }
  return undefined
}
