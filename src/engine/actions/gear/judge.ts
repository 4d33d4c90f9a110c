/** Passes an item for use or sets it aside with a tag. */
import { requireItem } from '../../site/questions'
import type { Site, Verdict } from '../../site/site'
import type { Action, Order } from '../action'
import { changeItem, moveItem, tell } from '../changes'
import { onSite } from '../conditions'
import { secondsToTarp } from '../fetching'
import { choiceIn, thingIn } from '../orderValues'
import { items } from '../things'

/** It lies on the tarp, on the truck or set aside: whoever judges it goes there. */
function isLoose(site: Site, order: Order): boolean {
  const { kind } = requireItem(site, thingIn(order)).where
  return kind === 'tarp' || kind === 'truck' || kind === 'quarantine'
}

export const judge: Action = {
  id: 'judge',
  covers: ['A15', 'A86'],
  speech: true,
  things: items,
  values: { verdict: { kind: 'choice', many: false, of: () => ['pass', 'quarantine'] } },
  check: (site, order) => (isLoose(site, order) ? onSite(site, order) : undefined),
  takes: (site, order) => 4 + (isLoose(site, order) ? secondsToTarp(site, order.who) : 0),
  apply: (site, order) => {
    const id = thingIn(order)
    const verdict = choiceIn(order, 'verdict') as Verdict
    const { where } = requireItem(site, id)
    const aside = verdict === 'quarantine' ? 'quarantine' : 'tarp'
    const sorted =
      isLoose(site, order) && !(verdict === 'pass' && where.kind === 'truck')
        ? moveItem(site, id, { kind: aside })
        : site
    return tell(changeItem(sorted, id, { verdict }), order, id, { verdict })
  },
}
