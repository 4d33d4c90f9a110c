/** Which fitted gear a fault current runs through: whatever joins a livened conductor to something else. */
import type { ItemId, ThingId } from '../site/scenario'
import type { Site } from '../site/site'

/** Leads and bonds with two ends on, and rods, that hang together with the livened things; in order of id. */
export function carriedCurrent(site: Site, livened: readonly ThingId[]): readonly ItemId[] {
  const reached = new Set<ThingId>(livened)
  const carried = new Set<ItemId>()
  let size = -1
  while (size !== reached.size) {
    size = reached.size
    for (const clamp of site.clamps) {
      const ends = site.clamps.filter((it) => it.lead === clamp.lead)
      if (!reached.has(clamp.on) || ends.length < 2) continue
      carried.add(clamp.lead)
      for (const end of ends) reached.add(end.on)
    }
  }
  for (const rod of site.rods) if (reached.has(`rod/${rod.item}`)) carried.add(rod.item)
  return [...carried].sort()
}
