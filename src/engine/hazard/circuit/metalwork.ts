/** Metal on the pole beside arm and stay, each piece one node behind its fixing: brackets, bands, tanks, cable sheaths. */
import { REMOTE_EARTH, type Element } from '../../physics/network'
import type { Metalwork } from '../../site/groundThings'
import type { Scenario } from '../../site/scenario'
import { armNode, metalNode } from './nodes'
import { resistor } from './parts'
import { poleNode } from './pole'
import { nodeOfPlace } from './nodeOfPlace'

export function metalwork(scenario: Scenario): readonly Element[] {
  return (scenario.metalwork ?? []).flatMap((it): readonly Element[] => [
    resistor(`${metalNode(it.id)}/fixing`, metalNode(it.id), fixedTo(scenario, it), it.fixing),
    ...(it.earth === undefined
      ? []
      : [resistor(`${metalNode(it.id)}/earth`, metalNode(it.id), REMOTE_EARTH, it.earth)]),
  ])
}

function fixedTo(scenario: Scenario, { on, height }: Metalwork): string {
  if (on === 'pole') return poleNode(scenario, height)
  return on === 'arm' ? armNode : nodeOfPlace(scenario, on)
}
