/** A verdict in the words of its zone, and that it burns where it does. */
import type { Exposure } from '../engine'
import { english } from './en'
import { makeSay } from './makeSay'

const say = makeSay(english)

/** More than this through a body burns, amperes (common practice, no source). */
const burnsFrom = 1

/** On the way from foot to foot the legs lock before the breath does. */
export function verdictWords({
  zone,
  shockPath,
  bodyCurrent,
}: Pick<Exposure, 'zone' | 'shockPath' | 'bodyCurrent'>): string {
  const words = say(zone === 'AC-3' && shockPath === 'foot-foot' ? 'zone.AC-3.feet' : `zone.${zone}`)
  return bodyCurrent > burnsFrom ? `${words}, ${say('zone.burns')}` : words
}
