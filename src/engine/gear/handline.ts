/** Handline and pulley (row 27), clipped to the harness on the way up. `workingLoad` kilograms. */
import { commonPractice, defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const handline: GearType = {
  id: 'handline',
  rows: [27],
  passes: commonPractice,
  hands: 0,
  test: 'try',
  defects: [
    defect('handline', 'look', 'frayed', { holds: false }),
    defect('handline', 'look', 'wet', { dry: false }),
    defect('handline', 'test', 'conductive-core', { insulating: false }),
    labelDefect('low-load', { workingLoad: 20 }),
    harmlessMark('handline', 'grey'),
  ],
  parameters: { holds: true, dry: true, insulating: true, workingLoad: 80 },
}
