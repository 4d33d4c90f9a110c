/**
 * A relay's travel under a current that changes in steps: it operates when Σ dt/t(I) reaches 1 (IEEE C37.112, the
 * dynamic form of its equation). What the travel does at or below pickup is the relay's own data:
 *   lost at once: a static or digital relay without reset delay;
 *   kept: an integrating relay that forgets nothing until it has operated;
 *   by its curve: an induction disc or its imitation, t = D · tr/(1 − M²) from full travel (IEEE C37.112; tr from memory,
 *   high confidence). A curve for which no reset is published loses its travel at once.
 */
import { invariant } from '../../units/invariant'
import { operatingTime, type CurveName } from './operatingTime'

export interface RelaySetting {
  readonly curve: CurveName
  /** Primary amperes. */
  readonly pickup: number
  readonly multiplier: number
}

export const relayResets = ['at-once', 'kept', 'by-curve'] as const
export type RelayReset = (typeof relayResets)[number]

/** Seconds at dial 1 and no current. */
const resetFactors: Partial<Readonly<Record<CurveName, number>>> = {
  'ieee-moderately-inverse': 4.85,
  'ieee-very-inverse': 21.6,
  'ieee-extremely-inverse': 29.1,
}

/** Seconds from full travel back to rest at `current` (A) by the curve; 'never' exactly at pickup, 0 without a curve. */
export function resetTime(setting: RelaySetting, current: number): number | 'never' {
  const multiple = current / setting.pickup
  invariant(multiple >= 0 && multiple <= 1, 'a current from 0 to pickup', current)
  const factor = resetFactors[setting.curve]
  if (factor === undefined) return 0
  const time = (setting.multiplier * factor) / (1 - multiple * multiple)
  return Number.isFinite(time) ? time : 'never'
}

/** Travel (0–1, 1 = operated) after `seconds` more at `current` (A). */
export function relayProgress(
  setting: RelaySetting,
  progress: number,
  current: number,
  seconds: number,
  reset: RelayReset,
): number {
  invariant(progress >= 0 && progress <= 1, 'relay progress in 0–1', progress)
  invariant(seconds >= 0, 'seconds 0 or more', seconds)
  const time = operatingTime(setting.curve, setting.pickup, setting.multiplier, current)
  if (time === 'never') return fallenBack(setting, progress, current, seconds, reset)
  return time <= seconds ? 1 : Math.min(1, progress + seconds / time)
}

function fallenBack(
  setting: RelaySetting,
  progress: number,
  current: number,
  seconds: number,
  reset: RelayReset,
): number {
  if (reset === 'kept') return progress
  if (reset === 'at-once') return 0
  // one bit above pickup nothing operates either
  const time = resetTime(setting, Math.min(current, setting.pickup))
  return time === 'never' ? progress : time === 0 ? 0 : Math.max(0, progress - seconds / time)
}

/** Seconds until the relay operates if `current` (A) stays, from the travel made so far. */
export function timeToOperate(setting: RelaySetting, progress: number, current: number): number | 'never' {
  invariant(progress >= 0 && progress <= 1, 'relay progress in 0–1', progress)
  if (progress === 1) return 0
  const time = operatingTime(setting.curve, setting.pickup, setting.multiplier, current)
  return time === 'never' ? 'never' : (1 - progress) * time
}
