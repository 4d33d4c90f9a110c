/**
 * A conductor that is opened at the worked pole has two ends there: what lies towards the crossing hangs on the far one.
 * The half of its capacitance that was lumped at the pole stays at the near end.
 */
import type { Element } from '../../physics/network'
import type { ThingId } from '../../site/scenario'
import { conductorAtPole, farEndNode } from './nodes'

export function withOpened(elements: readonly Element[], opened: readonly ThingId[]): readonly Element[] {
  if (opened.length === 0) return elements
  const far = new Map(opened.map((id) => [conductorAtPole(id), farEndNode(id)]))
  return elements.map((it): Element => {
    if (it.kind !== 'coupled' || !it.branches.some(({ from }) => far.has(from))) return it
    return { ...it, branches: it.branches.map((branch) => ({ ...branch, from: far.get(branch.from) ?? branch.from })) }
  })
}
