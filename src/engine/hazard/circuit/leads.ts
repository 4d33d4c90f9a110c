/**
 * Earthing and bonding leads: each piece of cable by its length, section and temperature, with the reactance of a single
 * wire whose current returns about a metre away, ωμ0/2π ln(D/gmr) (physics reference 4.10); each clamp its seat.
 * A piece that has melted is not there, nor is cable that hangs on no clamp.
 */
import { ln, PI } from '../../math/portable'
import { MU0 } from '../../units/constants'
import { leadResistance } from '../../physics/conductor'
import type { Element } from '../../physics/network'
import type { Fitted, FittedLead } from './fitted'
import { clampId, leadNode, leadPieceId } from './nodes'
import { angularFrequency, reactive, resistor } from './parts'

/** How far the current of a lead returns, metres: the conductor, the pole's metalwork, the ground (own choice). */
export const returnDistance = 1
/** Geometric mean radius of a solid round wire over its radius. */
const gmrShare = 0.7788
export const coldLead = 20
/** Of a lead that hangs on nothing, to earth, farad: ten metres of thin cable in the air (own choice, no source). */
export const looseCapacitance = 1e-10

export interface LeadWear {
  /** °C by piece id; a piece not named is cold. */
  readonly temperature: ReadonlyMap<string, number>
  /** Ids of pieces that melted and clamps that burnt off. */
  readonly gone: ReadonlySet<string>
}

export const freshLeads: LeadWear = { temperature: new Map(), gone: new Set() }

export function leads(frequency: number, fitted: Fitted, wear: LeadWear): readonly Element[] {
  return fitted.leads.flatMap((lead) => {
    const pieces = wholePieces(lead, wear)
    const held = heldEnds(lead, wear)
    return [
      ...pieces.filter((piece) => held.has(piece.from)).map((piece) => cable(frequency, lead, piece, wear)),
      ...lead.clamps
        .filter((clamp) => !wear.gone.has(clampId(lead.item, clamp.end)))
        .map((clamp) =>
          resistor(clampId(lead.item, clamp.end), leadNode(lead.item, clamp.end), clamp.node, clamp.resistance),
        ),
    ]
  })
}

/** All of a lead's cable, held or not. */
export function cables(frequency: number, lead: FittedLead, wear: LeadWear): readonly Element[] {
  return lead.pieces.map((piece) => cable(frequency, lead, piece, wear))
}

type Piece = FittedLead['pieces'][number]

function cable(frequency: number, lead: FittedLead, piece: Piece, wear: LeadWear): Element {
  const id = leadPieceId(lead.item, piece.from, piece.to)
  const temperature = wear.temperature.get(id) ?? coldLead
  const metal = leadResistance(lead.material, piece.area, piece.length, temperature)
  const gmr = gmrShare * Math.sqrt(piece.area / PI)
  const reactance = ((angularFrequency(frequency) * MU0) / (2 * PI)) * ln(returnDistance / gmr) * piece.length
  return reactive(id, leadNode(lead.item, piece.from), leadNode(lead.item, piece.to), metal + piece.added, reactance)
}

function wholePieces(lead: FittedLead, wear: LeadWear): readonly Piece[] {
  return lead.pieces.filter((piece) => !wear.gone.has(leadPieceId(lead.item, piece.from, piece.to)))
}

/** Ends that some clamp holds through whole cable: the others are loose metal and belong to no circuit. */
export function heldEnds(lead: FittedLead, wear: LeadWear): ReadonlySet<string> {
  const held = new Set(lead.clamps.map((clamp) => clamp.end).filter((end) => !wear.gone.has(clampId(lead.item, end))))
  const pieces = wholePieces(lead, wear)
  for (let before = -1; before !== held.size; ) {
    before = held.size
    for (const { from, to } of pieces) {
      if (held.has(from)) held.add(to)
      if (held.has(to)) held.add(from)
    }
  }
  return held
}
