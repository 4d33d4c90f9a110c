/** Two-pole low-voltage tester (row 15). `maxVoltage` volts. */
import { defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const lvTester: GearType = {
  id: 'lv-tester',
  rows: [15],
  passes: { source: 'IEC 61010, GS 38', sure: 'memory' },
  hands: 0,
  test: 'self-test',
  defects: [
    defect('lv-tester', 'look', 'bare-leads', { leadsWhole: false }),
    defect('lv-tester', 'look', 'no-shroud', { shrouded: false }),
    defect('lv-tester', 'test', 'open-lead', { indicates: false }),
    labelDefect('low-category', { maxVoltage: 600 }),
    harmlessMark('lv-tester', 'twisted-leads'),
  ],
  parameters: { maxVoltage: 1_000, indicates: true, leadsWhole: true, shrouded: true },
}
