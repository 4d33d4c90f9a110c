/** First aid to somebody who lies there: heart compressions, and the defibrillator of the kit when it is ready. */
import { distance } from '../../site/place'
import { isHurt } from '../../site/presence'
import { gearOf, groundPointOf, isAloft, requirePerson } from '../../site/questions'
import type { Site } from '../../site/site'
import type { Action, Order, Refusal } from '../action'
import { mark, perceive } from '../changes'
import { atHand, handsFree, onSite } from '../conditions'
import { choiceIn, itemIn } from '../orderValues'
import { all, refuse, type Condition } from '../refuse'
import { bothHands } from '../touching'

/** Both hands on the chest from where one kneels, metres. */
const fromKneeling = 2

const needsIt: Condition = (site, order) => {
  const whom = choiceIn(order, 'whom')
  if (!isHurt(site, whom)) return refuse(order, 'not-hurt', { person: whom })
  return isAloft(requirePerson(site, whom)) ? refuse(order, 'not-on-ground') : undefined
}

function isBeside(site: Site, order: Order): Refusal | undefined {
  const whom = choiceIn(order, 'whom')
  const apart = distance(groundPointOf(site, order.who), groundPointOf(site, whom))
  return apart <= fromKneeling ? undefined : refuse(order, 'not-beside', { person: whom })
}

export const firstAid: Action = {
  id: 'first-aid',
  covers: ['A77'],
  withTypes: ['first-aid-kit'],
  values: { whom: { kind: 'choice', many: false, of: (site) => Object.keys(site.persons) } },
  check: all(onSite, needsIt, isBeside, atHand, handsFree(2, 'item')),
  takes: () => 300,
  contacts: (_site, order) => bothHands(order.who, { kind: 'person', id: choiceIn(order, 'whom') }),
  apply: (site, order) => {
    const whom = choiceIn(order, 'whom')
    const { complete, inTest } = gearOf(site, itemIn(order)).is
    const says = complete === true && inTest === true ? 'aid.given' : 'aid.without-shock'
    return perceive(mark(site, `first-aid:${whom}`), order.who, { of: whom, by: 'do', says, values: { whom } })
  },
}
