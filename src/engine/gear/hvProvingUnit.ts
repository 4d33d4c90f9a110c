/** Proving unit for the detector (row 14). */
import { commonPractice, defect, harmlessMark } from './defect'
import type { GearType } from './gearType'

export const hvProvingUnit: GearType = {
  id: 'hv-proving-unit',
  rows: [14],
  passes: commonPractice,
  hands: 0,
  test: 'self-test',
  defects: [
    defect('hv-proving-unit', 'test', 'flat', { gives: false }),
    harmlessMark('hv-proving-unit', 'scuffed-case'),
  ],
  parameters: { gives: true },
}
