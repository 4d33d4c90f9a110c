/**
 * Earths of low-voltage neutrals near enough to share the soil of the site: each is a rod of usual make at its place. Its
 * stated resistance is that of everything behind it: where the rod alone has more, the rest of that network lies far away
 * beside it; where it has less, the difference lies in its joints.
 */
import { REMOTE_EARTH, type Element } from '../../physics/network'
import type { Electrode } from '../../physics/soil'
import type { GroundPoint } from '../../site/place'
import type { Scenario } from '../../site/scenario'
import { invariant } from '../../units/invariant'
import type { Ground } from './electrodes'
import { lowNeutralNode } from './lowNeutral'
import { nearEarthNode, neutralEarthNode } from './nodes'
import { jointResistance, resistor } from './parts'

/** Metres (common practice, no source). */
const usualRod = { length: 2, radius: 0.008 }

interface NearEarth {
  /** The neutral there. */
  readonly neutral: string
  readonly at: GroundPoint
  /** Ohm. */
  readonly resistance: number
}

function nearEarthsOf(scenario: Scenario): readonly NearEarth[] {
  const { lv, transformers = [] } = scenario
  const houses = (lv.houseEarths ?? []).map((it, place) => ({ ...it, neutral: neutralEarthNode(place) }))
  const stars = transformers.flatMap((it) => {
    return it.id === lv.fedBy ? [] : [{ ...it.neutralEarth, neutral: lowNeutralNode(scenario, it.id) }]
  })
  return [...houses, ...stars].flatMap(({ neutral, at, resistance }) => {
    return at === undefined ? [] : [{ neutral, at, resistance }]
  })
}

export function nearEarthRods(scenario: Scenario): readonly Electrode[] {
  return nearEarthsOf(scenario).map(({ neutral, at }) => ({
    id: nearEarthNode(neutral),
    kind: 'rod',
    at,
    top: 0,
    ...usualRod,
  }))
}

/** From each neutral to its rod, and to what lies beyond. */
export function nearEarths(scenario: Scenario, ground: Ground): readonly Element[] {
  return nearEarthsOf(scenario).flatMap(({ neutral, resistance }): readonly Element[] => {
    const rod = nearEarthNode(neutral)
    const place = ground.electrodes.findIndex((it) => it.node === rod)
    const own = ground.resistance[place]?.[place]
    invariant(own !== undefined, 'a rod of each near earth', rod)
    if (resistance >= own) {
      return [resistor(`${neutral}/earth`, neutral, rod, Math.max(resistance - own, jointResistance))]
    }
    return [
      resistor(`${neutral}/earth`, neutral, rod, jointResistance),
      resistor(`${neutral}/beyond`, neutral, REMOTE_EARTH, (resistance * own) / (own - resistance)),
    ]
  })
}
