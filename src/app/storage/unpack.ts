/**
 * The other half of `.ci/packText.mjs`: a text of the shelf as it was before the build compressed it. At once, not in a
 * promise: a worker that waits while its script is loading loses the questions that come meanwhile.
 */
import { inflateSync, strFromU8, strToU8 } from 'fflate'

/** As much of a dictionary as the format can look back. */
const window = 32_768

/** @param packed deflated, written as base64 @param dictionary a text that it refers back to */
export function unpack(packed: string, dictionary?: string): string {
  const bytes = Uint8Array.from(atob(packed), (it) => it.charCodeAt(0))
  const options = dictionary === undefined ? {} : { dictionary: strToU8(dictionary).subarray(-window) }
  return strFromU8(inflateSync(bytes, options))
}
