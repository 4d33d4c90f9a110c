/**
 * A break: somebody leaves the place and comes back. While nobody is there, what the scenario says happens: a clamp is
 * turned loose, the barrier is taken away. What it was is found by whoever looks, or pulls, after it.
 */
import { groundPointOf, requirePerson } from '../../site/questions'
import type { Site } from '../../site/site'
import type { Action } from '../action'
import { changePerson, mark, perceive, tell, unmark } from '../changes'
import { nearPole, onSite } from '../conditions'
import { secondsBetween } from '../fetching'
import { pacesOnWay } from '../paces'
import { all, refuse } from '../refuse'

/** Off the place beyond the truck: so long a walk from there, seconds (common practice, no source). */
const beyondTruck = 60

export const leaveSite: Action = {
  id: 'leave-site',
  covers: ['A74'],
  moves: true,
  check: all(onSite, (site, order) =>
    requirePerson(site, order.who).strapped ? refuse(order, 'strapped') : undefined,
  ),
  takes: (site, order) => secondsBetween(groundPointOf(site, order.who), site.truck) + beyondTruck,
  contacts: (site, order) => pacesOnWay(site, order.who, groundPointOf(site, order.who), site.truck),
  apply: (site, order) => {
    const away = [...(site.away ?? []), order.who].sort()
    const left = changePerson({ ...site, away }, order.who, { place: { kind: 'ground', at: site.truck } })
    const isEmpty = Object.keys(site.persons).every((id) => away.includes(id))
    return tell(isEmpty ? mark(left, 'site-left') : left, order, order.who)
  },
}

export const comeBack: Action = {
  id: 'come-back',
  covers: ['A74'],
  check: (site, order) => (site.away?.includes(order.who) ? undefined : refuse(order, 'already-so')),
  takes: () => beyondTruck,
  apply: (site, order) => {
    const back = { ...site, away: (site.away ?? []).filter((it) => it !== order.who) }
    const after = site.marks['site-left'] === undefined ? back : unmark(tampered(back), 'site-left')
    return tell(mark(after, `back:${order.who}`), order, order.who)
  },
}

/** What happened while nobody was there; nobody has seen it. */
function tampered(site: Site): Site {
  const { loosens, takesBarrier } = site.scenario.whileAway ?? {}
  const clamps = site.clamps.map((it) => (it.on === loosens ? { ...it, loosened: true } : it))
  return { ...site, clamps, ...(takesBarrier ? { barrier: null } : {}) }
}

/** Once round the place after a break: barrier, earth ends and what hangs up there, as far as it is seen from the ground. */
export const lookOverAgain: Action = {
  id: 'look-over-again',
  covers: ['A74'],
  moves: true,
  check: all(onSite, nearPole(60)),
  takes: () => 120,
  apply: (site, order) => {
    const barrier = site.barrier ? 'see.barrier' : 'see.no-barrier'
    const values = {
      rods: site.rods.length,
      earthEnds: site.clamps.filter((it) => it.end === 'earth').length,
      aloft: site.clamps.filter((it) => it.end !== 'earth').length,
    }
    return perceive(
      mark(site, 'looked-over-again'),
      order.who,
      { of: 'barrier', by: 'look', says: barrier, values: { corners: site.barrier?.length ?? 0 } },
      { of: 'pole', by: 'look', says: 'see.again', values },
    )
  },
}
