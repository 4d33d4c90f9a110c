/**
 * Expulsion fuses, one a phase: each melts by the current through it (Σ dt/t(I) = 1, taken as the slowest link that the
 * standard allows), arcs for one period and then holds its phase open for good. What has melted so far stays between shots:
 * a link cools within seconds to minutes, which would make it slower (own choice).
 */
import { magnitude, ZERO } from '../../math/complex'
import { roundTo } from '../../math/round'
import { arcTime, meltingTime } from '../../physics/protection'
import type { ExpulsionFuses, ThingId } from '../../site/scenario'
import { microsecond, type CurrentOf, type Device } from './device'

interface Fuse {
  /** The element that it is: its current goes through it, and it is gone when the fuse has blown. */
  readonly element: string
  /** The node that it alone feeds. */
  readonly feeds: string | null
  /** 0 when cold, 1 when the link has parted. */
  readonly melted: number
  /** Second at which the arc goes out, once the link has parted. */
  readonly opensAt: number | null
  readonly isBlown: boolean
}

export interface FuseSet {
  /** Those that are out of the circuit when all of these have blown; a blown one opens its own phase in any case. */
  readonly sources: readonly ThingId[]
  readonly type: ExpulsionFuses
  readonly frequency: number
  readonly fuses: readonly Fuse[]
}

export function freshFuse(element: string, feeds: string | null = null): Fuse {
  return { element, feeds, melted: 0, opensAt: null, isBlown: false }
}

export function fusesDevice(set: FuseSet): Device {
  const blown = set.fuses.filter((it) => it.isBlown)
  return {
    sources: set.sources,
    isOff: blown.length === set.fuses.length,
    willClose: false,
    opened: blown.map((it) => it.element),
    dead: blown.flatMap((it) => it.feeds ?? []),
    limits: [],
    operated: blown.length > 0 ? 'fuse' : null,
    next: (now, currentOf) =>
      set.fuses.reduce((next, fuse) => Math.min(next, nextOf(set, fuse, now, currentOf)), Infinity),
    advance: (now, next, currentOf) =>
      fusesDevice({ ...set, fuses: set.fuses.map((fuse) => advanced(set, fuse, now, next, currentOf)) }),
  }
}

function nextOf(set: FuseSet, fuse: Fuse, now: number, currentOf: CurrentOf): number {
  if (fuse.isBlown) return Infinity
  return fuse.opensAt ?? meltsAt(set, fuse, now, currentOf)
}

function meltsAt(set: FuseSet, fuse: Fuse, now: number, currentOf: CurrentOf): number {
  const time = timeToMelt(set, fuse, currentOf)
  return time === 'never' ? Infinity : roundTo(now + (1 - fuse.melted) * time, microsecond)
}

function timeToMelt({ type }: FuseSet, fuse: Fuse, currentOf: CurrentOf): number | 'never' {
  return meltingTime(type.link, type.rating, magnitude(currentOf(fuse.element) ?? ZERO), 'most')
}

function advanced(set: FuseSet, fuse: Fuse, now: number, next: number, currentOf: CurrentOf): Fuse {
  if (fuse.isBlown) return fuse
  if (fuse.opensAt !== null) return fuse.opensAt <= next ? { ...fuse, isBlown: true } : fuse
  if (meltsAt(set, fuse, now, currentOf) <= next) {
    return { ...fuse, melted: 1, opensAt: roundTo(next + arcTime(set.frequency), microsecond) }
  }
  const time = timeToMelt(set, fuse, currentOf)
  return time === 'never' ? fuse : { ...fuse, melted: Math.min(1, fuse.melted + (next - now) / time) }
}
