/** Insulating gloves, class 0 (row 17). `conducts` ohm of a glove that no longer insulates; absent when it does. */
import { defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const lvGloves: GearType = {
  id: 'lv-gloves',
  rows: [17],
  passes: { source: '29 CFR 1910.137; use voltage of IEC 60903', sure: 'checked' },
  hands: 1,
  worn: 'hands',
  test: 'air',
  defects: [
    defect('lv-gloves', 'look', 'ozone-cracks', { conducts: 50_000 }),
    defect('lv-gloves', 'look', 'cut', { conducts: 10_000 }),
    defect('lv-gloves', 'look', 'swelling', { conducts: 100_000 }),
    defect('lv-gloves', 'test', 'pin-hole', { conducts: 50_000 }),
    labelDefect('out-of-test', { inTest: false }),
    harmlessMark('lv-gloves', 'talc-marks'),
  ],
  parameters: { class: '0', inTest: true },
}
