/** The soil's matrix with feet in it: each foot a disc with its own spreading, raised by every electrode and other foot. */
import { roundTo } from '../../math/round'
import type { Element } from '../../physics/network'
import { distance, type GroundPoint } from '../../site/place'
import type { Scenario } from '../../site/scenario'
import { invariant } from '../../units/invariant'
import { footSpreading } from '../bodies/feet'

export interface Foot {
  readonly node: string
  readonly at: GroundPoint
  /** Ohm between it and each electrode of the site. */
  readonly mutual: readonly number[]
}

export function joinFeet(scenario: Scenario, soil: Element, feet: readonly Foot[]): Element {
  invariant(soil.kind === 'electrodes', 'the electrodes of the site', soil.id)
  const spreading = footSpreading(scenario)
  const between = (a: Foot, b: Foot): number => {
    return a === b ? spreading.self : spreading.pair(roundTo(distance(a.at, b.at), 1e-6))
  }
  return {
    id: soil.id,
    kind: 'electrodes',
    nodes: [...soil.nodes, ...feet.map((foot) => foot.node)],
    resistance: [
      ...soil.resistance.map((row, i) => [...row, ...feet.map((foot) => foot.mutual[i]!)]),
      ...feet.map((foot) => [...foot.mutual, ...feet.map((other) => between(foot, other))]),
    ],
  }
}
