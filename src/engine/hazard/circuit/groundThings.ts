/**
 * Metal on the ground in the soil of the site: a fence by its posts, a pipe and somebody else's earth by a resistance.
 * The earth is a rod of usual make at its place, so that its distance counts; its stated resistance is that of all that is
 * behind it (statedEarth). A pipe has its earth far away.
 */
import { REMOTE_EARTH, type Element } from '../../physics/network'
import type { Electrode } from '../../physics/soil'
import type { Scenario } from '../../site/scenario'
import type { Ground } from './ground'
import { groundThingNode } from './nodes'
import { nodeOfPlace } from './nodeOfPlace'
import { resistor } from './parts'
import { statedEarth, statedEarthRod } from './statedEarth'

export function groundThingElectrodes({ grounds = [] }: Scenario): readonly Electrode[] {
  return grounds.flatMap((it): readonly Electrode[] => {
    const node = groundThingNode(it.id)
    switch (it.kind) {
      case 'fence':
        return [
          {
            id: node,
            kind: 'joined',
            parts: it.posts.map((at) => ({ kind: 'rod', at, top: 0, length: it.postDepth, radius: it.postRadius })),
          },
        ]
      case 'earth':
        return [statedEarthRod(node, it.at)]
      case 'pipe':
        return []
    }
  })
}

export function groundThings(scenario: Scenario, ground: Ground): readonly Element[] {
  return (scenario.grounds ?? []).flatMap((it): readonly Element[] => {
    const node = groundThingNode(it.id)
    const joins = it.kind === 'earth' ? undefined : it.joins
    return [
      ...(it.kind === 'earth' ? statedEarth(node, it.resistance, ground) : []),
      ...(it.kind === 'pipe' ? [resistor(`${node}/earth`, node, REMOTE_EARTH, it.resistance)] : []),
      ...(joins ? [resistor(`${node}/joint`, node, nodeOfPlace(scenario, joins.to), joins.resistance)] : []),
    ]
  })
}
