/**
 * A circuit with sources that limit their current: such a source lowers its voltage on all phases alike until its largest
 * phase carries no more than its limit. Found by repeated division, share × limit / current, which settles in one step when
 * nothing else feeds the circuit and otherwise by the share of the limit that others drive through it. To a billionth of
 * the limit; where it does not settle there is no answer, and that is said.
 */
import { magnitude, scale } from '../../math/complex'
import { isUnsolvable, unsolvable, type Element, type Unsolvable } from '../../physics/network'
import type { SiteCircuit } from '../circuit/buildCircuit'
import type { PhaseView } from '../circuit/phaseView'
import type { CurrentLimit } from './device'

const tolerance = 1e-9
const mostRounds = 100

export function solveLimited(
  circuit: SiteCircuit,
  limits: readonly CurrentLimit[],
  solve: (circuit: SiteCircuit) => PhaseView | Unsolvable,
): PhaseView | Unsolvable {
  let shares = limits.map(() => 1)
  for (let round = 0; round < mostRounds; round++) {
    const view = solve(withShares(circuit, limits, shares))
    if (isUnsolvable(view) || limits.length === 0) return view
    const next = limits.map((limit, i) => nextShare(limit, shares[i]!, view))
    if (next.every((share, i) => Math.abs(share - shares[i]!) <= tolerance * share)) return view
    shares = next
  }
  return unsolvable(limits[0]!.emfs[0]!, 'no-convergence')
}

function nextShare({ measures, most }: CurrentLimit, share: number, view: PhaseView): number {
  const solution = view.solution()
  const largest = Math.max(...measures.map((id) => magnitude(solution.current(id))))
  return share * most >= largest ? 1 : (share * most) / largest
}

function withShares(circuit: SiteCircuit, limits: readonly CurrentLimit[], shares: readonly number[]): SiteCircuit {
  if (shares.every((it) => it === 1)) return circuit
  const elements = circuit.elements.map((element): Element => {
    const at = limits.findIndex((it) => it.emfs.includes(element.id))
    if (at < 0 || element.kind !== 'voltage') return element
    return { ...element, voltage: scale(element.voltage, shares[at]!) }
  })
  return { ...circuit, elements }
}
