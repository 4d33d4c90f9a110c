/** Writes a caution tag: name and time, and the permit with its number, points and end; or leaves some of it out. */
import { permitLimits } from '../../site/misheard'
import type { Action } from '../action'
import { tell, write } from '../changes'
import { handsFree, thingAtHand } from '../conditions'
import { choiceIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { itemTypes } from '../things'

const tags = itemTypes((type) => type === 'tag')

export const writeTag: Action = {
  id: 'write-tag',
  covers: ['A29', 'A35'],
  // Where permits have no number, tags come written.
  things: (site) => (site.scenario.control.permit ? tags(site) : []),
  values: {
    wording: { kind: 'choice', many: false, of: () => ['name-and-time', 'name-only', 'permit-name-and-time'] },
  },
  check: all(thingAtHand, handsFree(2, 'thing'), (site, order) =>
    choiceIn(order, 'wording').startsWith('permit') && site.paper.permit !== 'held'
      ? refuse(order, 'no-permit')
      : undefined,
  ),
  takes: () => 30,
  apply: (site, order) => {
    const [tag, wording] = [thingIn(order), choiceIn(order, 'wording')]
    const { permit = permitLimits(site.scenario) } = site.written
    const onIt = wording.startsWith('permit') ? [wording, String(permit)] : [wording]
    return tell(write(site, `tag:${tag}`, onIt), order, tag, { wording })
  },
}
