/** Boom, bucket and lower controls of the truck, inspected where it stands (row 39). `liner` and `boom` ohm where they no longer insulate. */
import { commonPractice, defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const bucketBoom: GearType = {
  id: 'bucket-boom',
  rows: [39],
  passes: commonPractice,
  hands: 2,
  test: 'try',
  defects: [
    defect('bucket-boom', 'look', 'liner-crack', { liner: 1_000 }),
    defect('bucket-boom', 'look', 'dirty-boom', { boom: 5_000_000 }),
    defect('bucket-boom', 'look', 'corroded-reel', { reelHolds: false }),
    defect('bucket-boom', 'test', 'lower-controls-dead', { lowerControls: false }),
    labelDefect('out-of-test', { inTest: false }),
    harmlessMark('bucket-boom', 'scratched-liner'),
  ],
  parameters: { lowerControls: true, reelHolds: true, inTest: true },
}
