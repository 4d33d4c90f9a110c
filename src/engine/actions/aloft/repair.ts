/** The work itself: the conductor is untied, the pin insulator changed, the conductor tied in again. */
import { isOnNextPole, onNextPole, withoutPole, type NextPole } from '../../site/nextPole'
import type { Scenario } from '../../site/scenario'
import type { Site } from '../../site/site'
import type { Action, Order } from '../action'
import { changeItem, hangingBy, mark, moveItem, tell, unmark } from '../changes'
import { atHand, handsFree, inReachOfHand, onPole } from '../conditions'
import { itemIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { workedConductors } from '../things'
import { bothHands, surfaceOf, touch, type PersonContact } from '../touching'

const tiedKey = (thing: string): string => `untied:${thing}`

/** Left hand on the conductor, right hand on the arm of the same pole. */
function handsAtWork(site: Site, order: Order): readonly PersonContact[] {
  const on = thingIn(order)
  const arm = isOnNextPole(on) ? onNextPole('arm') : 'arm'
  return [
    touch(order.who, 'left-hand', surfaceOf(site, on)),
    touch(order.who, 'right-hand', { kind: 'metalwork', id: arm }),
  ]
}

/** What is changed on that pole. */
function workOn({ scenario }: Site, thing: string): Scenario['work'] | NextPole['work'] {
  return isOnNextPole(thing) ? scenario.nextPole?.work : scenario.work
}

const swappedKey = (thing: string): string => `swapped:${thing}`

const isSwapped = (site: Site, thing: string): boolean =>
  isOnNextPole(thing) ? site.marks[swappedKey(thing)] !== undefined : site.insulator === 'replaced'

export const untie: Action = {
  id: 'untie',
  covers: ['A70'],
  things: workedConductors,
  check: all(onPole, handsFree(2), inReachOfHand, (site, order) =>
    site.marks[tiedKey(thingIn(order))] === undefined ? undefined : refuse(order, 'wires-untied'),
  ),
  takes: () => 240,
  contacts: handsAtWork,
  apply: (site, order) => tell(mark(site, tiedKey(thingIn(order))), order, thingIn(order)),
}

export const swapInsulator: Action = {
  id: 'swap-insulator',
  covers: ['A70'],
  withTypes: ['pin-insulator'],
  things: workedConductors,
  check: all(onPole, atHand, handsFree(2, 'item'), inReachOfHand, (site, order) => {
    if (isSwapped(site, thingIn(order))) return refuse(order, 'already-so')
    if (withoutPole(thingIn(order)) !== workOn(site, thingIn(order))?.conductor) return refuse(order, 'no-insulator')
    return site.marks[tiedKey(thingIn(order))] === undefined ? refuse(order, 'insulator-tied') : undefined
  }),
  takes: () => 300,
  contacts: handsAtWork,
  apply: (site, order) => {
    // What stays in the line is written off the register by being fitted.
    const fitted = changeItem(moveItem(site, itemIn(order), { kind: 'fitted' }), itemIn(order), { bookedIn: true })
    const on = thingIn(order)
    const old = workOn(site, on)?.old ?? ''
    const off = moveItem(fitted, old, hangingBy(site, order.who))
    const changed = isOnNextPole(on) ? mark(off, swappedKey(on)) : { ...off, insulator: 'replaced' as const }
    return tell(changed, order, on, { item: itemIn(order), old })
  },
}

export const retie: Action = {
  id: 'retie',
  covers: ['A70'],
  things: workedConductors,
  check: all(onPole, handsFree(2), inReachOfHand, (site, order) =>
    site.marks[tiedKey(thingIn(order))] === undefined ? refuse(order, 'already-so') : undefined,
  ),
  takes: () => 240,
  contacts: (site, order) => bothHands(order.who, surfaceOf(site, thingIn(order))),
  apply: (site, order) => tell(unmark(site, tiedKey(thingIn(order))), order, thingIn(order)),
}
