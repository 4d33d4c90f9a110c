/** Personal lock (row 32). */
import { commonPractice, defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const lock: GearType = {
  id: 'lock',
  rows: [32],
  passes: commonPractice,
  hands: 0,
  test: 'try',
  defects: [
    defect('lock', 'test', 'broken', { holds: false }),
    labelDefect('wrong-owner', { own: false }),
    harmlessMark('lock', 'scratched'),
  ],
  parameters: { holds: true, own: true },
}
