/** Chooses where the earths go, how the lead runs and how thick it must be. */
import type { Action } from '../action'
import { tell, write } from '../changes'
import { choiceIn, numberIn } from '../orderValues'
import { always } from '../refuse'

export const chooseEarths: Action = {
  id: 'choose-earths',
  covers: ['A02'],
  speech: true,
  values: {
    place: { kind: 'choice', many: false, of: () => ['isolation-points', 'work-position'] },
    arrangement: { kind: 'choice', many: false, of: () => ['chain', 'star'] },
    area: { kind: 'number', unit: 'millimetre2', low: 6, high: 120, step: 1 },
  },
  check: always,
  takes: () => 60,
  apply: (site, order) => {
    const said = {
      place: choiceIn(order, 'place'),
      arrangement: choiceIn(order, 'arrangement'),
      area: numberIn(order, 'area'),
    }
    const plan = [said.place, said.arrangement, String(said.area)]
    return tell(write(site, 'earths-plan', plan), order, 'order', said)
  },
}
