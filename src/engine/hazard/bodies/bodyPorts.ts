/**
 * Contacts as ports of one solved state, of one body or of several at once. A thing that belongs to no circuit gives no
 * port, but for a lead that no clamp holds and that two people have in their hands: it joins them.
 */
import type { Complex } from '../../math/complex'
import { add, complex, ZERO } from '../../math/complex'
import { roundTo } from '../../math/round'
import { isUnsolvable, type Unsolvable } from '../../physics/network'
import type { GroundPoint } from '../../physics/soil'
import { distance } from '../../site/place'
import type { ItemId, Scenario } from '../../site/scenario'
import type { PhaseView, Terminal } from '../circuit/phaseView'
import { feetAt, footSpreading, footTerminal } from './feet'
import type { BodyPorts } from './solveBody'
import type { Touch } from './touch'

/** A lead that hangs on nothing; its metal has the potential that the bodies on it give it. */
export interface LooseLead {
  readonly kind: 'loose'
  readonly lead: ItemId
  readonly node: string
}

export interface PortedTouch {
  readonly touch: Touch
  readonly terminal: Terminal | LooseLead
  /** Where a foot stands. */
  readonly foot: GroundPoint | null
}

export interface PortedBody extends BodyPorts {
  readonly ported: readonly PortedTouch[]
}

const noLeads: ReadonlySet<ItemId> = new Set()

/** @param joining leads that people join hands over though no clamp holds them (`joiningLeads`) */
export function bodyPorts(
  scenario: Scenario,
  view: PhaseView,
  touches: readonly Touch[],
  joining: ReadonlySet<ItemId> = noLeads,
): PortedBody | Unsolvable {
  const ported = touches.flatMap((touch) => portOf(scenario, view, touch, joining))
  const transfer: Complex[][] = []
  for (const seen of ported) {
    const row: Complex[] = []
    for (const driven of ported) {
      const through = throughCircuit(view, seen, driven)
      if (isUnsolvable(through)) return through
      row.push(add(through, complex(sharedOhm(scenario, seen, driven))))
    }
    transfer.push(row)
  }
  return {
    ported,
    limbs: ported.map((it) => it.touch.limb),
    open: ported.map(({ terminal }) => (terminal.kind === 'loose' ? ZERO : view.openVoltage(terminal))),
    transfer,
  }
}

function throughCircuit(view: PhaseView, seen: PortedTouch, driven: PortedTouch): Complex | Unsolvable {
  if (seen.terminal.kind === 'loose' || driven.terminal.kind === 'loose') return ZERO
  return view.transfer(seen.terminal, driven.terminal)
}

function portOf(
  scenario: Scenario,
  view: PhaseView,
  touch: Touch,
  joining: ReadonlySet<ItemId>,
): readonly PortedTouch[] {
  const { point } = touch
  if (point.kind === 'node') {
    const { node } = point
    if (view.has(node)) return [{ touch, terminal: { kind: 'node', node }, foot: null }]
    const isJoint = touch.lead !== null && joining.has(touch.lead)
    return isJoint ? [{ touch, terminal: { kind: 'loose', lead: touch.lead, node }, foot: null }] : []
  }
  const [left, right] = feetAt(view.ground, view.electrodeCurrents, point.at, point.stance)
  const foot = touch.limb === 'right-foot' || touch.limb === 'knee' ? right : left
  return [{ touch, foot, terminal: footTerminal(view.ground, scenario.contact.footRadius, foot) }]
}

/** What two contacts share outside the solved circuit: the soil straight between feet, one bolt or stick behind both. */
function sharedOhm(scenario: Scenario, a: PortedTouch, b: PortedTouch): number {
  if (a === b && a.terminal.kind !== 'ground') return a.touch.series
  if (a.terminal.kind === 'ground' && b.terminal.kind === 'ground') {
    const spreading = footSpreading(scenario)
    return a === b ? spreading.self : spreading.pair(apart(a.foot, b.foot))
  }
  const isShared = a.touch.sharedSeries !== null && a.touch.sharedSeries === b.touch.sharedSeries
  return isShared ? a.touch.series : 0
}

function apart(a: GroundPoint | null, b: GroundPoint | null): number {
  // to the micrometre, so that a stance is the same distance wherever it is
  return a === null || b === null ? 0 : roundTo(distance(a, b), 1e-6)
}

/** Leads that more than one of the bodies touches. */
export function joiningLeads(bodies: readonly { readonly touches: readonly Touch[] }[]): ReadonlySet<ItemId> {
  const touched = bodies.flatMap(({ touches }) => [...new Set(touches.flatMap((it) => it.lead ?? []))])
  return new Set(touched.filter((lead, i) => touched.indexOf(lead) !== i))
}
