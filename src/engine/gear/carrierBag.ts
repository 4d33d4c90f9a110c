/** Bag with its own lock for fuse carriers that were taken out (row 42). `closes`: nobody gets at a carrier in it. */
import { commonPractice, defect, harmlessMark } from './defect'
import type { GearType } from './gearType'

export const carrierBag: GearType = {
  id: 'carrier-bag',
  rows: [42],
  passes: commonPractice,
  hands: 0,
  test: 'try',
  defects: [
    defect('carrier-bag', 'look', 'torn', { closes: false }),
    defect('carrier-bag', 'look', 'lock-missing', { closes: false }),
    defect('carrier-bag', 'test', 'clasp-opens', { closes: false }),
    harmlessMark('carrier-bag', 'dusty'),
  ],
  parameters: { closes: true },
}
