/**
 * Concrete pole: its reinforcement is one node, the butt is that node's electrode. The arm's bolt is the only metal way
 * into it from the top; a body or a step bolt comes in through its own spreading resistance (bodies/touch.ts).
 */
import type { Element } from '../../physics/network'
import type { ConcretePole } from '../../site/scenario'
import { PI } from '../../math/portable'
import { armNode, cageNode } from './nodes'
import { resistor } from './parts'

export function pole(concrete: ConcretePole): readonly Element[] {
  return [resistor('pole/arm-bolt', armNode, cageNode, concrete.armFixing)]
}

/**
 * From a patch of `area` m² on the concrete to the reinforcement, ohm: the smaller of the slab between patch and cage,
 * ρt/A, and an equipotential disc on a half-space, ρ/4b. Both are upper bounds of the current's real way.
 */
export function spreadingResistance(concrete: ConcretePole, area: number): number {
  const radius = Math.sqrt(area / PI)
  const { concreteResistivity, concreteCover } = concrete
  return Math.min((concreteResistivity * concreteCover) / area, concreteResistivity / (4 * radius))
}
