/**
 * The story of a livening as the circuit lives it: solve, find the next thing to happen, advance to it, solve again.
 * Job time is whole seconds; a livening has its own seconds, each event rounded to one microsecond. It ends when every
 * source is off for good, or at the scenario's horizon with nothing having cleared it.
 */
import { magnitude } from '../math/complex'
import { isUnsolvable, type Solution, type Unsolvable } from '../physics/network'
import type { ItemId, Livening, Scenario, ThingId } from '../site/scenario'
import { invariant } from '../units/invariant'
import { advance, freshBreaker, nextOf, relayCurrents, type Breaker, type RelayCurrents } from './breaker'
import { buildCircuit } from './circuit/buildCircuit'
import type { Ground } from './circuit/electrodes'
import type { Fitted } from './circuit/fitted'
import { liveningSource } from './circuit/livening'
import type { OwnSource } from './circuit/livening/mechanism'
import { cageNode, clampId, rodNode } from './circuit/nodes'
import { viewPhase, type PhaseView } from './circuit/phaseView'
import { feedersReaching } from './circuit/sources'
import { requireFeeder } from './circuit/supply'
import { nextWear, unworn, wearOn, type Wear } from './leadWear'
import type { LinePhase, LineStory } from './lineStory'
import { cachedGround, type SweepCache } from './sweepCache'

interface Situation {
  readonly scenario: Scenario
  readonly fitted: Fitted
  readonly livening: Livening | 'none'
  readonly key: string
}

/** @param situation in its corner already; `key` names all of it */
export function tellLine(situation: Situation, cache: SweepCache): LineStory | Unsolvable {
  const known = cache.lines.get(situation.key)
  if (known !== undefined) return known
  const story = tell(situation, cache)
  cache.lines.set(situation.key, story)
  return story
}

interface Stretch extends LinePhase {
  readonly state: string
}

/** What makes another circuit. */
function stateOf(live: readonly ThingId[], wear: Wear): string {
  return JSON.stringify([live, [...wear.gone].sort()])
}

/** More events than any sequence of shots, melting pieces and burning clamps has. */
const mostEvents = 500

function tell(situation: Situation, cache: SweepCache): LineStory | Unsolvable {
  const { scenario, fitted, key } = situation
  const ground = cachedGround(cache, scenario, fitted)
  const feeders = feedersReaching(scenario, fitted, situation.livening)
  const own = liveningSource(scenario, situation.livening)
  let breakers = feeders.map((id) => freshBreaker(requireFeeder(scenario, id), fitted.recloseBlocked.includes(id)))
  let wear = unworn
  let now = 0
  let shot = 0
  let wasLive = false
  const phases: Stretch[] = []
  for (let count = 0; now < scenario.horizon; count++) {
    invariant(count < mostEvents, 'a livening that comes to an end', key)
    const live = [
      ...breakers.filter((it) => it.isClosed).map((it) => it.feeder.id),
      ...(own !== undefined && now < stopOf(own) ? [own.id] : []),
    ]
    const hasSource = feeders.length > 0 || own !== undefined
    if (hasSource && live.length === 0 && breakers.every((it) => it.recloseAt === null)) break
    const view = solvePhase(situation, ground, live, wear, cache, phases)
    if (isUnsolvable(view)) return view
    const isLive = live.length > 0
    if (isLive && !wasLive) shot += 1
    wasLive = isLive
    const step = stepOn(scenario, fitted, breakers, wear, view, now, stopOf(own))
    phases.push({ from: now, to: step.now, isLive, shot, view, state: stateOf(live, wear) })
    ;({ now, breakers, wear } = step)
  }
  return summary(situation, feeders, own, joined(phases), breakers, wear)
}

/** Second at which the livening's own source stops by itself; without one it never ran. */
function stopOf(own: OwnSource | undefined): number {
  if (own === undefined) return -Infinity
  return own.stopsAfter === 'never' ? Infinity : own.stopsAfter
}

