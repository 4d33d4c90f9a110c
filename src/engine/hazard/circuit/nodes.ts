/** How the nodes of the site's circuit are named. '0' is remote earth. */
import type { ItemId, PersonId, Phase, ThingId } from '../../site/scenario'

export const armNode = 'arm'
/** Of the next pole of the line. */
export const nextArmNode = 'arm@next'
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

type FeederPart = 'star' | 'station' | 'emf' | 'bus' | 'line' | 'end'

export function feederNode(feeder: ThingId, part: FeederPart, phase?: Phase): string {
  return phase === undefined ? `${feeder}/${part}` : `${feeder}/${part}-${phase}`
}

export function feederLineId(feeder: ThingId, phase: Phase): string {
  return `${feeder}/line-${phase}`
}

/** The fuse of a phase where the line begins. */
export function feederFuseId(feeder: ThingId, phase: Phase): string {
  return `${feeder}/fuse-${phase}`
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

/** Terminals of a transformer: by phase, the star point of a star, the earth of a single wire. */
export function transformerNode(transformer: ThingId, side: 'high' | 'low', at: Phase | 'star' | 'earth'): string {
  return `${transformer}/${side}-${at}`
}

export function windingId(transformer: ThingId, side: 'high' | 'low', phase: Phase): string {
  return `${transformer}/winding-${side}-${phase}`
}

/** Fuse carrier between a conductor of the section and the transformer. */
export function carrierId(transformer: ThingId, phase: Phase): string {
  return `${transformer}/carrier-${phase}`
}

/** Behind the low-voltage switch of a transformer: where wires and other people's sources are joined. */
export function boardNode(transformer: ThingId, phase: Phase): string {
  return `${transformer}/board-${phase}`
}

/** The EMF of a source of somebody's own, and the node that it drives. */
export function ownEmfId(source: ThingId, phase: Phase): string {
  return `own/${source}/emf-${phase}`
}

/** What a source of somebody's own gives flows through this element. */
export function outputId(source: ThingId, phase: Phase): string {
  return `${source}/output-${phase}`
}

/** An earth of the low-voltage neutral, counted from the worked pole outward. */
export function neutralEarthNode(place: number): string {
  return `lv/neutral-${place + 1}`
}

/** Where a lead can be clamped on the earth conductor that is cast into a pole. */
export const terminalNode = 'terminal'
export const truckNode = 'truck'
/** What the wheels stand on. */
export const tyresNode = 'truck/wheels'
export const bucketNode = 'bucket'

/** Metal on the pole beside arm and stay. */
export function metalNode(metalwork: ThingId): string {
  return `metal/${metalwork}`
}

/** A fence, a pipe, somebody else's earth. */
export function groundThingNode(thing: ThingId): string {
  return `ground/${thing}`
}

export function handleNode(at: ThingId): string {
  return `${at}/handle`
}

/** Of a conductor that is opened at the pole: the end towards the crossing. */
export function farEndNode(conductor: ThingId): string {
  return farEndOf(conductorAtPole(conductor))
}

/** Of a place where a conductor is opened: the end beyond the gap. */
export function farEndOf(node: string): string {
  return `${node}/far`
}

/** Somebody's skin, where another person has a hand on it. */
export function personNode(person: PersonId): string {
  return `person/${person}`
}
