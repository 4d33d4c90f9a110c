/** Insulating gloves for work at a switch handle, class 2 (row 17). `conducts` ohm of a glove that no longer insulates. */
import { defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const switchingGloves: GearType = {
  id: 'switching-gloves',
  rows: [17],
  passes: { source: '29 CFR 1910.137; use voltage of IEC 60903', sure: 'checked' },
  hands: 1,
  worn: 'hands',
  test: 'air',
  defects: [
    defect('switching-gloves', 'look', 'ozone-cracks', { conducts: 50_000 }),
    defect('switching-gloves', 'look', 'cut', { conducts: 10_000 }),
    defect('switching-gloves', 'look', 'swelling', { conducts: 100_000 }),
    defect('switching-gloves', 'test', 'pin-hole', { conducts: 50_000 }),
    labelDefect('out-of-test', { inTest: false }),
    harmlessMark('switching-gloves', 'talc-marks'),
  ],
  parameters: { class: '2', inTest: true },
}
