/** Traffic signs and cones (row 35). */
import { commonPractice, defect, harmlessMark } from './defect'
import type { GearType } from './gearType'

export const signSet: GearType = {
  id: 'sign-set',
  rows: [35],
  passes: commonPractice,
  hands: 1,
  defects: [defect('sign-set', 'look', 'too-few', { signs: 1 }), harmlessMark('sign-set', 'dirty-sign')],
  parameters: { signs: 4 },
}
