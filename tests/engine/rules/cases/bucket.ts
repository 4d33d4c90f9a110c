/** Up in the bucket of a truck. */
import type { Scenario } from '../../../../src/engine'
import { all, before, change, drop, none, swapped } from '../../../support/rules/edits'
import { recorded } from '../../../support/rules/recorded'
import type { RuleCases } from '../../../support/rules/ruleCase'

const of = 'bucket'

/** Low-voltage wires as they hang on another pole, under the arm. */
const withLowVoltage = (scenario: Scenario): Scenario => ({ ...scenario, lv: recorded('clean').scenario.lv })

/** The pole alone, the truck 7 m beside it left out. */
const smallBarrier = change('gw set-barrier', {
  values: {
    outline: [
      { x: -6, y: -6 },
      { x: 6, y: -6 },
      { x: 6, y: 6 },
      { x: -6, y: 6 },
    ],
  },
})

export const bucket: RuleCases = {
  'boom-judged': {
    breaks: { of, edit: none, defects: { 'BB-1': 'liner-crack' } },
    near: { of, edit: none, defects: { 'BB-1': 'scratched-liner' } },
  },
  'outriggers-out': {
    breaks: { of, edit: drop('gw set-outriggers') },
    near: { of, edit: swapped('gw set-outriggers', 'gw try-lower-controls') },
  },
  'lower-controls-tried': {
    breaks: { of, edit: drop('gw try-lower-controls') },
    near: { of, edit: swapped('gw set-outriggers', 'gw try-lower-controls') },
  },
  'truck-bonded': {
    breaks: { of, edit: drop('gw bond-truck', 'gw unbond-truck') },
    near: { of, edit: drop('gw unbond-truck') },
  },
  'truck-barricaded': { breaks: { of, edit: smallBarrier }, near: { of, edit: drop('gw lift-outriggers') } },
  'truck-bond-gloves': {
    breaks: { of, edit: drop('gw wear G-532', 'gw take-off G-532') },
    near: { of, edit: all(before('gw wear G-532', 'gw bond-truck')) },
  },
  'bucket-past-wires': {
    breaks: { of, edit: none, place: withLowVoltage },
    near: { of, edit: none },
  },
}
