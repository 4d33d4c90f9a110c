/** Bonds for all wires of an isolated low-voltage line: tails with a clamp each, joined in one bar; `n` goes on first (row 7). `hop` metres of a tail. */
import { commonPractice, defect, endDefects, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'
import { bondLead } from './bondLead'

const tails = ['1', '2', '3', '4']

export const lvBondSet: GearType = {
  id: 'lv-bond-set',
  rows: [7],
  passes: commonPractice,
  hands: 1,
  ends: ['n', ...tails],
  hub: 'bar',
  test: 'flex',
  defects: [
    labelDefect('small-area', { area: 10 }),
    defect('lv-bond-set', 'look', 'loose-bar', { added: 0.05 }),
    ...endDefects('lv-bond-set', 'look', 'worn-jaw', { jawHolds: false }, ['n', ...tails], '2'),
    ...endDefects('lv-bond-set', 'look', 'tail-missing', { missing: true }, tails, '4'),
    ...endDefects('lv-bond-set', 'test', 'crimp-slip', { ferrule: 0.02, ferruleHolds: false }, ['n', ...tails], '1'),
    labelDefect('out-of-test', { inTest: false }),
    harmlessMark('lv-bond-set', 'faded-bands'),
  ],
  parameters: { ...bondLead.parameters, length: 0.6, hop: 0.6, missing: false },
}
