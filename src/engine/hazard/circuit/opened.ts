/**
 * A conductor that is opened at the worked pole has two ends there: what lies towards the crossing hangs on the far one.
 * Of jumpers that are out at another pole of the section the far end is the one away from the worked pole. The half of the
 * capacitance that was lumped at the pole stays at the near end.
 */
import type { CoupledBranch, Element } from '../../physics/network'
import type { Scenario } from '../../site/scenario'
import type { Fitted } from './fitted'
import { conductorAtPole, conductorNode, farEndNode, farEndOf } from './nodes'

export function withOpened(
  elements: readonly Element[],
  scenario: Scenario,
  { opened = [], jumpersOut = [] }: Pick<Fitted, 'opened' | 'jumpersOut'>,
): readonly Element[] {
  if (opened.length + jumpersOut.length === 0) return elements
  const out = (scenario.sectionJumpers ?? []).filter(({ id }) => jumpersOut.includes(id))
  const nodesAt = (points: typeof out) =>
    points.flatMap(({ id }) => scenario.conductors.map((it) => conductorNode(it.id, id)))
  const beyond = nodesAt(out.filter(({ along }) => along > 0))
  const far = {
    from: new Map([
      ...opened.map((id) => [conductorAtPole(id), farEndNode(id)] as const),
      ...beyond.map((node) => [node, farEndOf(node)] as const),
    ]),
    to: new Map(nodesAt(out.filter(({ along }) => along < 0)).map((node) => [node, farEndOf(node)])),
  }
  const isAtGap = ({ from, to }: CoupledBranch): boolean => far.from.has(from) || far.to.has(to)
  return elements.map((it): Element => {
    if (it.kind !== 'coupled' || !it.branches.some(isAtGap)) return it
    const branches = it.branches.map((branch) => ({
      ...branch,
      from: far.from.get(branch.from) ?? branch.from,
      to: far.to.get(branch.to) ?? branch.to,
    }))
    return { ...it, branches }
  })
}
