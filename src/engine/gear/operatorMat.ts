/** Mat bonded to the switch handle (row 26). */
import { commonPractice, defect, harmlessMark } from './defect'
import type { GearType } from './gearType'

export const operatorMat: GearType = {
  id: 'operator-mat',
  rows: [26],
  passes: commonPractice,
  hands: 1,
  test: 'try',
  defects: [
    defect('operator-mat', 'test', 'frayed-bond', { bonded: false }),
    defect('operator-mat', 'look', 'cut', { whole: false }),
    harmlessMark('operator-mat', 'muddy'),
  ],
  parameters: { bonded: true, whole: true },
}
