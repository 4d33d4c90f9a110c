/** Ties an item to the handline, the tail of it in one hand. */
import { isEarthLead } from '../../gear/earthLeads'
import { gearTypeOf, isAloft, requireItem, requirePerson } from '../../site/questions'
import type { PoleName } from '../../site/nextPole'
import type { Site } from '../../site/site'
import type { Action } from '../action'
import { changeItem, moveItem, tell } from '../changes'
import { handsFree, nearPole, onSite, poleBy, ropeReach } from '../conditions'
import { secondsToFetch } from '../fetching'
import { isLeadAtHand } from '../leads'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { items } from '../things'
import { touch } from '../touching'

export const tieOn: Action = {
  id: 'tie-on',
  covers: ['A49'],
  things: items,
  check: all(
    onSite,
    nearPole(ropeReach),
    handsFree(2, 'thing'),
    (site, order) => (isHandlineUp(site, poleBy(site, order.who)) ? undefined : refuse(order, 'handline-missing')),
    (site, order) => {
      const id = thingIn(order)
      const isLine = gearTypeOf(site, id).id === 'handline'
      const isLead = isEarthLead(gearTypeOf(site, id).id)
      const isHere = isLead
        ? isLeadAtHand(site, { ...order, with: id }) && !site.hauled.includes(id)
        : isLoose(site, id, order.who)
      return isHere && !isLine ? undefined : refuse(order, 'not-at-hand', { item: id })
    },
  ),
  contacts: (site, { who }) =>
    isAloft(requirePerson(site, who)) ? [] : [touch(who, 'right-hand', { kind: 'handline' })],
  takes: (site, order) => 20 + secondsToFetch(site, order.who, thingIn(order)),
  apply: (site, order) => {
    const id = thingIn(order)
    const { where } = requireItem(site, id)
    const tied =
      where.kind === 'fitted'
        ? changeItem(site, id, { where: { kind: 'handline' } })
        : moveItem(site, id, { kind: 'handline' })
    return tell(tied, order, id)
  },
}

/** The pulley hangs up the pole, or somebody up there has it. */
function isHandlineUp(site: Site, pole: PoleName | undefined): boolean {
  return Object.values(site.items).some((item) => {
    if (item.type !== 'handline') return false
    if (item.where.kind === 'aloft') return item.where.at === pole
    if (item.where.kind !== 'person') return false
    return isAloft(requirePerson(site, item.where.person)) && poleBy(site, item.where.person) === pole
  })
}

function isLoose(site: Site, id: string, who: string): boolean {
  const { where } = requireItem(site, id)
  return where.kind === 'tarp' || where.kind === 'truck' || (where.kind === 'person' && where.person === who)
}
