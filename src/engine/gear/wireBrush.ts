/** Wire brush for the hand: rod, band and earth clamp (row 38). */
import { commonPractice, defect, harmlessMark } from './defect'
import type { GearType } from './gearType'

export const wireBrush: GearType = {
  id: 'wire-brush',
  rows: [38],
  passes: commonPractice,
  hands: 1,
  defects: [defect('wire-brush', 'look', 'bald', { brushes: false }), harmlessMark('wire-brush', 'rust-dust')],
  parameters: { brushes: true },
}
