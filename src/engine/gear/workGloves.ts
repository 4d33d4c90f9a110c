/** Leather work gloves (row 18): no insulation is counted on. */
import { commonPractice, defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const workGloves: GearType = {
  id: 'work-gloves',
  rows: [18],
  passes: commonPractice,
  hands: 1,
  worn: 'hands',
  defects: [
    defect('work-gloves', 'look', 'wire-in-palm', { whole: false }),
    defect('work-gloves', 'look', 'hole', { whole: false }),
    defect('work-gloves', 'look', 'oil', { clean: false }),
    labelDefect('short-cuff', { cuff: 0.05 }),
    harmlessMark('work-gloves', 'rubbed-palm'),
  ],
  parameters: { insulates: false, whole: true, clean: true, cuff: 0.12 },
}
