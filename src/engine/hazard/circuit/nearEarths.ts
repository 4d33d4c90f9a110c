/** Earths of low-voltage neutrals near enough to share the soil of the site: each as it is stated (statedEarth.ts). */
import type { Element } from '../../physics/network'
import type { Electrode } from '../../physics/soil'
import type { GroundPoint } from '../../site/place'
import type { Scenario } from '../../site/scenario'
import type { Ground } from './ground'
import { lowNeutralNode } from './lowNeutral'
import { neutralEarthNode } from './nodes'
import { statedEarth, statedEarthRod } from './statedEarth'

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
  return nearEarthsOf(scenario).map(({ neutral, at }) => statedEarthRod(neutral, at))
}

/** From each neutral to its rod, and to what lies beyond. */
export function nearEarths(scenario: Scenario, ground: Ground): readonly Element[] {
  return nearEarthsOf(scenario).flatMap(({ neutral, resistance }) => statedEarth(neutral, resistance, ground))
}
