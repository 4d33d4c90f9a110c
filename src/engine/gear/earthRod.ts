/** Driven earth rod with its clamp (rows 8 and 10): lengths and diameter in metres; `mark` is the depth to drive to. */
import { commonPractice, defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const earthRod: GearType = {
  id: 'earth-rod',
  rows: [8, 10],
  passes: commonPractice,
  hands: 1,
  defects: [
    defect('earth-rod', 'look', 'bent', { straight: false }),
    defect('earth-rod', 'look', 'mushroomed', { headWhole: false }),
    defect('earth-rod', 'look', 'rusty-seat', { seat: 'painted' }),
    defect('earth-rod', 'look', 'no-depth-mark', { markLegible: false }),
    defect('earth-rod', 'look', 'stripped-bolt', { boltHolds: false }),
    labelDefect('thin', { diameter: 0.01 }),
    harmlessMark('earth-rod', 'scratches'),
  ],
  parameters: {
    length: 2,
    diameter: 0.016,
    mark: 1.8,
    straight: true,
    headWhole: true,
    seat: 'bright',
    markLegible: true,
    boltHolds: true,
  },
}
