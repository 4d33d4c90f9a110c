/** Answers: could one phase be livened, from where, and what is done about it. */
import type { Site } from '../../site/site'
import type { Action } from '../action'
import { tell, write } from '../changes'
import { choiceIn } from '../orderValues'
import { always } from '../refuse'
import { feeders } from '../things'

/** What can be done about it here: a guard and jumpers only where the place has them. */
function controls({ scenario: { control, sectionJumpers = [] } }: Site): readonly string[] {
  const guard = control.guardsCrossing === undefined ? [] : ['guard']
  const jumpers = sectionJumpers.length === 0 ? [] : ['jumpers-out']
  return ['block-reclose', ...guard, ...jumpers, 'nothing', 'take-out']
}

export const answerLivening: Action = {
  id: 'answer-livening',
  covers: ['A10'],
  speech: true,
  values: {
    possible: { kind: 'choice', many: false, of: () => ['no', 'yes'] },
    from: { kind: 'choice', many: false, of: (site) => [...feeders(site), 'lv', 'nowhere'].sort() },
    control: { kind: 'choice', many: false, of: controls },
  },
  check: always,
  takes: () => 60,
  apply: (site, order) => {
    const said = {
      possible: choiceIn(order, 'possible'),
      from: choiceIn(order, 'from'),
      control: choiceIn(order, 'control'),
    }
    return tell(write(site, 'livening', [said.possible, said.from, said.control]), order, 'order', said)
  },
}
