/** The work itself: the conductor is untied, the pin insulator changed, the conductor tied in again. */
import type { Action } from '../action'
import { changeItem, mark, moveItem, tell, unmark } from '../changes'
import { atHand, handsFree, inReachOfHand, onPole } from '../conditions'
import { itemIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { conductors } from '../things'
import { bothHands, touch } from '../touching'

const tiedKey = (thing: string): string => `untied:${thing}`

const onConductor = (who: string, id: string) => ({ left: touch(who, 'left-hand', { kind: 'conductor', id }) })
const onArm = (who: string) => ({ right: touch(who, 'right-hand', { kind: 'metalwork', id: 'arm' }) })

export const untie: Action = {
  id: 'untie',
  covers: ['A70'],
  things: conductors,
  check: all(onPole, handsFree(2), inReachOfHand, (site, order) =>
    site.marks[tiedKey(thingIn(order))] === undefined ? undefined : refuse(order, 'wires-untied'),
  ),
  takes: () => 240,
  contacts: (_site, order) => [onConductor(order.who, thingIn(order)).left, onArm(order.who).right],
  apply: (site, order) => tell(mark(site, tiedKey(thingIn(order))), order, thingIn(order)),
}

export const swapInsulator: Action = {
  id: 'swap-insulator',
  covers: ['A70'],
  withTypes: ['pin-insulator'],
  things: conductors,
  check: all(onPole, atHand, handsFree(2, 'item'), inReachOfHand, (site, order) => {
    if (site.insulator === 'replaced') return refuse(order, 'already-so')
    if (thingIn(order) !== site.scenario.work.conductor) return refuse(order, 'no-insulator')
    return site.marks[tiedKey(thingIn(order))] === undefined ? refuse(order, 'insulator-tied') : undefined
  }),
  takes: () => 300,
  contacts: (_site, order) => [onConductor(order.who, thingIn(order)).left, onArm(order.who).right],
  apply: (site, order) => {
    // What stays in the line is written off the register by being fitted.
    const fitted = changeItem(moveItem(site, itemIn(order), { kind: 'fitted' }), itemIn(order), { bookedIn: true })
    const old = moveItem(fitted, site.scenario.work.old, { kind: 'aloft' })
    const changed = { ...old, insulator: 'replaced' as const }
    return tell(changed, order, thingIn(order), { item: itemIn(order), old: site.scenario.work.old })
  },
}

export const retie: Action = {
  id: 'retie',
  covers: ['A70'],
  things: conductors,
  check: all(onPole, handsFree(2), inReachOfHand, (site, order) =>
    site.marks[tiedKey(thingIn(order))] === undefined ? refuse(order, 'already-so') : undefined,
  ),
  takes: () => 240,
  contacts: (_site, order) => bothHands(order.who, { kind: 'conductor', id: thingIn(order) }),
  apply: (site, order) => tell(unmark(site, tiedKey(thingIn(order))), order, thingIn(order)),
}
