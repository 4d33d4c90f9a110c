/** Instrument for earth resistance and for continuity (row 37). `reads` is what it shows over what is there. */
import { commonPractice, defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const earthTester: GearType = {
  id: 'earth-tester',
  rows: [37],
  passes: commonPractice,
  hands: 1,
  test: 'self-test',
  defects: [
    defect('earth-tester', 'test', 'flat', { indicates: false }),
    defect('earth-tester', 'test', 'off-on-bar', { reads: 0.4 }),
    defect('earth-tester', 'look', 'broken-lead', { indicates: false }),
    labelDefect('out-of-test', { inTest: false }),
    harmlessMark('earth-tester', 'taped-case'),
  ],
  parameters: { indicates: true, reads: 1, inTest: true },
}
