/**
 * Single continuous earthing lead with its conductor clamps, earth clamp and ferrules (catalogue rows 1, 3, 5, 6).
 * `area` in mm² as printed; `length` rod to clamp 1 and `hop` clamp to clamp in metres; `added` ohm in the cable;
 * `strandsCarrying` share of the section that still carries; `ferrule` ohm in the crimp of an end; `seatTurns` turns of
 * the screw that seat a clamp; `jawTo` largest conductor diameter in metres.
 */
import { harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'
import { cableDefects, crimpDefects, earthClampDefects, screwClampDefects } from './leadDefects'

const clamps = ['1', '2', '3']

export const earthLead: GearType = {
  id: 'earth-lead',
  rows: [1, 3, 5, 6],
  passes: { source: 'ASTM F2249, method from a secondary page', sure: 'checked' },
  hands: 1,
  ends: ['earth', ...clamps],
  test: 'flex',
  defects: [
    ...cableDefects,
    ...screwClampDefects(clamps),
    ...earthClampDefects,
    ...crimpDefects(clamps),
    labelDefect('out-of-test', { inTest: false }),
    labelDefect('small-range', { jawTo: 0.004 }),
    labelDefect('small-area', { area: 16 }),
    harmlessMark('earth-lead', 'scuffed-jacket'),
    harmlessMark('earth-lead', 'mud-on-clamps'),
    harmlessMark('earth-lead', 'tool-marks'),
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
    ferrule: 0,
    strandsCarrying: 1,
    added: 0,
    inTest: true,
  },
}
