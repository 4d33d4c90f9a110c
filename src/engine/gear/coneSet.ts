/** Cones and road lamps (row 35). */
import { commonPractice, defect, harmlessMark } from './defect'
import type { GearType } from './gearType'

export const coneSet: GearType = {
  id: 'cone-set',
  rows: [35],
  passes: commonPractice,
  hands: 1,
  test: 'self-test',
  defects: [
    defect('cone-set', 'look', 'too-few', { cones: 2 }),
    defect('cone-set', 'test', 'lamp-dark', { lights: false }),
    harmlessMark('cone-set', 'scuffed-cones'),
  ],
  parameters: { cones: 8, lights: true },
}
