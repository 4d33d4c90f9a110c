/** Circuits that cross the section: what keeps them from it, and what has to be given back. */
import { feedersOf, findRemovedCause, traitsOf } from '../../site/liveningTraits'
import type { Scenario, ThingId } from '../../site/scenario'
import type { Site } from '../../site/site'
import type { SitePredicate } from '../language/predicate'

const comesDown = (scenario: Scenario, feeder: ThingId): Scenario['livenings'] =>
  scenario.livenings.filter((it) => traitsOf(it).by === 'crossing' && feedersOf(scenario, it).includes(feeder))

/** It is out, a guard is between, or the piece of the section below it hangs apart: nothing of it can get to the work. */
export function isKeptApart(site: Site, feeder: ThingId): boolean {
  const ways = comesDown(site.scenario, feeder)
  return ways.length > 0 && ways.every((it) => findRemovedCause(site, it) !== undefined)
}

const crossingHeld: SitePredicate = {
  id: 'crossing-held',
  says: 'every circuit that could come down is out, kept apart (guard, jumpers out with the tails tied back), or its reclose is off',
  about: 'site',
  takes: {},
  fails({ site }) {
    const open = site.scenario.feeders.find(
      ({ id, recloseDeadTimes }) =>
        comesDown(site.scenario, id).length > 0 &&
        recloseDeadTimes.length > 0 &&
        site.paper.recloseBlocked[id] !== true &&
        !isKeptApart(site, id),
    )
    return open === undefined ? undefined : { why: 'reclose-on', feeder: open.id }
  },
}

const recloseAsFound: SitePredicate = {
  id: 'reclose-as-found',
  says: 'no reclose that was taken off for the work is off still',
  about: 'site',
  takes: {},
  fails({ site: { paper, scenario } }) {
    const off = scenario.feeders.find(({ id }) => paper.recloseBlocked[id] === true)
    return off === undefined ? undefined : { why: 'reclose-off', feeder: off.id }
  },
}

const jumpersAsFound: SitePredicate = {
  id: 'jumpers-as-found',
  says: 'no jumpers of the section that were taken out for the work are out still',
  about: 'site',
  takes: {},
  fails({ site: { jumpersOut = [] } }) {
    const left = jumpersOut[0]?.at
    return left === undefined ? undefined : { why: 'left-out', left }
  },
}

export const crossingPredicates = [crossingHeld, recloseAsFound, jumpersAsFound]
