/** Caution tag with name, time and permit (row 33). */
import { commonPractice, defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const tag: GearType = {
  id: 'tag',
  rows: [33],
  passes: commonPractice,
  hands: 0,
  defects: [
    labelDefect('blank', { written: false }),
    defect('tag', 'look', 'faded', { legible: false }),
    harmlessMark('tag', 'creased'),
  ],
  parameters: { written: true, legible: true },
}
