/** Recorded runs by scenario. A new scenario: its file beside this one, and one line here. */
import type { RecordedRun } from '../recordedRun'
import { marrowBendRuns } from './marrowBend'

export const runsOf: Readonly<Record<string, readonly RecordedRun[]>> = {
  'marrow-bend': marrowBendRuns,
}
