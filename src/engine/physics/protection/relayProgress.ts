/**
 * A relay's travel under a current that changes in steps: it operates when Σ dt/t(I) reaches 1 (IEEE C37.112, the
 * dynamic form of its equation). Below pickup the travel made so far stays; whether it is reset or kept between two shots
 * of reclosing is the relay's own data, so that is the caller's to say by starting again from 0 or not.
 */
import { invariant } from '../../units/invariant'
import { operatingTime, type CurveName } from './operatingTime'

export interface RelaySetting {
  readonly curve: CurveName
  /** Primary amperes. */
  readonly pickup: number
  readonly multiplier: number
}

/** Travel (0–1, 1 = operated) after `seconds` more at `current` (A). */
export function relayProgress(setting: RelaySetting, progress: number, current: number, seconds: number): number {
  invariant(progress >= 0 && progress <= 1, 'relay progress in 0–1', progress)
  invariant(seconds >= 0, 'seconds 0 or more', seconds)
  const time = operatingTime(setting.curve, setting.pickup, setting.multiplier, current)
  if (time === 'never') return progress
  return time <= seconds ? 1 : Math.min(1, progress + seconds / time)
}

/** Seconds until the relay operates if `current` (A) stays, from the travel made so far. */
export function timeToOperate(setting: RelaySetting, progress: number, current: number): number | 'never' {
  invariant(progress >= 0 && progress <= 1, 'relay progress in 0–1', progress)
  if (progress === 1) return 0
  const time = operatingTime(setting.curve, setting.pickup, setting.multiplier, current)
  return time === 'never' ? 'never' : (1 - progress) * time
}
