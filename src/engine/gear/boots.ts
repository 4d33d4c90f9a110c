/** Insulating boots (row 20). `conductsLeft`, `conductsRight` ohm of a boot that no longer insulates; absent when it does. */
import { defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const boots: GearType = {
  id: 'boots',
  rows: [20],
  passes: { source: 'EN 50321', sure: 'checked' },
  hands: 1,
  worn: 'feet',
  test: 'roll',
  defects: [
    defect('boots', 'look', 'nail-hole-left', { conductsLeft: 20_000 }),
    defect('boots', 'look', 'nail-hole-right', { conductsRight: 20_000 }),
    defect('boots', 'look', 'cut-upper', { conductsLeft: 60_000 }),
    defect('boots', 'look', 'cracked-welt', { conductsRight: 40_000 }),
    defect('boots', 'look', 'oil', { conductsLeft: 200_000 }),
    defect('boots', 'look', 'wet-lining', { conductsLeft: 10_000, conductsRight: 10_000 }),
    defect('boots', 'look', 'odd-pair', { pair: false, conductsRight: 2_000 }),
    defect('boots', 'look', 'not-in-bag', { bagged: false }),
    defect('boots', 'test', 'leak-left', { conductsLeft: 30_000 }),
    defect('boots', 'test', 'leak-right', { conductsRight: 30_000 }),
    labelDefect('out-of-test', { inTest: false }),
    harmlessMark('boots', 'scratch'),
    harmlessMark('boots', 'mud'),
  ],
  parameters: { class: '1', pair: true, bagged: true, inTest: true },
}
