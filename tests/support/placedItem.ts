/** An item of the catalogue more than the register of Marrow Bend has, sound unless said otherwise. */
import type { Item, Site } from '../../src/engine/site/site'

export function withItem(site: Site, id: string, type: string, where: Item['where'], change: Partial<Item> = {}): Site {
  const item: Item = {
    id,
    type,
    label: {},
    defects: [],
    faulted: false,
    failed: false,
    bookedOut: true,
    bookedIn: false,
    verdict: null,
    where,
    ...change,
  }
  const items = Object.fromEntries(
    [...Object.entries(site.items), [id, item] as const].sort(([a], [b]) => (a < b ? -1 : 1)),
  )
  const held = where.kind === 'person' ? site.persons[where.person] : undefined
  const persons = held ? { ...site.persons, [held.id]: { ...held, holds: [...held.holds, id] } } : site.persons
  return { ...site, items, persons }
}
