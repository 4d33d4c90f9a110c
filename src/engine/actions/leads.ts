/** What earth leads and bonds share: ends, how far they reach, how firmly a clamp sits. */
import { leadPieces, type LeadPiece } from '../gear/leadPieces'
import { clampsOf, effectiveParameters, gearOf, numberOf, requireItem } from '../site/questions'
import type { ItemId, ThingId } from '../site/scenario'
import type { Clamp, Site } from '../site/site'
import type { Order, Refusal, ValueSpec } from './action'
import { isAtHand } from './conditions'
import { itemIn, numberIn, thingIn } from './orderValues'
import { findPointOf, findStick, separation } from './reach'
import { refuse } from './refuse'

/** Turns of the eye screw; the thread ends at ten. */
export const turnsSpec: ValueSpec = { kind: 'number', unit: 'turn', low: 1, high: 10, step: 1 }

/** On the ground a lead can be grasped when it lies there, whatever its other ends hang on. */
export function isLeadAtHand(site: Site, order: Order): boolean {
  const lead = itemIn(order)
  const { where } = requireItem(site, lead)
  const hangsToGround = where.kind === 'fitted' || where.kind === 'handline' || site.hauled.includes(lead)
  return hangsToGround || isAtHand(site, order.who, lead)
}

/** Conductor ends of a lead, in order. */
function conductorEnds(site: Site, lead: ItemId): readonly string[] {
  return (gearOf(site, lead).type.ends ?? []).filter((end) => end !== 'earth' && !isMissing(site, lead, end))
}

function isMissing(site: Site, lead: ItemId, end: string): boolean {
  return effectiveParameters(requireItem(site, lead), end).missing === true
}

/** The next end of the lead that is on nothing. @param kept an end that is left for something else */
export function findFreeEnd(site: Site, lead: ItemId, kept?: string): string | undefined {
  const used = clampsOf(site, lead).map((clamp) => clamp.end)
  return conductorEnds(site, lead).find((end) => end !== kept && !used.includes(end))
}

/** An end goes on a thing only if the lead is long enough from every end that is on already. */
export function fitRefusal(site: Site, order: Order, end: string): Refusal | undefined {
  const lead = itemIn(order)
  const to = findPointOf(site, thingIn(order))
  if (!to) return undefined
  const isShort = clampsOf(site, lead).some((clamp) => {
    const from = findPointOf(site, clamp.on)
    return from !== undefined && separation(from, to) > lengthBetween(site, lead, clamp.end, end)
  })
  return isShort ? refuse(order, 'lead-too-short', { item: lead }) : undefined
}

/** Metres of lead between two of its ends: along it, or over its hub. */
function lengthBetween(site: Site, lead: ItemId, a: string, b: string): number {
  const { type, is } = gearOf(site, lead)
  const hop = typeof is.hop === 'number' ? is.hop : 0
  const pieces = leadPieces(type, numberOf(is, 'length'), hop)
  const wayTo = (end: string): readonly LeadPiece[] => {
    const last = pieces.find((piece) => piece.to === end)
    return last === undefined ? [] : [...wayTo(last.from), last]
  }
  // The way that both share from the first end is on neither.
  const [toA, toB] = [wayTo(a), wayTo(b)]
  const apart = [...toA.filter((it) => !toB.includes(it)), ...toB.filter((it) => !toA.includes(it))]
  return apart.reduce((sum, piece) => sum + piece.length, 0)
}

/** The clamp does not move when it is pulled: seated, its jaw and screw sound and wide enough for the wire. */
export function isFirm(site: Site, clamp: Clamp): boolean {
  const is = effectiveParameters(requireItem(site, clamp.lead), clamp.end)
  const wire = site.scenario.conductors.find((it) => it.id === clamp.on)
  const isTooThick = wire !== undefined && typeof is.jawTo === 'number' && is.jawTo < 2 * wire.radius
  return (
    !clamp.loosened &&
    clamp.turns >= numberOf(is, 'seatTurns') &&
    is.jawHolds !== false &&
    is.springHolds !== false &&
    !isTooThick
  )
}

/** Turns that a head or a joint which slips still gives (experience, no source). */
const turnsOfSlippingStick = 3

/** What the stick makes of the turns ordered: a head that does not lock slips off the eye, a loose joint turns in itself. */
export function turnsByStick(site: Site, order: Order): number {
  const turns = numberIn(order, 'turns')
  const stick = findStick(site, order.who)
  const is = stick === undefined ? undefined : gearOf(site, stick).is
  const slips = is?.headLocks === false || is?.jointTight === false
  return slips ? Math.min(turns, turnsOfSlippingStick) : turns
}

/** The last clamp of this lead on the thing. */
export function findClamp(site: Site, on: ThingId, lead: ItemId): Clamp | undefined {
  return site.clamps.findLast((it) => it.on === on && it.lead === lead)
}

/** The clamp on the thing that comes next, of an earth lead or a bond lead: the last that was not yet tried, or the last. */
export function findUntried(site: Site, on: ThingId): Clamp | undefined {
  const there = site.clamps.filter((it) => it.on === on)
  return there.findLast((it) => !it.tugged) ?? there.at(-1)
}

/** The clamp on the thing that has the fewest turns; of several alike the last. */
export function findLoosest(site: Site, on: ThingId): Clamp | undefined {
  const there = site.clamps.filter((it) => it.on === on)
  return there.findLast((it) => there.every((other) => it.turns <= other.turns))
}

/** The end on its seat, unless it is on something already. */
export function withEnd(site: Site, clamp: Clamp): Site {
  const isOn = site.clamps.some((it) => it.lead === clamp.lead && it.end === clamp.end)
  return isOn ? site : { ...site, clamps: [...site.clamps, clamp] }
}

export function withoutEnd(site: Site, lead: ItemId, end: string): Site {
  return { ...site, clamps: site.clamps.filter((it) => !(it.lead === lead && it.end === end)) }
}
