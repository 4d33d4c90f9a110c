/**
 * A source that stops by itself after a fixed time, whatever it feeds, or never: an inverter that notices that it stands
 * alone, a fault elsewhere that others clear. An inverter gives no more than its limit meanwhile (limited.ts).
 */
import type { ThingId } from '../../site/scenario'
import type { CurrentLimit, Device } from './device'

export function stoppingDevice(
  source: ThingId,
  stopsAfter: number | 'never',
  limits: readonly CurrentLimit[] = [],
  isOff = false,
): Device {
  const at = stopsAfter === 'never' ? Infinity : stopsAfter
  return {
    sources: [source],
    isOff,
    willClose: false,
    opened: [],
    dead: [],
    limits,
    operated: isOff ? 'source-stop' : null,
    next: () => (isOff ? Infinity : at),
    advance: (_, next) => stoppingDevice(source, stopsAfter, limits, isOff || next >= at),
  }
}
