/** Pin insulator: the new one for the repair and the old one that comes down. No catalogue row: material, not safety gear. `voltage` phase to phase. */
import { commonPractice, defect, harmlessMark } from './defect'
import type { GearType } from './gearType'

export const pinInsulator: GearType = {
  id: 'pin-insulator',
  rows: [],
  passes: commonPractice,
  hands: 0,
  defects: [
    defect('pin-insulator', 'look', 'chipped', { whole: false }),
    defect('pin-insulator', 'look', 'cracked', { whole: false }),
    harmlessMark('pin-insulator', 'dust'),
  ],
  parameters: { whole: true, voltage: 11_000 },
}
