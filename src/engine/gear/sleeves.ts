/** Insulating sleeves, wrist to shoulder, class 2 (row 19). `conducts` ohm of a sleeve that no longer insulates. */
import { defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const sleeves: GearType = {
  id: 'sleeves',
  rows: [19],
  passes: { source: '29 CFR 1910.137', sure: 'checked' },
  hands: 1,
  worn: 'arms',
  test: 'roll',
  defects: [
    defect('sleeves', 'look', 'ozone-cracks', { conducts: 50_000 }),
    defect('sleeves', 'look', 'cut', { conducts: 10_000 }),
    defect('sleeves', 'test', 'cracks-on-fold', { conducts: 50_000 }),
    labelDefect('out-of-test', { inTest: false }),
    harmlessMark('sleeves', 'talc-marks'),
  ],
  parameters: { class: '2', inTest: true },
}
