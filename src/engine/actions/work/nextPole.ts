/**
 * The work is to go on at the next pole: it is looked over, the control room asked for a wider permit, or it is left for
 * another day. None of it is needed to climb there; what is not earthed there is found by the circuit.
 */
import { isOnNextPole } from '../../site/nextPole'
import type { Action } from '../action'
import { changePaper, mark, perceive, tell } from '../changes'
import { nearPole, onGround, poleBy } from '../conditions'
import { all, refuse } from '../refuse'
import { nextPoles } from '../things'

/** What was said of the first pole says nothing of the next. */
const lapsed = { safeToWork: false, earthsReported: false, workDone: false } as const

export const assessNextPole: Action = {
  id: 'assess-next-pole',
  covers: ['A08', 'A76'],
  things: nextPoles,
  check: all(onGround, nearPole(8), (site, order) =>
    poleBy(site, order.who) === 'next' ? undefined : refuse(order, 'not-near-pole'),
  ),
  takes: () => 180,
  apply: (site, order) =>
    perceive(mark(changePaper(site, lapsed), 'next-pole-assessed'), order.who, {
      of: 'next-pole',
      by: 'look',
      says: 'pole.next-assessed',
      values: {
        number: site.scenario.nextPole?.number ?? '',
        clamps: site.clamps.filter(({ on }) => isOnNextPole(on)).length,
      },
    }),
}

export const askWiderPermit: Action = {
  id: 'ask-wider-permit',
  covers: ['A35', 'A76'],
  things: nextPoles,
  speech: true,
  check: (site, order) => {
    if (site.paper.permit !== 'held') return refuse(order, 'no-permit')
    return site.marks['permit-wider'] === undefined ? undefined : refuse(order, 'already-so')
  },
  takes: () => 120,
  apply: (site, order) => {
    const { nextPole, control } = site.scenario
    const isGiven = control.widensPermit === true
    return perceive(isGiven ? mark(site, 'permit-wider') : site, order.who, {
      of: 'control',
      by: 'hear',
      says: isGiven ? 'control.permit-wider' : 'control.permit-stays',
      values: { number: nextPole?.number ?? '' },
    })
  },
}

export const declineNextPole: Action = {
  id: 'decline-next-pole',
  covers: ['A76'],
  things: nextPoles,
  speech: true,
  check: (site, order) => (site.marks['next-pole-declined'] === undefined ? undefined : refuse(order, 'already-so')),
  takes: () => 15,
  apply: (site, order) => tell(mark(site, 'next-pole-declined'), order, 'next-pole'),
}
