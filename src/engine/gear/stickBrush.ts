/** Wire brush for the stick head (row 38). */
import { commonPractice, defect, harmlessMark } from './defect'
import type { GearType } from './gearType'

export const stickBrush: GearType = {
  id: 'stick-brush',
  rows: [38],
  passes: commonPractice,
  hands: 0,
  defects: [defect('stick-brush', 'look', 'bald', { brushes: false }), harmlessMark('stick-brush', 'dusty')],
  parameters: { brushes: true },
}
