/** Tells the control room that the section is isolated, locked and tagged. */
import type { Action } from '../action'
import { finishStep, mark, perceive, tell } from '../changes'
import { always } from '../refuse'

export const reportIsolated: Action = {
  id: 'report-isolated',
  covers: ['A35'],
  speech: true,
  check: always,
  takes: () => 30,
  apply: (site, order) =>
    perceive(tell(mark(finishStep(site), 'isolation-reported'), order, 'control'), order.who, {
      of: 'control',
      by: 'hear',
      says: 'control.isolation-noted',
    }),
}
