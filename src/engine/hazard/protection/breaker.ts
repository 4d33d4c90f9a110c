/**
 * A feeder's breaker with its relays: earth fault, overcurrent and, where fitted, sensitive earth fault. Travel is
 * integrated over the solved currents, the first relay to operate opens it after the breaker's own time, it recloses after
 * each dead time unless that is blocked, and stays open after the last. Between shots the travel of each relay is lost,
 * kept or falls back as its data says; one that has operated starts again from rest, but for a disc, which has to turn back.
 */
import { add, magnitude, ZERO } from '../../math/complex'
import { roundTo } from '../../math/round'
import { relayProgress, timeToOperate, type RelayReset, type RelaySetting } from '../../physics/protection'
import { phases, type Feeder } from '../../site/scenario'
import { feederLineId } from '../circuit/nodes'
import { microsecond, type CurrentOf, type Device } from './device'

/** Of two that operate in the same microsecond the first here is named. */
const relayNames = ['earth-fault', 'overcurrent', 'sensitive-earth-fault'] as const
type RelayName = (typeof relayNames)[number]

interface Relay {
  readonly name: RelayName
  readonly setting: RelaySetting
  /** 0 at rest, 1 when it operates. */
  readonly travel: number
}

export interface Breaker {
  readonly feeder: Feeder
  readonly isClosed: boolean
  readonly relays: readonly Relay[]
  /** Second at which it opens, once a relay has operated. */
  readonly opensAt: number | null
  readonly operated: RelayName | null
  readonly recloseAt: number | null
  /** Dead times still to come. */
  readonly deadTimes: readonly number[]
}

/** Ampere: of all three phases together, and of the largest. */
export interface RelayCurrents {
  readonly residual: number
  readonly phase: number
}

const none: RelayCurrents = { residual: 0, phase: 0 }

export function freshBreaker(feeder: Feeder, isRecloseBlocked: boolean): Breaker {
  const settings: Readonly<Record<RelayName, RelaySetting | undefined>> = {
    'earth-fault': feeder.earthFault,
    overcurrent: feeder.overcurrent,
    'sensitive-earth-fault': feeder.sensitiveEarthFault,
  }
  return {
    feeder,
    isClosed: true,
    relays: relayNames.flatMap((name): Relay[] => {
      const setting = settings[name]
      return setting === undefined ? [] : [{ name, setting, travel: 0 }]
    }),
    opensAt: null,
    operated: null,
    recloseAt: null,
    deadTimes: isRecloseBlocked ? [] : feeder.recloseDeadTimes,
  }
}

export function breakerDevice(breaker: Breaker): Device {
  return {
    sources: [breaker.feeder.id],
    isOff: !breaker.isClosed,
    willClose: breaker.recloseAt !== null,
    opened: [],
    dead: [],
    limits: [],
    operated: breaker.operated,
    next: (now, currentOf) => nextOf(breaker, now, relayCurrents(breaker.feeder, currentOf)),
    advance: (now, next, currentOf) =>
      breakerDevice(advance(breaker, now, next, relayCurrents(breaker.feeder, currentOf))),
  }
}

function relayCurrents(feeder: Feeder, currentOf: CurrentOf): RelayCurrents {
  const line = phases.map((phase) => currentOf(feederLineId(feeder.id, phase)) ?? ZERO)
  return { residual: magnitude(line.reduce(add, ZERO)), phase: Math.max(...line.map(magnitude)) }
}

/** When the next thing happens to it if the currents stay; Infinity when nothing will. */
export function nextOf(breaker: Breaker, now: number, currents: RelayCurrents): number {
  if (breaker.recloseAt !== null) return breaker.recloseAt
  if (!breaker.isClosed) return Infinity
  return breaker.opensAt ?? firstOf(breaker, now, currents).at
}

/** @param next the second up to which the currents stayed */
export function advance(breaker: Breaker, now: number, next: number, currents: RelayCurrents): Breaker {
  if (!breaker.isClosed) {
    const { recloseAt } = breaker
    const waiting = travelled(breaker, now, next, none)
    return recloseAt !== null && recloseAt <= next
      ? { ...waiting, isClosed: true, recloseAt: null, operated: null }
      : waiting
  }
  if (breaker.opensAt !== null) {
    const moving = travelled(breaker, now, next, currents)
    return breaker.opensAt <= next ? opened(moving, next) : moving
  }
  const first = firstOf(breaker, now, currents)
  const moved = travelled(breaker, now, next, currents)
  if (first.at > next) return moved
  return { ...moved, operated: first.name, opensAt: roundTo(next + breaker.feeder.breakerTime, microsecond) }
}

/** The relay that would operate first, and when. */
function firstOf(breaker: Breaker, now: number, currents: RelayCurrents): { name: RelayName | null; at: number } {
  let first: { name: RelayName | null; at: number } = { name: null, at: Infinity }
  for (const { name, setting, travel } of breaker.relays) {
    const wait = timeToOperate(setting, travel, currentFor(name, currents))
    const at = wait === 'never' ? Infinity : roundTo(now + wait, microsecond)
    if (at < first.at) first = { name, at }
  }
  return first
}

function currentFor(name: RelayName, currents: RelayCurrents): number {
  return name === 'overcurrent' ? currents.phase : currents.residual
}

function resetOf(feeder: Feeder): RelayReset {
  return feeder.relayReset ?? 'at-once'
}

function travelled(breaker: Breaker, now: number, next: number, currents: RelayCurrents): Breaker {
  const reset = resetOf(breaker.feeder)
  const relays = breaker.relays.map((it) => {
    return { ...it, travel: relayProgress(it.setting, it.travel, currentFor(it.name, currents), next - now, reset) }
  })
  return { ...breaker, relays }
}

function opened(breaker: Breaker, now: number): Breaker {
  const [dead, ...later] = breaker.deadTimes
  const isDisc = resetOf(breaker.feeder) === 'by-curve'
  return {
    ...breaker,
    isClosed: false,
    opensAt: null,
    recloseAt: dead === undefined ? null : roundTo(now + dead, microsecond),
    deadTimes: later,
    relays: breaker.relays.map((it) => {
      const hasOperated = it.name === breaker.operated || it.travel === 1
      return hasOperated ? { ...it, travel: isDisc ? 1 : 0 } : it
    }),
  }
}
