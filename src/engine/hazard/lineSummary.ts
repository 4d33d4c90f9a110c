/** What a line's story comes to: its shots, what ended it, the rise and the current at its start, what carried it. */
import { magnitude } from '../math/complex'
import type { Solution } from '../physics/network'
import type { ItemId, Scenario, ThingId } from '../site/scenario'
import { invariant } from '../units/invariant'
import type { Fitted } from './circuit/fitted'
import { clampId, rodNode } from './circuit/nodes'
import type { PhaseView } from './circuit/phaseView'
import { poleFootNode } from './circuit/pole'
import type { Happening } from './happening'
import type { Wear } from './leadWear'
import type { LinePhase, LineStory, Shot } from './lineStory'
import type { Device } from './protection/device'

interface Told {
  readonly scenario: Scenario
  readonly fitted: Fitted
  readonly key: string
}

export function lineSummary(
  { scenario, fitted, key }: Told,
  sources: readonly ThingId[],
  phases: readonly LinePhase[],
  devices: readonly Device[],
  wear: Wear,
  cleared: boolean,
  happenings: readonly Happening[],
): LineStory {
  const first = phases[0]
  invariant(first, 'a horizon above 0 s', scenario.horizon)
  const isLive = sources.length > 0
  const solution = first.view.solution()
  const shots = shotsOf(phases, isLive)
  return {
    kind: 'line',
    key,
    phases,
    shots,
    duration: Math.max(...shots.map((it) => it.to - it.from)),
    end: phases[phases.length - 1]!.to,
    cleared,
    clearedBy: isLive ? endOf(devices, cleared) : 'not-live',
    siteRise: riseOf(scenario, fitted, first.view),
    liveCurrent: linkCurrent(first.view),
    feeders: sources,
    carriers: isLive ? carriersOf(fitted, solution) : [],
    gone: [...wear.gone].sort(),
    happenings,
  }
}

function endOf(devices: readonly Device[], cleared: boolean): LineStory['clearedBy'] {
  const operated = devices.map((it) => it.operated).find((it) => it !== null)
  return cleared ? (operated ?? 'nothing') : 'nothing'
}

/** Each a shock of its own; of a section that nothing feeds its whole time as one. */
function shotsOf(phases: readonly LinePhase[], isLive: boolean): readonly Shot[] {
  const shots = new Map<number, Shot>()
  for (const phase of phases) {
    if (phase.isLive !== isLive) continue
    const begun = shots.get(phase.shot) ?? { from: phase.from, to: phase.to, current: linkCurrent(phase.view) }
    shots.set(phase.shot, { ...begun, to: phase.to })
  }
  return [...shots.values()]
}

/** The largest of the links that make the section live. */
function linkCurrent(view: PhaseView): number {
  const solution = view.solution()
  return Math.max(0, ...view.circuit.links.map((id) => magnitude(solution.current(id))))
}

/** Of what the earth ends of leads are on, and of the rods that any clamp is on; of the foot of a pole without either. */
function riseOf(scenario: Scenario, fitted: Fitted, view: PhaseView): number {
  const clamps = fitted.leads.flatMap((lead) => lead.clamps)
  const earthed = clamps.filter(({ end }) => end === 'earth').map(({ node }) => node)
  const rods = fitted.rods.map(({ item }) => rodNode(item)).filter((rod) => clamps.some(({ node }) => node === rod))
  const nodes = [...earthed, ...rods]
  return Math.max(...(nodes.length > 0 ? nodes : [poleFootNode(scenario)]).map((node) => magnitude(view.voltage(node))))
}

/** A lead that carried more than this carried the fault, ampere (own choice: a hundredth of any fault here). */
const faultCurrent = 0.5

function carriersOf(fitted: Fitted, solution: Solution): readonly ItemId[] {
  const leads = fitted.leads.filter((lead) => {
    return lead.clamps.some((clamp) => magnitude(solution.current(clampId(lead.item, clamp.end))) > faultCurrent)
  })
  const nodes = new Set(leads.flatMap((lead) => lead.clamps.map((clamp) => clamp.node)))
  const rods = fitted.rods.filter((rod) => nodes.has(rodNode(rod.item)))
  return [...leads, ...rods].map((it) => it.item).sort()
}
