/**
 * A small generating set: it stalls, or its own overload stops it, when it has had to give more than a share of its rated
 * current for so long without a break. Judged by current and not by power, because into a short circuit it gives little
 * power: the field collapses and the overload trips (own choice). Once stopped it stays off.
 */
import { magnitude, ZERO } from '../../math/complex'
import { roundTo } from '../../math/round'
import { relayProgress, timeToOperate, type RelaySetting } from '../../physics/protection'
import type { ThingId } from '../../site/scenario'
import { microsecond, type CurrentOf, type Device } from './device'

export interface Generator {
  readonly source: ThingId
  /** The elements that carry what it gives. */
  readonly measures: readonly string[]
  /** Definite time above the share of rated current. */
  readonly stall: RelaySetting
  readonly travel: number
}

export function generatorDevice(generator: Generator): Device {
  const { source, stall, travel } = generator
  const isOff = travel === 1
  return {
    sources: [source],
    isOff,
    willClose: false,
    opened: [],
    dead: [],
    limits: [],
    operated: isOff ? 'stall' : null,
    next: (now, currentOf) => {
      const wait = isOff ? 'never' : timeToOperate(stall, travel, largest(generator, currentOf))
      return wait === 'never' ? Infinity : roundTo(now + wait, microsecond)
    },
    advance: (now, next, currentOf) => {
      if (isOff) return generatorDevice(generator)
      const current = largest(generator, currentOf)
      const wait = timeToOperate(stall, travel, current)
      const isDue = wait !== 'never' && roundTo(now + wait, microsecond) <= next
      const moved = isDue ? 1 : relayProgress(stall, travel, current, next - now, 'at-once')
      return generatorDevice({ ...generator, travel: moved })
    },
  }
}

function largest({ measures }: Generator, currentOf: CurrentOf): number {
  return Math.max(0, ...measures.map((id) => magnitude(currentOf(id) ?? ZERO)))
}
