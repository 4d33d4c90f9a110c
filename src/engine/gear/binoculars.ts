/** Binoculars for looking at blades and clamps (row 43). */
import { commonPractice, defect, harmlessMark } from './defect'
import type { GearType } from './gearType'

export const binoculars: GearType = {
  id: 'binoculars',
  rows: [43],
  passes: commonPractice,
  hands: 0,
  defects: [defect('binoculars', 'look', 'misted', { clear: false }), harmlessMark('binoculars', 'strap-worn')],
  parameters: { clear: true },
}
