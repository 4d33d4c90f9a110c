/** What happens in the course of a livening, moment by moment: relays, breakers, fuses, leads, layers. Seconds of its own time. */
import type { ItemId, PersonId, ThingId } from '../site/scenario'
import { clampId, leadPieceId } from './circuit/nodes'
import type { Fitted } from './circuit/fitted'
import type { Device, Operated } from './protection/device'

export type Happening = { readonly at: number } & (
  | { readonly what: 'relay-operates'; readonly of: ThingId; readonly by: Operated }
  /** A breaker, a set that stalls, a source that stops by itself. */
  | { readonly what: 'breaker-opens' | 'breaker-recloses' | 'source-stops'; readonly of: ThingId }
  /** `of` is the element that it held. */
  | { readonly what: 'fuse-blows'; readonly of: string }
  /** A piece of cable by its two ends, a clamp by its end. */
  | { readonly what: 'lead-melts' | 'clamp-comes-off'; readonly of: ItemId; readonly end: string }
  | { readonly what: 'layer-fails'; readonly of: ItemId; readonly person: PersonId }
)

/** @param before devices in the order of `after` */
export function deviceHappenings(
  before: readonly Device[],
  after: readonly Device[],
  at: number,
): readonly Happening[] {
  return after.flatMap((now, i) => ofDevice(before[i]!, now, at))
}

function ofDevice(was: Device, now: Device, at: number): readonly Happening[] {
  const of = now.sources[0] ?? ''
  const blown = now.opened.filter((it) => !was.opened.includes(it))
  if (blown.length > 0) return blown.map((element) => ({ at, what: 'fuse-blows', of: element }))
  if (was.isOff !== now.isOff) {
    const isStop = now.operated === 'stall' || now.operated === 'source-stop'
    return [{ at, what: was.isOff ? 'breaker-recloses' : isStop ? 'source-stops' : 'breaker-opens', of }]
  }
  return was.operated === null && now.operated !== null ? [{ at, what: 'relay-operates', of, by: now.operated }] : []
}

/** @param before element ids of what was gone already */
export function wearHappenings(
  { leads }: Fitted,
  before: ReadonlySet<string>,
  after: ReadonlySet<string>,
  at: number,
): readonly Happening[] {
  const isNew = (id: string): boolean => after.has(id) && !before.has(id)
  return leads.flatMap(({ item, pieces, clamps }): Happening[] => [
    ...pieces
      .filter(({ from, to }) => isNew(leadPieceId(item, from, to)))
      .map(({ from, to }): Happening => ({ at, what: 'lead-melts', of: item, end: `${from}-${to}` })),
    ...clamps
      .filter(({ end }) => isNew(clampId(item, end)))
      .map(({ end }): Happening => ({ at, what: 'clamp-comes-off', of: item, end })),
  ])
}

/** In time; at one second in the order in which they were found. */
export const inTime = (all: readonly Happening[]): readonly Happening[] => [...all].sort((a, b) => a.at - b.at)
