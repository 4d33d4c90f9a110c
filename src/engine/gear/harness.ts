/** Climbing harness with pole strap (row 29). */
import { commonPractice, defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const harness: GearType = {
  id: 'harness',
  rows: [29],
  passes: commonPractice,
  hands: 0,
  worn: 'body',
  test: 'try',
  defects: [
    defect('harness', 'look', 'broken-stitching', { holds: false }),
    defect('harness', 'look', 'burn', { holds: false }),
    defect('harness', 'test', 'hook-wear', { holds: false }),
    labelDefect('out-of-test', { inTest: false }),
    harmlessMark('harness', 'stained'),
  ],
  parameters: { holds: true, inTest: true },
}
