/**
 * Bonding lead from metalwork to the earthed conductor (row 7). `area` in mm² as printed, `length` in metres, `added`
 * ohm in the cable.
 */
import { commonPractice, defect, endDefects, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const bondLead: GearType = {
  id: 'bond-lead',
  rows: [7],
  passes: commonPractice,
  hands: 1,
  ends: ['metal', 'line'],
  test: 'flex',
  defects: [
    labelDefect('small-area', { area: 16 }),
    defect('bond-lead', 'look', 'bared-end', { metalClamp: false }),
    defect('bond-lead', 'look', 'cut-jacket', { jacketWhole: false }),
    ...endDefects('bond-lead', 'look', 'worn-jaw', { jawHolds: false }, ['line'], 'line'),
    ...endDefects('bond-lead', 'test', 'crimp-slip', { ferrule: 0.02, ferruleHolds: false }, ['metal'], 'metal'),
    labelDefect('out-of-test', { inTest: false }),
    harmlessMark('bond-lead', 'paint-specks'),
  ],
  parameters: {
    area: 25,
    length: 2.5,
    material: 'copper',
    seatTurns: 6,
    metalClamp: true,
    jawHolds: true,
    jacketWhole: true,
    ferruleHolds: true,
    ferrule: 0,
    strandsCarrying: 1,
    added: 0,
    inTest: true,
  },
}
