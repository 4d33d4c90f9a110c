/** Looks over pole, arm, stay and ground line, sounds and prods. */
import type { Action } from '../action'
import { mark, perceive } from '../changes'
import { nearPole, onGround } from '../conditions'
import { all } from '../refuse'

export const inspectPole: Action = {
  id: 'inspect-pole',
  covers: ['A08'],
  things: () => ['pole'],
  check: all(onGround, nearPole(2)),
  takes: () => 120,
  apply: (site, order) =>
    perceive(mark(site, 'pole-inspected'), order.who, {
      of: 'pole',
      by: 'look',
      says: 'pole.inspected',
      values: { insulator: site.insulator },
    }),
}
