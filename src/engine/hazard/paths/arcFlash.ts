/**
 * Arc flash and a lead that is thrown (row 22): everybody near. Nothing of it is computed; it is told in words, without a
 * number.
 */
import type { ExposurePath } from './exposurePath'

export const arcFlash: ExposurePath = {
  id: 'arc-flash',
  rows: [22],
  limit: 'words',
  joins: () => false,
}
