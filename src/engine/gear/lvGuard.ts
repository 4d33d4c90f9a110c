/** Guard for one low-voltage wire (row 23), carried in the bag. `length` metres along the wire; `conducts` ohm when damaged. */
import { commonPractice, defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const lvGuard: GearType = {
  id: 'lv-guard',
  rows: [23],
  passes: commonPractice,
  hands: 0,
  defects: [
    defect('lv-guard', 'look', 'cut', { conducts: 1_000 }),
    defect('lv-guard', 'look', 'end-open', { endsClosed: false, conducts: 1_000 }),
    labelDefect('too-short', { length: 0.6 }),
    labelDefect('wrong-class', { class: '0' }),
    labelDefect('out-of-test', { inTest: false }),
    harmlessMark('lv-guard', 'faded'),
  ],
  parameters: { class: '1', length: 1.5, endsClosed: true, inTest: true },
}
