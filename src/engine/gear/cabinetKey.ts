/** Key of a street or feed cabinet (row 32). `opens` the cabinets of the site. */
import { commonPractice, defect, harmlessMark } from './defect'
import type { GearType } from './gearType'

export const cabinetKey: GearType = {
  id: 'cabinet-key',
  rows: [32],
  passes: commonPractice,
  hands: 0,
  defects: [defect('cabinet-key', 'look', 'bent-bit', { opens: false }), harmlessMark('cabinet-key', 'rubbed')],
  parameters: { opens: true },
}
