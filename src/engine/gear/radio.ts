/** Radio or telephone to the control room (row 36). */
import { commonPractice, defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const radio: GearType = {
  id: 'radio',
  rows: [36],
  passes: commonPractice,
  hands: 0,
  test: 'call',
  defects: [
    defect('radio', 'test', 'flat', { works: false }),
    defect('radio', 'test', 'no-answer', { works: false }),
    labelDefect('wrong-channel', { channel: '9', works: false }),
    harmlessMark('radio', 'worn-case'),
  ],
  parameters: { works: true },
}
