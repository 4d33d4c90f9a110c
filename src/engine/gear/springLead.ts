/** Earthing lead whose conductor clamps snap on by a spring (row 4): one push seats them, and nothing tightens them. `rated` ampere that the clamps hold for a second. */
import { commonPractice, endDefects, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'
import { earthLead } from './earthLead'
import { cableDefects, crimpDefects, earthClampDefects } from './leadDefects'

const clamps = ['1', '2', '3']

export const springLead: GearType = {
  id: 'spring-lead',
  rows: [4],
  passes: commonPractice,
  hands: 1,
  ends: ['earth', ...clamps],
  test: 'flex',
  defects: [
    ...endDefects('spring-lead', 'test', 'weak-spring', { springHolds: false }, clamps),
    labelDefect('low-rating', { rated: 3_000, area: 16 }),
    ...cableDefects,
    ...earthClampDefects,
    ...crimpDefects(clamps),
    labelDefect('out-of-test', { inTest: false }),
    harmlessMark('spring-lead', 'rusty-spring'),
  ],
  parameters: { ...earthLead.parameters, seatTurns: 1, springHolds: true, rated: 8_000 },
}
