/** Barrier tape and stakes (row 34). `length` metres of outline. */
import { commonPractice, defect, harmlessMark } from './defect'
import type { GearType } from './gearType'

export const barrierSet: GearType = {
  id: 'barrier-set',
  rows: [34],
  passes: commonPractice,
  hands: 1,
  defects: [
    defect('barrier-set', 'look', 'short', { length: 25 }),
    defect('barrier-set', 'look', 'conductive-chain', { insulating: false }),
    defect('barrier-set', 'look', 'stakes-missing', { stakes: 3 }),
    harmlessMark('barrier-set', 'frayed-end'),
  ],
  parameters: { length: 100, stakes: 12, insulating: true },
}
