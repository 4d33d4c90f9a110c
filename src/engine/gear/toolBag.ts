/** Tool bag with tool lanyards (row 28). */
import { commonPractice, defect, harmlessMark } from './defect'
import type { GearType } from './gearType'

export const toolBag: GearType = {
  id: 'tool-bag',
  rows: [28],
  passes: commonPractice,
  hands: 0,
  test: 'try',
  defects: [
    defect('tool-bag', 'look', 'torn-bottom', { holds: false }),
    defect('tool-bag', 'test', 'open-clip', { holds: false }),
    harmlessMark('tool-bag', 'oil-stain'),
  ],
  parameters: { holds: true },
}
