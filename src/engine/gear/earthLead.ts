/**
 * Single continuous earthing lead with its conductor clamps, earth clamp and ferrules (catalogue rows 1, 3, 5, 6).
 * `area` in mm² as printed; `length` rod to clamp 1 and `hop` clamp to clamp in metres; `added` ohm in the cable;
 * `strandsCarrying` share of the section that still carries; `seatTurns` turns of the screw that seat a clamp;
 * `jawTo` largest conductor diameter in metres.
 */
import { defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const earthLead: GearType = {
  id: 'earth-lead',
  row: 1,
  hands: 1,
  ends: ['earth', '1', '2', '3'],
  test: 'flex',
  defects: [
    defect('earth-lead', 'look', 'cut-jacket', { jacketWhole: false }),
    defect('earth-lead', 'look', 'bird-caged-strands', { strandsCarrying: 0.6 }),
    defect('earth-lead', 'look', 'green-strands', { added: 0.002 }),
    defect('earth-lead', 'look', 'swollen-jacket', { added: 0.001 }),
    defect('earth-lead', 'look', 'worn-jaw', { jawHolds: false }),
    defect('earth-lead', 'look', 'bent-eye', { seatTurns: 12 }),
    defect('earth-lead', 'look', 'cross-thread', { seatTurns: 12 }),
    defect('earth-lead', 'look', 'jaw-oxide', { jawOxide: true }),
    defect('earth-lead', 'look', 'painted-earth-seat', { earthSeat: 'painted' }),
    defect('earth-lead', 'look', 'loose-swivel', { earthSeat: 'loose' }),
    defect('earth-lead', 'look', 'cracked-ferrule', { ferruleHolds: false }),
    defect('earth-lead', 'test', 'broken-strands', { strandsCarrying: 0.3, added: 0.005 }),
    defect('earth-lead', 'test', 'crimp-slip', { added: 0.02, ferruleHolds: false }),
    labelDefect('out-of-test', { inTest: false }),
    labelDefect('small-range', { jawTo: 0.004 }),
    harmlessMark('earth-lead', 'scuffed-jacket'),
    harmlessMark('earth-lead', 'mud-on-clamps'),
  ],
  parameters: {
    area: 25,
    length: 12,
    hop: 1.5,
    material: 'copper',
    seatTurns: 6,
    earthSeat: 'bright',
    jawHolds: true,
    jawOxide: false,
    jawTo: 0.012,
    jacketWhole: true,
    ferruleHolds: true,
    strandsCarrying: 1,
    added: 0,
    inTest: true,
  },
}
