/** Whether planned and fitted copper stands the fault of the sheet. */
import type { Scenario } from '../../../../src/engine'
import { change, none } from '../../../support/rules/edits'
import type { RuleCases } from '../../../support/rules/ruleCase'

/**
 * The crossing at 33 kV near its station: by hand E = 19.05 kV, Z1 = 0.1 + j1.3 Ω and 0.1 km of line (0.06 + j0.04 Ω): 14.2
 * kA; standard inverse at 23.6 times 600 A with 0.2: 0.429 s, 0.06 s of breaker: 14.2 kA √0.489 s/199 = 50 mm².
 */
const strongCrossing = (scenario: Scenario): Scenario => ({
  ...scenario,
  feeders: scenario.feeders.map((it) =>
    it.id === 'fx'
      ? {
          ...it,
          voltage: 33_000,
          sourceImpedance: { re: 0.1, im: 1.3 },
          length: 100,
          overcurrent: { ...it.overcurrent, pickup: 600, multiplier: 0.2 },
        }
      : it,
  ),
})

export const rating: RuleCases = {
  'plan-rated': {
    breaks: { edit: change('pic choose-earths', { values: { area: 49 } }), place: strongCrossing },
    near: { edit: change('pic choose-earths', { values: { area: 52 } }), place: strongCrossing },
  },
  'lead-rated': {
    breaks: { edit: none, labels: { 'E-07': { area: 49 } }, place: strongCrossing },
    near: { edit: none, labels: { 'E-07': { area: 52 } }, place: strongCrossing },
  },
  // 0.57 kA to earth through 6.35 Ω for 0.57 s asks for 2.2 mm²
  'bond-rated': {
    breaks: { edit: none, labels: { 'B-02': { area: 2 } } },
    near: { edit: none, labels: { 'B-02': { area: 2.5 } } },
  },
}
