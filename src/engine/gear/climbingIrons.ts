/** Climbing irons for a wooden pole (row 30). `gaff` metres that stand out (at least 0.032 in use: common practice, no source). */
import { commonPractice, defect, harmlessMark } from './defect'
import type { GearType } from './gearType'

export const climbingIrons: GearType = {
  id: 'climbing-irons',
  rows: [30],
  passes: commonPractice,
  hands: 1,
  worn: 'legs',
  test: 'gauge',
  defects: [
    defect('climbing-irons', 'test', 'short-gaff', { gaff: 0.025, holds: false }),
    defect('climbing-irons', 'look', 'blunt-gaff', { holds: false }),
    defect('climbing-irons', 'look', 'torn-strap', { holds: false }),
    harmlessMark('climbing-irons', 'stained-pads'),
  ],
  parameters: { gaff: 0.04, holds: true },
}
