/**
 * What the fault does to leads while it lasts: cable warms without losing heat and opens at the melting point, a badly
 * seated clamp burns off when it has taken its heat. Both go on through all shots.
 */
import { magnitude } from '../math/complex'
import { roundTo } from '../math/round'
import {
  adiabaticTime,
  contactBurnTime,
  contactHeat,
  contactHeatLimit,
  meltingTemperature,
  temperatureAfter,
} from '../physics/conductor'
import type { Solution } from '../physics/network'
import { microsecond } from './protection/device'
import type { Fitted, FittedLead } from './circuit/fitted'
import { coldLead, heldEnds, type LeadWear } from './circuit/leads'
import { clampId, leadPieceId } from './circuit/nodes'

export interface Wear extends LeadWear {
  /** Joule taken by a clamp's seat, by clamp id. */
  readonly heat: ReadonlyMap<string, number>
}

export const unworn: Wear = { temperature: new Map(), gone: new Set(), heat: new Map() }

/** When the next piece melts or the next clamp burns off if the currents stay; Infinity when none will. */
export function nextWear(fitted: Fitted, wear: Wear, solution: Solution, now: number): number {
  return loadedParts(fitted, wear, solution).reduce((next, part) => Math.min(next, endOf(part, now)), Infinity)
}

export function wearOn(fitted: Fitted, wear: Wear, solution: Solution, now: number, next: number): Wear {
  const temperature = new Map(wear.temperature)
  const heat = new Map(wear.heat)
  const gone = new Set(wear.gone)
  for (const part of loadedParts(fitted, wear, solution)) {
    if (endOf(part, now) <= next) gone.add(part.id)
    else if (part.kind === 'clamp')
      heat.set(part.id, part.heat + contactHeat(part.resistance, part.current, next - now))
    else
      temperature.set(
        part.id,
        temperatureAfter(part.lead.material, part.lead.area, part.current, part.from, next - now),
      )
  }
  return { temperature, heat, gone }
}

type Part =
  | {
      readonly kind: 'piece'
      readonly id: string
      readonly lead: FittedLead
      readonly from: number
      readonly current: number
    }
  | {
      readonly kind: 'clamp'
      readonly id: string
      readonly resistance: number
      readonly heat: number
      readonly current: number
    }

/** Below this nothing warms by a hundredth of a degree within an hour. */
const leastCurrent = 1

function loadedParts(fitted: Fitted, wear: Wear, solution: Solution): readonly Part[] {
  const parts = fitted.leads.flatMap((lead): Part[] => {
    const held = heldEnds(lead, wear)
    const pieces = lead.pieces
      .map((piece) => ({ piece, id: leadPieceId(lead.item, piece.from, piece.to) }))
      .filter(({ piece, id }) => held.has(piece.from) && !wear.gone.has(id))
    const clamps = lead.clamps
      .map((clamp) => ({ clamp, id: clampId(lead.item, clamp.end) }))
      .filter(({ id }) => !wear.gone.has(id))
    return [
      ...pieces.map(({ id }): Part => {
        return {
          kind: 'piece',
          id,
          lead,
          from: wear.temperature.get(id) ?? coldLead,
          current: magnitude(solution.current(id)),
        }
      }),
      ...clamps.map(({ clamp, id }): Part => {
        const heat = Math.min(wear.heat.get(id) ?? 0, contactHeatLimit)
        return { kind: 'clamp', id, resistance: clamp.resistance, heat, current: magnitude(solution.current(id)) }
      }),
    ]
  })
  return parts.filter((part) => part.current > leastCurrent)
}

function endOf(part: Part, now: number): number {
  const wait =
    part.kind === 'clamp'
      ? contactBurnTime(part.resistance, part.current, part.heat)
      : adiabaticTime(
          part.lead.material,
          part.lead.area,
          part.current,
          part.from,
          meltingTemperature(part.lead.material),
        )
  return wait === 'never' ? Infinity : roundTo(now + wait, microsecond)
}
