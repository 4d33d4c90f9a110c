/**
 * What goes wrong with cable, crimps and clamps, whatever lead they belong to; end by end, as a lead is turned over.
 * Sizes of the added resistances are experience, no source.
 */
import { defect, endDefects } from './defect'
import type { GearDefect } from './gearType'

const of = 'earth-lead'

export const cableDefects: readonly GearDefect[] = [
  defect(of, 'look', 'cut-jacket', { jacketWhole: false }),
  defect(of, 'look', 'bird-caged-strands', { strandsCarrying: 0.6 }),
  defect(of, 'look', 'green-strands', { added: 0.002 }),
  defect(of, 'look', 'swollen-jacket', { added: 0.001 }),
]

export const screwClampDefects = (clamps: readonly string[]): readonly GearDefect[] => [
  ...endDefects(of, 'look', 'worn-jaw', { jawHolds: false }, clamps, '2'),
  ...endDefects(of, 'look', 'bent-eye', { seatTurns: 12 }, clamps, '3'),
  ...endDefects(of, 'look', 'cross-thread', { seatTurns: 12 }, clamps, '1'),
  defect(of, 'look', 'jaw-oxide', { jawOxide: true }),
]

export const earthClampDefects: readonly GearDefect[] = [
  ...endDefects(of, 'look', 'painted-earth-seat', { earthSeat: 'painted' }, ['earth'], 'earth'),
  ...endDefects(of, 'look', 'loose-swivel', { earthSeat: 'loose' }, ['earth'], 'earth'),
]

/** A crimp that slips is felt at the earth clamp in other words than at a conductor clamp. */
export const crimpDefects = (clamps: readonly string[]): readonly GearDefect[] => [
  ...endDefects(of, 'look', 'cracked-ferrule', { ferruleHolds: false, ferrule: 0.001 }, clamps, '1'),
  ...endDefects(of, 'look', 'necked-cable', { strandsCarrying: 0.5 }, ['earth'], 'earth'),
  ...endDefects(of, 'test', 'broken-strands', { strandsCarrying: 0.3, ferrule: 0.005 }, clamps, '1'),
  ...endDefects(of, 'test', 'crimp-slip', { ferrule: 0.02, ferruleHolds: false }, ['earth'], 'earth'),
  ...endDefects(of, 'test', 'clamp-slip', { ferrule: 0.02, ferruleHolds: false }, clamps),
]
