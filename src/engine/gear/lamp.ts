/** Hand lamp to see each blade and clamp by (row 43). */
import { commonPractice, defect, harmlessMark } from './defect'
import type { GearType } from './gearType'

export const lamp: GearType = {
  id: 'lamp',
  rows: [43],
  passes: commonPractice,
  hands: 0,
  test: 'self-test',
  defects: [
    defect('lamp', 'test', 'dim', { lights: false }),
    defect('lamp', 'look', 'broken-glass', { lights: false }),
    harmlessMark('lamp', 'scratched-glass'),
  ],
  parameters: { lights: true },
}
