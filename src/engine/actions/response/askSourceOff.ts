/** Asks the control room to switch a circuit off and prove it off; it stays off until the permit is back. */
import type { Livening } from '../../site/livening'
import { feedersOf } from '../../site/liveningTraits'
import type { Action } from '../action'
import { mark, perceive } from '../changes'
import { thingIn } from '../orderValues'
import { always } from '../refuse'
import { feeders } from '../things'

/** Nothing of it is left to be switched off: whatever circuit is asked for, it can be proved off. */
const isOver = ({ kind }: Livening): boolean => kind === 'lightning' || kind === 'stored-charge'

export const askSourceOff: Action = {
  id: 'ask-source-off',
  covers: ['A77'],
  speech: true,
  things: feeders,
  check: always,
  takes: () => 120,
  apply: (site, order) => {
    const feeder = thingIn(order)
    const source = site.scenario.livenings.find((it) => it.id === site.livening?.id)
    const isSource = source !== undefined && (isOver(source) || feedersOf(site.scenario, source).includes(feeder))
    const hear = (says: string) => ({ of: feeder, by: 'hear', says, values: { feeder } }) as const
    if (!isSource || !site.livening) return perceive(site, order.who, hear('control.no-reason'))
    const feedersOut = [...new Set([...site.feedersOut, feeder])].sort()
    const off = { ...mark(site, 'source-off'), feedersOut, livening: { ...site.livening, provedOff: true } }
    return perceive(off, order.who, hear('control.proved-off'))
  },
}
