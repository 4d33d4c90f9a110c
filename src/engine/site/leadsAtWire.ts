/**
 * Earth leads whose bare metal can get to a low-voltage wire: the clamps of one that is being hoisted or hangs loose, and
 * the cable of one with a cut jacket that lies over the wires. Not one that is laid clear, not a wire under a guard.
 */
import { isEarthLead } from '../gear/earthLeads'
import { effectiveParameters, requireItem } from './questions'
import type { ItemId, ThingId } from './scenario'
import type { Site } from './site'

/** In order of id. */
export function leadsAtWire(site: Site, wire: ThingId): readonly ItemId[] {
  if (isGuarded(site, wire)) return []
  return Object.keys(site.items).filter((id) => isAtWires(site, id))
}

export function isGuarded(site: Site, wire: ThingId): boolean {
  return site.guards.some((it) => it.on === wire)
}

function isAtWires(site: Site, id: ItemId): boolean {
  const item = requireItem(site, id)
  const route = site.written[`route:${id}`]
  if (!isEarthLead(item.type) || route === 'clear-of-lv') return false
  const ends = site.clamps.filter((it) => it.lead === id).map((it) => it.end)
  const isAloft = ends.some((end) => end !== 'earth')
  const isHoisted = item.where.kind === 'handline' || site.hauled.includes(id)
  if (isHoisted && !isAloft) return true
  const isUp = isHoisted || isAloft
  return isUp && route === 'over-lv' && effectiveParameters(item)['jacketWhole'] === false
}
