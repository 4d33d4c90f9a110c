/** What inspection of boom and bucket could have found: their own ohms where they no longer insulate. */
import { effectiveParameters, itemsOf, requireItem } from './questions'
import type { Site } from './site'

/** @returns the least of all booms that the register names; undefined while they are sound, or none is named */
export function boomParameter(site: Site, name: 'boom' | 'liner'): number | undefined {
  const found = itemsOf(site, 'bucket-boom').flatMap((id) => {
    const value = effectiveParameters(requireItem(site, id))[name]
    return typeof value === 'number' ? [value] : []
  })
  return found.length > 0 ? Math.min(...found) : undefined
}
