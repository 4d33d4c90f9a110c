/** Rescue rope and kit in a sealed bag (row 31). */
import { commonPractice, defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const rescueKit: GearType = {
  id: 'rescue-kit',
  rows: [31],
  passes: commonPractice,
  hands: 1,
  defects: [
    defect('rescue-kit', 'look', 'item-missing', { complete: false }),
    labelDefect('out-of-test', { inTest: false }),
    defect('rescue-kit', 'look', 'short-rope', { complete: false }),
    harmlessMark('rescue-kit', 'dusty-bag'),
  ],
  parameters: { complete: true, inTest: true },
}
