/** Leather over insulating gloves (row 18). `cuff` metres that it ends below the rubber's edge. */
import { commonPractice, defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const leatherProtectors: GearType = {
  id: 'leather-protectors',
  rows: [18],
  passes: commonPractice,
  hands: 1,
  worn: 'over-hands',
  defects: [
    defect('leather-protectors', 'look', 'wire-in-palm', { whole: false }),
    defect('leather-protectors', 'look', 'hole', { whole: false }),
    defect('leather-protectors', 'look', 'oil', { clean: false }),
    labelDefect('short-cuff', { cuff: 0.005 }),
    harmlessMark('leather-protectors', 'rubbed-palm'),
  ],
  parameters: { insulates: false, whole: true, clean: true, cuff: 0.05 },
}
