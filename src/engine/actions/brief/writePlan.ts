/** Writes down the order of earths, bonds and cover as it is meant to be done. */
import type { Action } from '../action'
import { tell, write } from '../changes'
import { listIn } from '../orderValues'
import { always } from '../refuse'

export const writePlan: Action = {
  id: 'write-plan',
  covers: ['A02'],
  speech: true,
  values: { cards: { kind: 'cards' } },
  check: always,
  takes: () => 60,
  apply: (site, order) => {
    const cards = listIn(order, 'cards')
    return tell(write(site, 'plan', cards), order, 'order', { count: cards.length })
  },
}
