/**
 * The street lamps' switch closes at dusk, and their wire, dead when the job began, is a phase of the low voltage
 * (procedure D12). Its own fuse is left out: a lamp's current or a person's does not blow it.
 */
import { invariant } from '../../../units/invariant'
import { feed } from '../lowVoltage'
import type { Mechanism } from './mechanism'

export const streetLampsOn: Mechanism<'street-lamps-on'> = {
  kind: 'street-lamps-on',
  rows: [12],
  links: ({ lv }, { wire }) => {
    const found = lv.wires.find((it) => it.id === wire)
    invariant(found, 'a wire of the low voltage', wire)
    return [feed(lv, found)]
  },
  ownSource: (_, { wire }) => ({ id: wire, elements: [], stopsAfter: 'never' }),
}
