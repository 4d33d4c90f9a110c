/** Three-lead earthing set for an isolation point (row 2). `area` in mm² as printed; `added` ohm in a leg. */
import { commonPractice, defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const isolationEarth: GearType = {
  id: 'isolation-earth',
  rows: [2],
  passes: commonPractice,
  hands: 1,
  test: 'flex',
  defects: [
    defect('isolation-earth', 'look', 'loose-boss', { added: 0.05 }),
    defect('isolation-earth', 'look', 'missing-lead', { phases: 2 }),
    defect('isolation-earth', 'test', 'leg-high-resistance', { added: 0.1 }),
    labelDefect('out-of-test', { inTest: false }),
    harmlessMark('isolation-earth', 'scuffed-jacket'),
  ],
  parameters: { area: 70, phases: 3, added: 0, inTest: true },
}
