/**
 * The other half of `.ci/packedJson.mjs`: a text of the shelf as it was before the build compressed it. At once, not in a
 * promise: a worker that waits while its script is loading loses the questions that come meanwhile.
 */
import { gunzipSync, strFromU8 } from 'fflate'

/** @param packed gzip, written as base64 */
export function unpack(packed: string): string {
  return strFromU8(gunzipSync(Uint8Array.from(atob(packed), (it) => it.charCodeAt(0))))
}
