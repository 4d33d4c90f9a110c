/** Answers: could one phase be livened, from where, and what is done about it. */
import type { Action } from '../action'
import { tell, write } from '../changes'
import { choiceIn } from '../orderValues'
import { always } from '../refuse'
import { feeders } from '../things'

export const answerLivening: Action = {
  id: 'answer-livening',
  covers: ['A10'],
  speech: true,
  values: {
    possible: { kind: 'choice', many: false, of: () => ['no', 'yes'] },
    from: { kind: 'choice', many: false, of: (site) => [...feeders(site), 'lv', 'nowhere'].sort() },
    control: { kind: 'choice', many: false, of: () => ['block-reclose', 'nothing', 'take-out'] },
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
