/** Measures from where one works to the nearest place where a conductor is earthed. */
import { isOnNextPole, poleFoot } from '../../site/nextPole'
import { distance } from '../../site/place'
import type { Site } from '../../site/site'
import type { Action, Order } from '../action'
import { perceive, type Perceived } from '../changes'
import { onSite } from '../conditions'
import { thingIn } from '../orderValues'
import { conductorEnds, nextPoles } from '../things'

export const measureToEarths: Action = {
  id: 'measure-to-earths',
  covers: ['A60'],
  things: (site) => ['pole', ...nextPoles(site)],
  check: onSite,
  takes: () => 60,
  apply: (site, order) => perceive(site, order.who, { of: thingIn(order), by: 'look', ...found(site, order) }),
}

/** A clamp of a lead whose earth end is on. */
function found(site: Site, order: Order): Pick<Perceived, 'says' | 'values'> {
  const wires = conductorEnds(site)
  const earthed = site.clamps.filter(
    ({ lead, on }) => wires.includes(on) && site.clamps.some((it) => it.lead === lead && it.end === 'earth'),
  )
  const from = poleFoot(site.scenario, thingIn(order) === 'next-pole' ? 'next' : undefined)
  const metres = earthed.map(({ on }) => distance(from, poleFoot(site.scenario, isOnNextPole(on) ? 'next' : undefined)))
  if (metres.length === 0) return { says: 'see.no-earths' }
  return { says: 'see.earths-away', values: { metres: Math.min(...metres) } }
}
