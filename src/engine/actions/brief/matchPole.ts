/** Reads the number on the pole aloud and compares it with the order. */
import type { Action } from '../action'
import { mark, perceive } from '../changes'
import { nearPole } from '../conditions'

export const matchPole: Action = {
  id: 'match-pole',
  covers: ['A07'],
  things: () => ['pole'],
  check: nearPole(10),
  takes: () => 20,
  apply: (site, order) =>
    perceive(mark(site, 'pole-matched'), order.who, {
      of: 'pole',
      by: 'read',
      says: 'pole.number',
      values: { number: site.scenario.pole.number },
    }),
}
