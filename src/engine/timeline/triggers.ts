/** Contact conditions at which a visible livening can strike: small questions about a moment. */
import { actions } from '../actions/registry'
import { isInside } from '../site/place'
import { crewMember, groundPointOf, isAloft, requireItem, requirePerson } from '../site/questions'
import type { Contact } from '../site/contact'
import type { Site } from '../site/site'
import type { Entry, Moment } from './timeline'

/** @param acts entries in progress */
export type Trigger = (moment: Moment, acts: readonly Entry[]) => boolean

const doing = (acts: readonly Entry[], ...ids: readonly string[]): boolean =>
  acts.some((it) => ids.includes(it.order.do))

const touches = (moment: Moment, isMeant: (contact: Contact) => boolean): boolean =>
  moment.bodies.some((body) => body.contacts.some(isMeant))

const isBareHand = (site: Site, { limb, through }: Contact): boolean =>
  limb.endsWith('-hand') && !through.some((id) => requireItem(site, id).type === 'operating-stick')

function conductorClamps({ site }: Moment): number {
  return site.clamps.filter((clamp) => site.scenario.conductors.some((it) => it.id === clamp.on)).length
}

export const triggers: ReadonlyMap<string, Trigger> = new Map<string, Trigger>([
  ['first-clamp-going-on', (moment, acts) => doing(acts, 'clamp', 'clamp-by-hand') && conductorClamps(moment) === 0],
  [
    'bond-end-in-hand',
    (moment) =>
      touches(
        moment,
        ({ limb, on }) =>
          limb.endsWith('-hand') && on.kind === 'lead' && requireItem(moment.site, on.item).type === 'bond-lead',
      ),
  ],
  [
    'hand-on-conductor',
    (moment) => touches(moment, (contact) => contact.on.kind === 'conductor' && isBareHand(moment.site, contact)),
  ],
  ['ground-worker-inside', (moment, acts) => acts.some((act) => isGroundWorkerInside(moment.site, act))],
  ['cover-coming-off', (_moment, acts) => doing(acts, 'remove-cover')],
  ['last-clamp-on', (moment) => moment.site.paper.workDone && conductorClamps(moment) === 1],
])

/** The ground worker is on the move inside the barrier. */
function isGroundWorkerInside(site: Site, { order }: Entry): boolean {
  if (!site.barrier || !actions.get(order.do)?.moves) return false
  if (crewMember(site, order.who).role !== 'ground-worker') return false
  return !isAloft(requirePerson(site, order.who)) && isInside(site.barrier, groundPointOf(site, order.who))
}
