/** How the nodes of the site's circuit are named. '0' is remote earth. */
import type { ItemId, Phase, ThingId } from '../../site/scenario'

export const armNode = 'arm'
export const cageNode = 'cage'
export const stayUpperNode = 'stay-upper'
export const stayLowerNode = 'stay-lower'
export const lowVoltageStarNode = 'lv/star'
export const electrodesId = 'electrodes'

/** Where along the section: `pole`, `crossing`, or a switch. */
export function conductorNode(conductor: ThingId, place: string): string {
  return `${conductor}@${place}`
}

/** A conductor is touched and clamped at the pole. */
export function conductorAtPole(conductor: ThingId): string {
  return conductorNode(conductor, 'pole')
}

export function feederNode(feeder: ThingId, part: 'star' | 'station' | 'emf' | 'bus' | 'end', phase?: Phase): string {
  return phase === undefined ? `${feeder}/${part}` : `${feeder}/${part}-${phase}`
}

export function feederLineId(feeder: ThingId, phase: Phase): string {
  return `${feeder}/line-${phase}`
}

export function rodNode(rod: ItemId): string {
  return `rod/${rod}`
}

/** The cable just behind an end of a lead or bond. */
export function leadNode(lead: ItemId, end: string): string {
  return `lead/${lead}/${end}`
}

export function clampId(lead: ItemId, end: string): string {
  return `clamp/${lead}/${end}`
}

/** The piece of cable from one end to the next. */
export function leadPieceId(lead: ItemId, from: string, to: string): string {
  return `piece/${lead}/${from}-${to}`
}
