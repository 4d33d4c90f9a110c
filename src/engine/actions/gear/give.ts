/** Hands an item that one holds to somebody beside one, who has hands for it. */
import { distance } from '../../site/place'
import { freeHands, gearTypeOf, groundPointOf, isAloft, requirePerson } from '../../site/questions'
import type { PersonId } from '../../site/scenario'
import type { Site } from '../../site/site'
import type { Action } from '../action'
import { putInHands, tell } from '../changes'
import { choiceIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { items } from '../things'

/** Two arms meet over so much, metres (common practice, no source). */
const fromHandToHand = 2

function isBeside(site: Site, a: PersonId, b: PersonId): boolean {
  const [one, other] = [requirePerson(site, a), requirePerson(site, b)]
  if (isAloft(one) || isAloft(other)) return JSON.stringify(one.place) === JSON.stringify(other.place)
  return distance(groundPointOf(site, a), groundPointOf(site, b)) <= fromHandToHand
}

export const give: Action = {
  id: 'give',
  covers: ['A49'],
  things: items,
  values: { whom: { kind: 'choice', many: false, of: (site) => Object.keys(site.persons) } },
  check: all((site, order) => {
    const [item, whom] = [thingIn(order), choiceIn(order, 'whom')]
    if (!requirePerson(site, order.who).holds.includes(item)) return refuse(order, 'not-at-hand', { item })
    if (whom === order.who || !isBeside(site, order.who, whom)) return refuse(order, 'not-beside', { person: whom })
    return freeHands(site, whom) >= gearTypeOf(site, item).hands
      ? undefined
      : refuse(order, 'hands-full', { items: requirePerson(site, whom).holds.join(', ') })
  }),
  takes: () => 5,
  apply: (site, order) => {
    const [item, whom] = [thingIn(order), choiceIn(order, 'whom')]
    return tell(putInHands(site, item, whom), order, item, { whom })
  },
}
