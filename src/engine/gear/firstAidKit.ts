/** First-aid kit with a defibrillator (row 44). */
import { commonPractice, defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const firstAidKit: GearType = {
  id: 'first-aid-kit',
  rows: [44],
  passes: commonPractice,
  hands: 1,
  test: 'self-test',
  defects: [
    labelDefect('pads-out-of-date', { inTest: false }),
    defect('first-aid-kit', 'test', 'no-green-light', { complete: false }),
    defect('first-aid-kit', 'look', 'seal-broken', { complete: false }),
    harmlessMark('first-aid-kit', 'muddy-case'),
  ],
  parameters: { complete: true, inTest: true },
}
