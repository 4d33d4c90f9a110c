/** Lays the rescue kit ready and names the rescuer. */
import type { Action } from '../action'
import { mark, moveItem, tell, write } from '../changes'
import { atHand, handsFree, onSite } from '../conditions'
import { choiceIn, itemIn } from '../orderValues'
import { all } from '../refuse'

export const stageRescue: Action = {
  id: 'stage-rescue',
  covers: ['A13'],
  withTypes: ['rescue-kit'],
  values: { rescuer: { kind: 'choice', many: false, of: (site) => Object.keys(site.persons) } },
  moves: true,
  check: all(onSite, atHand, handsFree(1, 'item')),
  takes: () => 60,
  apply: (site, order) => {
    const rescuer = choiceIn(order, 'rescuer')
    const staged = mark(moveItem(site, itemIn(order), { kind: 'tarp' }), 'rescue-staged')
    return tell(write(staged, 'rescuer', rescuer), order, itemIn(order), { rescuer })
  },
}
