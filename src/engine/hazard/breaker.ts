/**
 * A feeder's breaker with its relays: travel is integrated over the solved currents, the first relay to operate opens it
 * after the breaker's own time, it recloses after each dead time unless that is blocked, and stays open after the last.
 * Relays start each shot from rest. The sensitive earth-fault relay is out of service on this network.
 */
import { add, magnitude, ZERO } from '../math/complex'
import { roundTo } from '../math/round'
import type { Solution } from '../physics/network'
import { relayProgress, timeToOperate } from '../physics/protection'
import { phases, type Feeder } from '../site/scenario'
import { feederLineId } from './circuit/nodes'

export interface Breaker {
  readonly feeder: Feeder
  readonly isClosed: boolean
  readonly travel: { readonly earthFault: number; readonly overcurrent: number }
  /** Second at which it opens, once a relay has operated. */
  readonly opensAt: number | null
  readonly operated: 'earth-fault' | 'overcurrent' | null
  readonly recloseAt: number | null
  /** Dead times still to come. */
  readonly deadTimes: readonly number[]
}

export interface RelayCurrents {
  readonly residual: number
  readonly phase: number
}

export const microsecond = 1e-6

export function freshBreaker(feeder: Feeder, isRecloseBlocked: boolean): Breaker {
  return {
    feeder,
    isClosed: true,
    travel: { earthFault: 0, overcurrent: 0 },
    opensAt: null,
    operated: null,
    recloseAt: null,
    deadTimes: isRecloseBlocked ? [] : feeder.recloseDeadTimes,
  }
}

export function relayCurrents(feeder: Feeder, solution: Solution): RelayCurrents {
  const line = phases.map((phase) => solution.current(feederLineId(feeder.id, phase)))
  return { residual: magnitude(line.reduce(add, ZERO)), phase: Math.max(...line.map(magnitude)) }
}

/** When the next thing happens to it if the currents stay; Infinity when nothing will. */
export function nextOf(breaker: Breaker, now: number, currents: RelayCurrents | undefined): number {
  if (breaker.recloseAt !== null) return breaker.recloseAt
  if (!breaker.isClosed || currents === undefined) return Infinity
  if (breaker.opensAt !== null) return breaker.opensAt
  const waits = relayWaits(breaker, currents)
  return roundTo(now + Math.min(waits.earthFault, waits.overcurrent), microsecond)
}

/** @param next the second up to which the currents stayed */
export function advance(breaker: Breaker, now: number, next: number, currents: RelayCurrents | undefined): Breaker {
  if (breaker.recloseAt !== null && breaker.recloseAt <= next) {
    return {
      ...breaker,
      isClosed: true,
      recloseAt: null,
      operated: null,
      opensAt: null,
      travel: { earthFault: 0, overcurrent: 0 },
    }
  }
  if (!breaker.isClosed || currents === undefined) return breaker
  if (breaker.opensAt !== null) return breaker.opensAt <= next ? opened(breaker, next) : breaker
  const waits = relayWaits(breaker, currents)
  const first = waits.overcurrent < waits.earthFault ? 'overcurrent' : 'earth-fault'
  if (roundTo(now + Math.min(waits.earthFault, waits.overcurrent), microsecond) <= next) {
    return { ...breaker, operated: first, opensAt: roundTo(next + breaker.feeder.breakerTime, microsecond) }
  }
  const { earthFault, overcurrent } = breaker.feeder
  const seconds = next - now
  return {
    ...breaker,
    travel: {
      earthFault: relayProgress(earthFault, breaker.travel.earthFault, currents.residual, seconds),
      overcurrent: relayProgress(overcurrent, breaker.travel.overcurrent, currents.phase, seconds),
    },
  }
}

function opened(breaker: Breaker, now: number): Breaker {
  const [dead, ...later] = breaker.deadTimes
  const recloseAt = dead === undefined ? null : roundTo(now + dead, microsecond)
  return { ...breaker, isClosed: false, opensAt: null, recloseAt, deadTimes: later }
}

function relayWaits(breaker: Breaker, currents: RelayCurrents): { earthFault: number; overcurrent: number } {
  const { earthFault, overcurrent } = breaker.feeder
  return {
    earthFault: seconds(timeToOperate(earthFault, breaker.travel.earthFault, currents.residual)),
    overcurrent: seconds(timeToOperate(overcurrent, breaker.travel.overcurrent, currents.phase)),
  }
}

function seconds(time: number | 'never'): number {
  return time === 'never' ? Infinity : time
}
