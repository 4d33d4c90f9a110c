/**
 * A stroke to the line far away (procedure D15). Tens of kiloamperes in microseconds are no matter of a circuit at mains
 * frequency, and no number is honest: it is told in words. One leaves at the first thunder.
 */
import type { Mechanism } from './mechanism'

export const lightning: Mechanism<'lightning'> = {
  kind: 'lightning',
  rows: [15],
  isComputed: false,
  links: () => [],
}
