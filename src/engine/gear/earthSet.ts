/** Three-lead earthing set: a down-lead and three tails, bolted to one boss (row 2). `hop` metres of a tail, `added` ohm at the boss. */
import { commonPractice, defect, endDefects, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'
import { earthLead } from './earthLead'
import { cableDefects, crimpDefects, earthClampDefects, screwClampDefects } from './leadDefects'

const clamps = ['1', '2', '3']

export const earthSet: GearType = {
  id: 'earth-set',
  rows: [2],
  passes: commonPractice,
  hands: 1,
  ends: ['earth', ...clamps],
  hub: 'boss',
  test: 'flex',
  defects: [
    defect('earth-set', 'look', 'loose-boss', { added: 0.05 }),
    ...endDefects('earth-set', 'look', 'tail-missing', { missing: true }, clamps, '3'),
    ...cableDefects,
    ...screwClampDefects(clamps),
    ...earthClampDefects,
    ...crimpDefects(clamps),
    labelDefect('out-of-test', { inTest: false }),
    labelDefect('small-area', { area: 16 }),
    harmlessMark('earth-set', 'rubbed-boss'),
    harmlessMark('earth-lead', 'scuffed-jacket'),
  ],
  parameters: { ...earthLead.parameters, length: 10, hop: 2, missing: false },
}
