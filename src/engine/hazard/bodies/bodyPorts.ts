/** A body's contacts as ports of one solved state. A thing that belongs to no circuit gives no port. */
import type { Complex } from '../../math/complex'
import { add, complex } from '../../math/complex'
import { roundTo } from '../../math/round'
import { isUnsolvable, type Unsolvable } from '../../physics/network'
import type { GroundPoint } from '../../physics/soil'
import type { Scenario } from '../../site/scenario'
import type { PhaseView, Terminal } from '../circuit/phaseView'
import { feetAt, footSpreading, footTerminal } from './feet'
import type { BodyPorts } from './solveBody'
import type { Touch } from './touch'

export interface PortedTouch {
  readonly touch: Touch
  readonly terminal: Terminal
  /** Where a foot stands. */
  readonly foot: GroundPoint | null
}

export interface PortedBody extends BodyPorts {
  readonly ported: readonly PortedTouch[]
}

export function bodyPorts(scenario: Scenario, view: PhaseView, touches: readonly Touch[]): PortedBody | Unsolvable {
  const ported = touches.flatMap((touch) => portOf(scenario, view, touch))
  const transfer: Complex[][] = []
  for (const seen of ported) {
    const row: Complex[] = []
    for (const driven of ported) {
      const through = view.transfer(seen.terminal, driven.terminal)
      if (isUnsolvable(through)) return through
      row.push(add(through, complex(sharedOhm(scenario, seen, driven))))
    }
    transfer.push(row)
  }
  return {
    ported,
    limbs: ported.map((it) => it.touch.limb),
    open: ported.map((it) => view.openVoltage(it.terminal)),
    transfer,
  }
}

function portOf(scenario: Scenario, view: PhaseView, touch: Touch): readonly PortedTouch[] {
  const { point } = touch
  if (point.kind === 'node') {
    return view.has(point.node) ? [{ touch, terminal: { kind: 'node', node: point.node }, foot: null }] : []
  }
  const [left, right] = feetAt(view.ground, view.electrodeCurrents, point.at, point.stance)
  const foot = touch.limb === 'right-foot' ? right : left
  return [{ touch, foot, terminal: footTerminal(view.ground, scenario.contact.footRadius, foot) }]
}

/** What two contacts share outside the solved circuit: the soil straight between two feet, one bolt under both. */
function sharedOhm(scenario: Scenario, a: PortedTouch, b: PortedTouch): number {
  if (a === b && a.terminal.kind === 'node') return a.touch.series
  if (a.terminal.kind === 'ground' && b.terminal.kind === 'ground') {
    const spreading = footSpreading(scenario)
    return a === b ? spreading.self : spreading.pair(distance(a.foot, b.foot))
  }
  const isShared = a.touch.sharedSeries !== null && a.touch.sharedSeries === b.touch.sharedSeries
  return isShared ? a.touch.series : 0
}

function distance(a: GroundPoint | null, b: GroundPoint | null): number {
  if (a === null || b === null) return 0
  const dx = a.x - b.x
  const dy = a.y - b.y
  // to the micrometre, so that a stance is the same distance wherever it is
  return roundTo(Math.sqrt(dx * dx + dy * dy), 1e-6)
}
