/** The cable of a lead as pieces between its ends: one after the other, or as tails that meet in a hub. Metres. */
import type { GearType } from './gearType'

export interface LeadPiece {
  readonly from: string
  readonly to: string
  readonly length: number
}

/** @param length of the first piece; @param hop of each further one */
export function leadPieces({ ends = [], hub }: GearType, length: number, hop: number): readonly LeadPiece[] {
  const [first, ...others] = ends
  if (first === undefined) return []
  if (hub === undefined) return others.map((to, i) => ({ from: ends[i]!, to, length: i === 0 ? length : hop }))
  return [{ from: first, to: hub, length }, ...others.map((to) => ({ from: hub, to, length: hop }))]
}

/** The piece that an end is crimped to: towards the first end or the hub; of the first end the first. */
export function isPieceOfEnd(type: GearType, piece: LeadPiece, end: string): boolean {
  return type.ends?.[0] === end ? piece.from === end : piece.to === end
}
