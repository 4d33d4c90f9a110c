/** Passes an item for use or sets it aside with a tag. */
import { requireItem } from '../../site/questions'
import type { Verdict } from '../../site/site'
import type { Action } from '../action'
import { changeItem, moveItem, tell } from '../changes'
import { choiceIn, thingIn } from '../orderValues'
import { always } from '../refuse'
import { items } from '../things'

export const judge: Action = {
  id: 'judge',
  covers: ['A15', 'A86'],
  speech: true,
  things: items,
  values: { verdict: { kind: 'choice', many: false, of: () => ['pass', 'quarantine'] } },
  check: always,
  takes: () => 4,
  apply: (site, order) => {
    const id = thingIn(order)
    const verdict = choiceIn(order, 'verdict') as Verdict
    const { where } = requireItem(site, id)
    const isLoose = where.kind === 'tarp' || where.kind === 'truck' || where.kind === 'quarantine'
    const aside = verdict === 'quarantine' ? 'quarantine' : 'tarp'
    const sorted =
      isLoose && !(verdict === 'pass' && where.kind === 'truck') ? moveItem(site, id, { kind: aside }) : site
    return tell(changeItem(sorted, id, { verdict }), order, id, { verdict })
  },
}
