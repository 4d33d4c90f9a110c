/**
 * What the fault does to leads while it lasts: cable warms without losing heat and opens at the melting point, a badly
 * seated clamp burns off when it has taken its heat, a loose one lets go after half a period of too hard a pull. All go on
 * through all shots.
 */
import { magnitude } from '../math/complex'
import { roundTo } from '../math/round'
import {
  adiabaticTime,
  contactBurnTime,
  contactHeat,
  contactHeatLimit,
  looseClampHolds,
  meltingTemperature,
  pullAtClamp,
  temperatureAfter,
} from '../physics/conductor'
import type { Solution } from '../physics/network'
import { microsecond } from './protection/device'
import type { Fitted, FittedLead } from './circuit/fitted'
import { coldLead, heldEnds, returnDistance, type LeadWear } from './circuit/leads'
import { clampId, leadPieceId } from './circuit/nodes'

export interface Wear extends LeadWear {
  /** Joule taken by a clamp's seat, by clamp id. */
  readonly heat: ReadonlyMap<string, number>
  /** Seconds that a loose clamp has been pulled too hard, by clamp id. */
  readonly pulled: ReadonlyMap<string, number>
}

export const unworn: Wear = { temperature: new Map(), gone: new Set(), heat: new Map(), pulled: new Map() }

/** When the next piece melts or the next clamp comes off if the currents stay; Infinity when none will. */
export function nextWear(fitted: Fitted, wear: Wear, solution: Solution, frequency: number, now: number): number {
  return loadedParts(fitted, wear, solution, frequency).reduce((next, it) => Math.min(next, endOf(it, now)), Infinity)
}

export function wearOn(
  fitted: Fitted,
  wear: Wear,
  solution: Solution,
  frequency: number,
  now: number,
  next: number,
): Wear {
  const temperature = new Map(wear.temperature)
  const heat = new Map(wear.heat)
  const pulled = new Map(wear.pulled)
  const gone = new Set(wear.gone)
  for (const part of loadedParts(fitted, wear, solution, frequency)) {
    if (endOf(part, now) <= next) {
      gone.add(part.id)
      continue
    }
    switch (part.kind) {
      case 'piece': {
        const { material, area } = part
        temperature.set(part.id, temperatureAfter(material, area, part.current, part.from, next - now))
        break
      }
      case 'clamp':
        heat.set(part.id, part.heat + contactHeat(part.resistance, part.current, next - now))
        break
      case 'loose':
        pulled.set(part.id, (pulled.get(part.id) ?? 0) + next - now)
    }
  }
  return { temperature, heat, pulled, gone }
}

type Part =
  | {
      readonly kind: 'piece'
      readonly id: string
      readonly material: FittedLead['material']
      readonly area: number
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
  /** Pulled too hard: it goes in so many seconds. */
  | { readonly kind: 'loose'; readonly id: string; readonly wait: number }

/** Below this nothing warms by a hundredth of a degree within an hour, and nothing is pulled. */
const leastCurrent = 1

function loadedParts(fitted: Fitted, wear: Wear, solution: Solution, frequency: number): readonly Part[] {
  return fitted.leads.flatMap((lead): readonly Part[] => {
    const pieces = loadedPieces(lead, wear, solution)
    const clamps = lead.clamps
      .map((clamp) => ({ clamp, id: clampId(lead.item, clamp.end) }))
      .filter(({ id }) => !wear.gone.has(id))
      .map(({ clamp, id }) => ({ clamp, id, current: magnitude(solution.current(id)) }))
      .filter(({ current }) => current > leastCurrent)
    return [
      ...pieces.map(({ id, piece: { area }, current }): Part => {
        return { kind: 'piece', id, material: lead.material, area, from: wear.temperature.get(id) ?? coldLead, current }
      }),
      ...clamps.map(({ clamp, id, current }): Part => {
        const heat = Math.min(wear.heat.get(id) ?? 0, contactHeatLimit)
        return { kind: 'clamp', id, resistance: clamp.resistance, heat, current }
      }),
      ...clamps
        .filter(({ clamp }) => !clamp.isTight && pullAt(clamp.end, pieces) > looseClampHolds)
        .map(({ id }): Part => {
          return { kind: 'loose', id, wait: Math.max(0, 1 / (2 * frequency) - (wear.pulled.get(id) ?? 0)) }
        }),
    ]
  })
}

interface LoadedPiece {
  readonly id: string
  readonly piece: FittedLead['pieces'][number]
  readonly current: number
}

function loadedPieces(lead: FittedLead, wear: Wear, solution: Solution): readonly LoadedPiece[] {
  const held = heldEnds(lead, wear)
  return lead.pieces
    .map((piece) => ({ piece, id: leadPieceId(lead.item, piece.from, piece.to) }))
    .filter(({ piece, id }) => held.has(piece.from) && !wear.gone.has(id))
    .map(({ piece, id }) => ({ piece, id, current: magnitude(solution.current(id)) }))
    .filter(({ current }) => current > leastCurrent)
}

/** Newton, by the pieces of cable that hang on it, as if they all pulled the same way. */
function pullAt(end: string, pieces: readonly LoadedPiece[]): number {
  return pieces
    .filter(({ piece }) => piece.from === end || piece.to === end)
    .reduce((sum, { piece, current }) => sum + pullAtClamp(current, piece.length, returnDistance), 0)
}

function endOf(part: Part, now: number): number {
  const wait = waitOf(part)
  return wait === 'never' ? Infinity : roundTo(now + wait, microsecond)
}

function waitOf(part: Part): number | 'never' {
  switch (part.kind) {
    case 'piece': {
      const { material, area } = part
      return adiabaticTime(material, area, part.current, part.from, meltingTemperature(material))
    }
    case 'clamp':
      return contactBurnTime(part.resistance, part.current, part.heat)
    case 'loose':
      return part.wait
  }
}