function solvePhase(
  { scenario, fitted, livening, key }: Situation,
  ground: Ground,
  live: readonly ThingId[],
  wear: Wear,
  cache: SweepCache,
  phases: readonly Stretch[],
): PhaseView | Unsolvable {
  const last = phases[phases.length - 1]
  const state = stateOf(live, wear)
  // a lead's resistance is taken as it is when the circuit changes, not at each relay's step
  if (last?.state === state) return last.view
  const name = cache.shortName(JSON.stringify([key, state, [...wear.temperature]]))
  const circuit = buildCircuit(scenario, fitted, livening, ground, live, wear)
  return viewPhase(circuit, ground, cache.factored, name)
}

function stepOn(
  scenario: Scenario,
  fitted: Fitted,
  breakers: readonly Breaker[],
  wear: Wear,
  view: PhaseView,
  now: number,
  ownStop: number,
): { now: number; breakers: Breaker[]; wear: Wear } {
  const solution = view.solution()
  const currents = breakers.map((it): RelayCurrents | undefined => {
    return it.isClosed ? relayCurrents(it.feeder, solution) : undefined
  })
  const next = breakers.reduce(
    (soonest, it, i) => Math.min(soonest, nextOf(it, now, currents[i])),
    Math.min(scenario.horizon, ownStop > now ? ownStop : Infinity, nextWear(fitted, wear, solution, now)),
  )
  return {
    now: next,
    breakers: breakers.map((it, i) => advance(it, now, next, currents[i])),
    wear: wearOn(fitted, wear, solution, now, next),
  }
}

/** Neighbours that are the same circuit become one phase. */
function joined(phases: readonly LinePhase[]): readonly LinePhase[] {
  const out: LinePhase[] = []
  for (const phase of phases) {
    const last = out[out.length - 1]
    if (last !== undefined && last.view === phase.view && last.shot === phase.shot && last.isLive === phase.isLive) {
      out[out.length - 1] = { ...last, to: phase.to }
    } else if (phase.to > phase.from) out.push(phase)
  }
  return out
}

function summary(
  { scenario, fitted, key }: Situation,
  feeders: readonly ThingId[],
  own: OwnSource | undefined,
  phases: readonly LinePhase[],
  breakers: readonly Breaker[],
  wear: Wear,
): LineStory {
  const first = phases[0]
  invariant(first, 'a horizon above 0 s', scenario.horizon)
  const isLive = feeders.length > 0 || own !== undefined
  const isStopped = own === undefined || stopOf(own) <= phases[phases.length - 1]!.to
  const cleared = isLive && isStopped && breakers.every((it) => !it.isClosed && it.recloseAt === null)
  const operated = breakers.map((it) => it.operated).find((it) => it !== null)
  const solution = first.view.solution()
  return {
    kind: 'line',
    key,
    phases,
    duration: longestShot(phases, isLive),
    end: phases[phases.length - 1]!.to,
    cleared,
    clearedBy: !isLive ? 'not-live' : cleared ? (operated ?? 'nothing') : 'nothing',
    siteRise: riseOf(fitted, first.view),
    liveCurrent: Math.max(0, ...first.view.circuit.links.map((id) => magnitude(solution.current(id)))),
    feeders,
    carriers: isLive ? carriersOf(fitted, solution) : [],
    gone: [...wear.gone].sort(),
  }
}

function longestShot(phases: readonly LinePhase[], isLive: boolean): number {
  const byShot = new Map<number, number>()
  for (const phase of phases) {
    if (phase.isLive === isLive) byShot.set(phase.shot, (byShot.get(phase.shot) ?? 0) + phase.to - phase.from)
  }
  return Math.max(...byShot.values())
}

function riseOf(fitted: Fitted, view: PhaseView): number {
  const clamped = fitted.rods
    .map((rod) => rodNode(rod.item))
    .filter((node) => fitted.leads.some((lead) => lead.clamps.some((clamp) => clamp.node === node)))
  const nodes = clamped.length > 0 ? clamped : [cageNode]
  return Math.max(...nodes.map((node) => magnitude(view.voltage(node))))
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
