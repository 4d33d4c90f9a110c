/** Reports to the control room how many earths are on. */
import type { Action } from '../action'
import { changePaper, perceive, write } from '../changes'
import { numberIn } from '../orderValues'
import { always } from '../refuse'

export const reportEarths: Action = {
  id: 'report-earths',
  covers: ['A61'],
  speech: true,
  values: { count: { kind: 'number', unit: 'none', low: 0, high: 20, step: 1 } },
  check: always,
  takes: () => 30,
  apply: (site, order) => {
    const count = numberIn(order, 'count')
    const reported = write(changePaper(site, { earthsReported: true }), 'earths', String(count))
    return perceive(reported, order.who, { of: 'control', by: 'hear', says: 'control.earths-noted', values: { count } })
  },
}
