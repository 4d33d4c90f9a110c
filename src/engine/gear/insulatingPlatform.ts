/** Insulating platform or mat to stand on, on the ground (row 25). `conducts` ohm when it no longer insulates. */
import { defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const insulatingPlatform: GearType = {
  id: 'insulating-platform',
  rows: [25],
  passes: { source: 'IEC 61111', sure: 'memory' },
  hands: 2,
  defects: [
    defect('insulating-platform', 'look', 'cut', { conducts: 5_000 }),
    defect('insulating-platform', 'look', 'wet', { conducts: 50_000 }),
    labelDefect('wrong-class', { class: '0' }),
    labelDefect('out-of-test', { inTest: false }),
    harmlessMark('insulating-platform', 'worn-ribs'),
  ],
  parameters: { class: '2', inTest: true },
}
