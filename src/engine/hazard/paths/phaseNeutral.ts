/** Hand to hand between a phase and the neutral or earth wire of the line (row 2): two things that both count as bonded. */
import { eitherWay, isHand, type ExposurePath } from './exposurePath'

export const phaseNeutral: ExposurePath = {
  id: 'phase-neutral',
  rows: [2],
  limit: 'line-b',
  joins: eitherWay((a, b) => isHand(a) && isHand(b) && a.thing === 'neutral'),
}
