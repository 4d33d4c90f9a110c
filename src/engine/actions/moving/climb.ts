/**
 * Climbs up or down to a station, by step bolts or, where a wooden pole has none, on irons; the strap, if it is on, is moved
 * along.
 */
import { distance, type Place, type PoleStation } from '../../site/place'
import { hasSteps } from '../../site/pole'
import { gearOf, isAloft, requirePerson } from '../../site/questions'
import type { PersonId } from '../../site/scenario'
import type { Site } from '../../site/site'
import { feetAt } from '../../site/stations'
import type { Action } from '../action'
import { changePerson, tell } from '../changes'
import { handsFree, legHere, nearPole, poleBy } from '../conditions'
import { choiceIn } from '../orderValues'
import { all, refuse, type Condition } from '../refuse'
import { touch } from '../touching'
import { shoulderAboveFeet } from '../reach'

/** Seconds per station, strap moved at every step (common practice, no source). */
const perStation = 60
/** Of a double pole whose legs stand no further apart a climber holds on to both, metres (common practice, no source). */
const armSpan = 1.5
const origin = { x: 0, y: 0 }

const stations: readonly PoleStation[] = ['foot', 'below-lv', 'above-lv']

const onFootOrPole: Condition = (site, order) =>
  requirePerson(site, order.who).place.kind === 'bucket' ? refuse(order, 'in-bucket') : undefined

/** Bolts, or wood and irons for it. */
const wayUp: Condition = (site, order) => {
  const { pole } = site.scenario
  if (hasSteps(pole)) return undefined
  if (pole.kind !== 'wood') return refuse(order, 'no-way-up')
  const { wears } = requirePerson(site, order.who)
  return wears.some((id) => gearOf(site, id).type.id === 'climbing-irons') ? undefined : refuse(order, 'irons-missing')
}

export const climb: Action = {
  id: 'climb',
  covers: ['A45', 'A50'],
  values: { to: { kind: 'choice', many: false, of: () => stations } },
  moves: true,
  check: all(onFootOrPole, nearPole(2), handsFree(2), wayUp, (site, order) =>
    stationOf(site, order.who) === choiceIn(order, 'to') ? refuse(order, 'already-so') : undefined,
  ),
  takes: (site, order) => {
    const [from, to] = [
      stations.indexOf(stationOf(site, order.who)),
      stations.indexOf(choiceIn(order, 'to') as PoleStation),
    ]
    return Math.max(1, Math.abs(to - from)) * perStation
  },
  contacts: (site, order) => {
    const { pole } = site.scenario
    const height = feetAt(pole, stationOf(site, order.who)) + shoulderAboveFeet
    const leg = legHere(site, order.who)
    const hold = { kind: hasSteps(pole) ? 'step-bolt' : 'pole', height, ...leg } as const
    const isBetween = leg.leg === undefined && pole.secondLeg && distance(pole.secondLeg.at, origin) <= armSpan
    return [touch(order.who, 'left-hand', hold), touch(order.who, 'right-hand', isBetween ? { ...hold, leg: 2 } : hold)]
  },
  apply: (site, order) => {
    const station = choiceIn(order, 'to') as PoleStation
    const place = onPoleHere(site, order.who, station)
    return tell(changePerson(site, order.who, { place }), order, place.pole === undefined ? 'pole' : 'next-pole', {
      station,
    })
  },
}

/** Whoever is on the ground climbs the pole that they stand at. */
export function onPoleHere(site: Site, who: PersonId, station: PoleStation): Extract<Place, { kind: 'pole' }> {
  const pole = poleBy(site, who)
  return { kind: 'pole', station, ...(pole === undefined ? {} : { pole }) }
}

function stationOf(site: Site, who: PersonId): PoleStation {
  const person = requirePerson(site, who)
  return person.place.kind === 'pole' && isAloft(person) ? person.place.station : 'foot'
}
