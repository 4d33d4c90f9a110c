/** Proving unit for the low-voltage tester (row 16). */
import { commonPractice, defect, harmlessMark } from './defect'
import type { GearType } from './gearType'

export const lvProvingUnit: GearType = {
  id: 'lv-proving-unit',
  rows: [16],
  passes: commonPractice,
  hands: 0,
  test: 'self-test',
  defects: [
    defect('lv-proving-unit', 'test', 'flat', { gives: false }),
    harmlessMark('lv-proving-unit', 'scuffed-case'),
  ],
  parameters: { gives: true },
}
