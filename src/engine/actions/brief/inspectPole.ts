/** Looks over pole, arm, stay and ground line, sounds and prods; sees what there is to climb by. */
import { hasSteps } from '../../site/pole'
import type { Action } from '../action'
import { mark, perceive } from '../changes'
import { legHere, nearPole, onGround } from '../conditions'
import { all } from '../refuse'
import { touch } from '../touching'

/** Metres: one hand on the pole, the other sounds and prods (common practice, no source). */
const handHeight = 1.3

export const inspectPole: Action = {
  id: 'inspect-pole',
  covers: ['A08'],
  things: () => ['pole'],
  check: all(onGround, nearPole(2)),
  takes: () => 120,
  contacts: (site, { who }) => [touch(who, 'left-hand', { kind: 'pole', height: handHeight, ...legHere(site, who) })],
  apply: (site, order) => {
    const { pole, stay } = site.scenario
    const values = {
      insulator: site.insulator,
      stay: stay ? 'stay-tight' : 'no-stay',
      steps: hasSteps(pole) ? 'step-bolts' : 'no-step-bolts',
    }
    const seen = { of: 'pole', by: 'look', says: `pole.inspected-${pole.kind}`, values } as const
    return perceive(mark(site, 'pole-inspected'), order.who, seen)
  },
}
