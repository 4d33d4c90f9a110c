/** The star point of a transformer's low-voltage side: the worked low voltage's own where that is fed from here. */
import type { Scenario, ThingId } from '../../site/scenario'
import { lowVoltageStarNode, transformerNode } from './nodes'

export function lowNeutralNode({ lv }: Pick<Scenario, 'lv'>, transformer: ThingId): string {
  return lv.fedBy === transformer ? lowVoltageStarNode : transformerNode(transformer, 'low', 'star')
}
