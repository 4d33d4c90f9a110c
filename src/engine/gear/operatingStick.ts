/**
 * Operating stick with its head (rows 11 and 12). `leakage` ohm from head to hand appears only with a defect that makes
 * one; a sound stick leaks as the scenario says. `reach` metres.
 */
import { defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const operatingStick: GearType = {
  id: 'operating-stick',
  rows: [11, 12],
  passes: { source: 'US rule on live-line tools', sure: 'checked' },
  hands: 1,
  test: 'try',
  defects: [
    defect('operating-stick', 'look', 'carbon-track', { leakage: 2_000_000 }),
    defect('operating-stick', 'look', 'dirt', { leakage: 20_000_000 }),
    defect('operating-stick', 'look', 'gouge', { tubeWhole: false, leakage: 50_000_000 }),
    defect('operating-stick', 'look', 'cracked-lug', { headLocks: false }),
    defect('operating-stick', 'test', 'loose-joint', { jointTight: false }),
    defect('operating-stick', 'test', 'wet-core', { leakage: 500_000 }),
    labelDefect('out-of-test', { inTest: false }),
    harmlessMark('operating-stick', 'fine-scratches'),
  ],
  parameters: { length: 3, reach: 2, tubeWhole: true, headLocks: true, jointTight: true, inTest: true },
}
