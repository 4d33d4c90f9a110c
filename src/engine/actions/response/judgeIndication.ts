/** Says what an indication is taken for: the line is fed, or only lifted by what runs beside it. Either way it is not dead. */
import type { Action } from '../action'
import { mark, tell } from '../changes'
import { choiceIn, thingIn } from '../orderValues'
import { always } from '../refuse'
import { conductors, lvWires } from '../things'

export const judgeIndication: Action = {
  id: 'judge-indication',
  covers: ['A54'],
  speech: true,
  things: (site) => [...conductors(site), ...lvWires(site)],
  values: { takenFor: { kind: 'choice', many: false, of: () => ['induced', 'live', 'not-explained'] } },
  check: always,
  takes: () => 10,
  apply: (site, order) => {
    const [thing, takenFor] = [thingIn(order), choiceIn(order, 'takenFor')]
    return tell(mark(site, `indication:${thing}:${takenFor}`), order, thing, { takenFor })
  },
}
