/** Measures an earth with the instrument: to earth far away, or to another piece of metal. */
import { earthReading } from '../../hazard/earthReading'
import type { Surface } from '../../site/contact'
import { findSectionNeutral } from '../../site/findSectionNeutral'
import { gearOf, itemsOf, numberOf } from '../../site/questions'
import type { ThingId } from '../../site/scenario'
import type { Site } from '../../site/site'
import type { Action, Order } from '../action'
import { perceive, type Perceived } from '../changes'
import { atEarth, atHand, handsFree } from '../conditions'
import { choiceIn, itemIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { earths, rodItem } from '../things'
import { touch } from '../touching'

const farAway = 'far-earth'

/** Only where the register has an instrument. */
const measured = (site: Site): readonly ThingId[] => (itemsOf(site, 'earth-tester').length > 0 ? earths(site) : [])

export const measureEarth: Action = {
  id: 'measure-earth',
  covers: ['A41'],
  withTypes: ['earth-tester'],
  things: measured,
  values: {
    against: {
      kind: 'choice',
      many: false,
      of: (site) => [farAway, ...earths(site).filter((it) => isThere(site, it))],
    },
  },
  byHand: true,
  check: all(atEarth, atHand, handsFree(2, 'item'), (_site, order) =>
    order.values['against'] === thingIn(order) ? refuse(order, 'already-so') : undefined,
  ),
  takes: () => 180,
  // One clip is set by hand on bare metal.
  contacts: (site, order) => [touch(order.who, 'right-hand', bareMetal(site, thingIn(order)))],
  apply: (site, order) => perceive(site, order.who, { of: thingIn(order), by: 'test', ...reading(site, order) }),
}

function isThere(site: Site, thing: ThingId): boolean {
  return !thing.startsWith('rod/') || site.rods.some((it) => it.item === rodItem(thing))
}

function bareMetal(site: Site, thing: ThingId): Surface {
  if (thing === 'terminal') return { kind: 'metalwork', id: thing }
  const neutral = findSectionNeutral(site.scenario)
  if (thing === 'pole-earth' && neutral) return { kind: 'conductor', id: neutral.id }
  return { kind: 'rod', item: rodItem(thing) }
}

/** In whole hundredths of an ohm: the instrument shows no more. */
function reading(site: Site, order: Order): Pick<Perceived, 'says' | 'values'> {
  const tester = itemIn(order)
  const { is } = gearOf(site, tester)
  const against = choiceIn(order, 'against')
  const values = { with: tester, against }
  if (is.indicates !== true) return { says: 'test.silent', values }
  const ohm = earthReading(site, thingIn(order), against === farAway ? undefined : against)
  if (typeof ohm !== 'number') return { says: 'test.over-range', values }
  return { says: 'test.reads-ohm', values: { ...values, ohm: Math.round(100 * ohm * numberOf(is, 'reads')) / 100 } }
}
