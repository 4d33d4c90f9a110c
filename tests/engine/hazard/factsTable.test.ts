/**
 * The twelve facts that the model must show without being told, each clause with its figures and the test that shows it.
 * A fact or a clause without a test fails here, and so does a test that is no longer there.
 */
import { describe, expect, it } from 'vitest'
import { hasTest } from '../../support/hasTest'

/** What is claimed, the file beside this one, and how its test's name begins. */
type Clause = readonly [claim: string, file: string, name: string]

const facts: Readonly<Record<number, readonly Clause[]>> = {
  1: [
    ['an 81 Ω rod on 11 kV: 90 % at a 6 Ω neutral, 56 % at 60 Ω', 'facts', '90 % at a 6 Ω neutral, 56 % at 60 Ω'],
    ['the relay is slow', 'pinnedFigures', 'trip after about 2.5 s by the earth-fault relay'],
    ['or never trips', 'facts', 'at 700 Ω of rod the relay never trips'],
  ],
  2: [
    ['hand to hand almost zero', 'facts', 'hand to hand between B and the arm is almost nothing'],
    ['hand to foot stays large with a high fixing, unless covered', 'facts', 'but at 10 kΩ of fixing hand to thigh'],
  ],
  3: [
    ['lifted by about a tenth at 3 to 4 m', 'facts', 'about a tenth at 3.5 m'],
    ['cage from 13 % to 83 % of the rise as the fixing falls', 'facts', 'bonded: from 13 % at 10 kΩ'],
    ['hand to pole falls, a pace at the pole grows', 'facts', 'as it falls, hand to pole falls'],
    ['touch at the pole grows; the barrier from pole and rod', 'facts', 'and so does a touch of the pole'],
  ],
  4: [
    ['a step is harmless in boots', 'facts', 'a pace beside the rod in class 0 boots is nothing'],
    ['class 0 may fail at 4 to 5 kV, class 1 holds', 'facts', 'a hand on the lead: class 0 may fail at 3.7 kV'],
    ['at best marginal', 'sweep', 'a layer that may fail is at best marginal'],
    ['class 0 fails on a free end at 6.35 kV', 'facts', 'the free end of a lead that is on a live conductor'],
  ],
  5: [
    ['a complete set collapses to a few per cent', 'facts', 'a complete set is balanced'],
    ['one off: full voltage; third at 1.5 times', 'facts', 'one phase left off: full voltage beside the worker'],
    ['two phases do not sum to zero: almost half', 'facts', 'two phases fallen onto a complete set'],
  ],
  6: [
    ['the far electrode’s rise decides', 'facts', 'the far electrode’s rise decides, not the drop along the line'],
    ['a local rod does not help, a cover does', 'facts', 'a local rod does not help hand to pole; a cover does'],
    ['a bond does', 'facts', 'a bond with the worker off the concrete'],
  ],
  7: [['25 mm² at 4.9 kA for 1 s, then two more shots', 'leadWear', 'fact 7: 25 mm² stands 4.9 kA for 1 s']],
  8: [
    ['without earths the line is at full HV', 'backFeed', 'without earths holds the line at full high voltage'],
    ['earths between phases collapse it', 'backFeed', 'cannot hold it up once there are earths between phases'],
    ['one clamp and a rod collapse nothing', 'backFeed', 'one clamp and a rod on a delta winding collapse nothing'],
  ],
  9: [
    ['5 to 20 A times rod, for minutes', 'neutralEarthing', 'the site rises to current times rod'],
    ['fibrillation; barrier at the longest time', 'neutralEarthing', 'long enough for fibrillation'],
  ],
  10: [
    ['larger current, quick trip, lower rise', 'neutralWire', 'larger current, quick trip, lower rise'],
    ['the rise is exported', 'neutralWire', 'the rise is exported: hundreds of metres away'],
    [
      'a low-voltage neutral bonded in does the same',
      'pairs',
      'and the rise is exported to the far earth of the neutral',
    ],
  ],
  11: [
    ['7 to 8 mA a kilometre', 'facts', 'touched beside a conductor at the site rise it drives 7 to 8 mA'],
    ['as long as the section', 'facts', 'the section’s length decides'],
    ['without capacitance unsolvable, never 0', 'facts', 'without that capacitance the conductor has no voltage'],
  ],
  12: [['felt far out, tolerable at the barrier', 'facts', 'bare shoes 25 m out still feel a pace']],
}

const clauses = Object.entries(facts).flatMap(([number, of]) => of.map((clause) => [number, ...clause] as const))

describe('the facts', () => {
  it('are twelve, none without a test', () => {
    expect(Object.keys(facts).map(Number)).toEqual(Array.from({ length: 12 }, (_, i) => i + 1))
    for (const of of Object.values(facts)) expect(of.length).toBeGreaterThan(0)
  })

  it.each(clauses)('%s: %s', (_number, _claim, file, name) => {
    expect(hasTest(import.meta.dirname, file, name), `${file}: ${name}`).toBe(true)
  })
})
