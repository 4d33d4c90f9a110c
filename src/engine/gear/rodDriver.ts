/** Driver for earth rods (row 9). */
import { commonPractice, defect, harmlessMark } from './defect'
import type { GearType } from './gearType'

export const rodDriver: GearType = {
  id: 'rod-driver',
  rows: [9],
  passes: commonPractice,
  hands: 1,
  defects: [
    defect('rod-driver', 'look', 'cracked-head', { headWhole: false }),
    defect('rod-driver', 'look', 'splintered-shaft', { shaftWhole: false }),
    harmlessMark('rod-driver', 'worn-grip'),
  ],
  parameters: { headWhole: true, shaftWhole: true },
}
