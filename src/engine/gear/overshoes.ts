/** Insulating overshoes, worn over boots or shoes, class 2 (row 21). `conductsLeft`, `conductsRight` ohm of one that no longer insulates. */
import { defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const overshoes: GearType = {
  id: 'overshoes',
  rows: [21],
  passes: { source: 'ASTM F1116, F1117', sure: 'memory' },
  hands: 1,
  worn: 'over-feet',
  test: 'roll',
  defects: [
    defect('overshoes', 'look', 'torn-left', { conductsLeft: 5_000 }),
    defect('overshoes', 'look', 'torn-right', { conductsRight: 5_000 }),
    defect('overshoes', 'look', 'ozone-cracks', { conductsLeft: 50_000, conductsRight: 50_000 }),
    defect('overshoes', 'test', 'leak-left', { conductsLeft: 30_000 }),
    labelDefect('out-of-test', { inTest: false }),
    harmlessMark('overshoes', 'dried-mud'),
  ],
  parameters: { class: '2', inTest: true },
}
