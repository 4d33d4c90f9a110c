/** What a tester says of a thing: silent, lit, or a figure. It goes by what is really there and by what is wrong with it. */
import { pickedUpVoltage } from '../hazard/pickedUp'
import { conductorOf, isOpened } from '../site/gaps'
import { liveVoltage } from '../site/liveness'
import { gearOf, numberOf } from '../site/questions'
import type { ItemId, ThingId } from '../site/scenario'
import type { Site } from '../site/site'
import type { Perceived } from './changes'

type Said = Pick<Perceived, 'says' | 'values'>

/** A detector on a conductor of the section. */
export function detected(site: Site, detector: ItemId, thing: ThingId): Said {
  const { is } = gearOf(site, detector)
  const values = { with: detector }
  if (is.indicates !== true) return { says: 'test.silent', values }
  const lowest = numberOf(is, 'bandLow')
  const volts = voltsAt(site, thing)
  // Where that cannot be solved, it is not shown to be dead.
  if (volts !== undefined && volts < numberOf(is, 'threshold') * lowest) return { says: 'test.silent', values }
  // Slow below the lowest nominal voltage of its band (own choice): what is fed in that band is above it, to earth too.
  const isSlow = is.shows === 'strength' && volts !== undefined && volts < lowest
  return { says: isSlow ? 'test.indicates-slowly' : 'test.indicates', values }
}

/** Fed by a blade (of an opened conductor each end by itself, as the circuit gives it), or lifted by what is beside it. */
function voltsAt(site: Site, thing: ThingId): number | undefined {
  const fed = isOpened(site, conductorOf(thing)) ? 0 : liveVoltage(site, conductorOf(thing))
  const pickedUp = fed > 0 ? 0 : pickedUpVoltage(site, thing)
  return typeof pickedUp === 'number' ? Math.max(fed, pickedUp) : undefined
}

/** A two-pole tester between two things that have so many volts. */
export function measured(site: Site, tester: ItemId, volts: number): Said {
  const { is } = gearOf(site, tester)
  const values = { with: tester }
  if (is.indicates !== true) return { says: 'test.silent', values }
  if (volts > numberOf(is, 'maxVoltage')) return { says: 'test.over-range', values }
  return { says: 'test.reads', values: { ...values, volts } }
}
