/** Insulating cover for the pole (row 22). `length` metres along the pole; `conducts` ohm of a cover that no longer insulates. */
import { commonPractice, defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const poleCover: GearType = {
  id: 'pole-cover',
  rows: [22],
  passes: commonPractice,
  hands: 1,
  test: 'flex',
  defects: [
    defect('pole-cover', 'look', 'split', { conducts: 1_000 }),
    defect('pole-cover', 'look', 'hole', { conducts: 1_000 }),
    defect('pole-cover', 'look', 'sun-crazed', { conducts: 500_000 }),
    defect('pole-cover', 'look', 'wet', { conducts: 50_000 }),
    defect('pole-cover', 'look', 'straps-gone', { straps: false }),
    defect('pole-cover', 'test', 'leak', { conducts: 20_000 }),
    labelDefect('wrong-class', { class: '0' }),
    labelDefect('out-of-test', { inTest: false }),
    harmlessMark('pole-cover', 'chalk-mark'),
    harmlessMark('pole-cover', 'scratch'),
  ],
  parameters: { class: '1', length: 1.8, straps: true, inTest: true },
}
