/**
 * Lead from the truck's bonding stud to its earth, on a reel (row 40). `truckSeat` is what the clamp on the truck bites
 * on.
 */
import { bondLead } from './bondLead'
import { commonPractice, defect, endDefects, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const truckBondLead: GearType = {
  id: 'truck-bond-lead',
  rows: [40],
  passes: commonPractice,
  hands: 1,
  ends: ['truck', 'earth'],
  test: 'flex',
  defects: [
    ...endDefects('truck-bond-lead', 'look', 'clamp-on-paint', { truckSeat: 'painted' }, ['truck'], 'truck'),
    defect('truck-bond-lead', 'look', 'cut-jacket', { jacketWhole: false }),
    defect('truck-bond-lead', 'look', 'corroded-reel', { added: 0.5 }),
    ...endDefects('truck-bond-lead', 'test', 'crimp-slip', { ferrule: 0.02, ferruleHolds: false }, ['earth'], 'earth'),
    labelDefect('small-area', { area: 10 }),
    labelDefect('out-of-test', { inTest: false }),
    harmlessMark('truck-bond-lead', 'oil-stain'),
  ],
  parameters: { ...bondLead.parameters, length: 10, earthSeat: 'bright', truckSeat: 'bright' },
}
