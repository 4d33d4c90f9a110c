/** By-pass lead across a gap in a conductor (row 41). `rated` ampere of load that it carries, `area` mm². */
import { bondLead } from './bondLead'
import { commonPractice, defect, endDefects, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

const both = ['near', 'far']

export const bypassLead: GearType = {
  id: 'bypass-lead',
  rows: [41],
  passes: commonPractice,
  hands: 1,
  ends: both,
  test: 'flex',
  defects: [
    labelDefect('low-rating', { rated: 60, area: 10 }),
    defect('bypass-lead', 'look', 'cut-jacket', { jacketWhole: false }),
    ...endDefects('bypass-lead', 'look', 'worn-jaw', { jawHolds: false }, both, 'near'),
    ...endDefects('bypass-lead', 'test', 'crimp-slip', { ferrule: 0.02, ferruleHolds: false }, both, 'near'),
    labelDefect('out-of-test', { inTest: false }),
    harmlessMark('bypass-lead', 'chalk-marks'),
  ],
  parameters: { ...bondLead.parameters, area: 35, length: 3, rated: 200 },
}
