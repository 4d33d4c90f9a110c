/** Reads the label of an item, or the number plate of a switch. */
import { evidenceOf, findItem, findSwitch, requirePerson } from '../../site/questions'
import type { Action } from '../action'
import { mark, perceive } from '../changes'
import { atSwitch, isAtHand } from '../conditions'
import { thingIn } from '../orderValues'
import { refuse } from '../refuse'
import { items, switches } from '../things'

export const readLabel: Action = {
  id: 'read-label',
  covers: ['A15', 'A16', 'A17', 'A18', 'A19', 'A20', 'A25'],
  things: (site) => [...items(site), ...switches(site)],
  check: (site, order) => {
    const thing = thingIn(order)
    const item = findItem(site, thing)
    if (!item) return atSwitch(site, order)
    const isOwn = requirePerson(site, order.who).wears.includes(thing)
    return isAtHand(site, order.who, thing) || isOwn || item.where.kind === 'quarantine'
      ? undefined
      : refuse(order, 'not-in-sight')
  },
  takes: () => 8,
  apply: (site, order) => {
    const thing = thingIn(order)
    const device = findSwitch(site, thing)
    if (device) {
      const read = { of: thing, by: 'label', says: 'see.number-plate', values: { label: device.label } } as const
      return perceive(mark(site, `label-read:${thing}`), order.who, read)
    }
    const seen = evidenceOf(site, thing, 'label').map((it) => ({ of: thing, by: 'label' as const, ...it }))
    return perceive(mark(site, `label-read:${thing}`), order.who, ...seen)
  },
}
