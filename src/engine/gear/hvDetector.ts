/**
 * Contact voltage detector (row 13). Band in volts phase to phase; `threshold` is the share of the lowest nominal
 * voltage, phase to phase, from which it indicates phase to earth (common practice, no source).
 */
import { defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const hvDetector: GearType = {
  id: 'hv-detector',
  rows: [13],
  passes: { source: 'IEC 61243-1', sure: 'checked' },
  hands: 1,
  test: 'self-test',
  defects: [
    labelDefect('wrong-band', { bandLow: 24_000, bandHigh: 36_000 }),
    defect('hv-detector', 'test', 'dead-battery', { indicates: false }),
    defect('hv-detector', 'test', 'weak-threshold', { threshold: 0.9 }),
    defect('hv-detector', 'look', 'cracked-electrode', { electrodeWhole: false }),
    labelDefect('out-of-test', { inTest: false }),
    harmlessMark('hv-detector', 'worn-print'),
  ],
  parameters: {
    bandLow: 6_000,
    bandHigh: 15_000,
    threshold: 0.45,
    indicates: true,
    electrodeWhole: true,
    inTest: true,
  },
}
