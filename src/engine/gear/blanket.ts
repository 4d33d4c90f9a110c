/** Insulating blanket, clipped round what must not be touched (row 24). `length` metres that it covers along the pole; `conducts` ohm of one that no longer insulates. */
import { defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const blanket: GearType = {
  id: 'blanket',
  rows: [24],
  passes: { source: '29 CFR 1910.137', sure: 'checked' },
  hands: 1,
  test: 'roll',
  defects: [
    defect('blanket', 'look', 'wire-hole', { conducts: 1_000 }),
    defect('blanket', 'look', 'cut-edge', { conducts: 1_000 }),
    defect('blanket', 'test', 'cracks-on-fold', { conducts: 50_000 }),
    labelDefect('out-of-test', { inTest: false }),
    labelDefect('wrong-class', { class: '0' }),
    harmlessMark('blanket', 'scuffed-face'),
  ],
  parameters: { class: '1', length: 0.9, inTest: true },
}
