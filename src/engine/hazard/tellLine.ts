/**
 * The story of a livening as the circuit lives it: solve, find the next thing to happen, advance to it, solve again.
 * Job time is whole seconds; a livening has its own seconds, each event rounded to one microsecond. It ends when every
 * source is off or cut off for good, or at the scenario's horizon with nothing having cleared it.
 */
import type { Complex } from '../math/complex'
import { isUnsolvable, type Element, type Solution, type Unsolvable } from '../physics/network'
import type { Livening, Scenario, ThingId } from '../site/scenario'
import { invariant } from '../units/invariant'
import { buildCircuit, type SiteCircuit } from './circuit/buildCircuit'
import type { Ground } from './circuit/ground'
import type { Fitted } from './circuit/fitted'
import { liveningSource } from './circuit/livening'
import { drawnAfter } from './circuit/parallel'
import { viewPhase, type PhaseView } from './circuit/phaseView'
import { feedersReaching } from './circuit/sources'
import { deviceHappenings, wearHappenings, type Happening } from './happening'
import { nextWear, unworn, wearOn, type Wear } from './leadWear'
import type { LinePhase, LineStory } from './lineStory'
import { lineSummary } from './lineSummary'
import type { CurrentOf, Device } from './protection/device'
import { devicesOf } from './protection/devicesOf'
import { solveLimited } from './protection/limited'
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

/** What makes a circuit the one it is. */
interface State {
  readonly live: readonly ThingId[]
  /** Elements that a device holds open. */
  readonly opened: readonly string[]
  readonly wear: Wear
}

interface Solved {
  readonly name: string
  readonly view: PhaseView
  /** Sources are on, but every link from them to the section is open. */
  readonly isCutOff: boolean
}

/** More events than any sequence of shots, melting pieces and burning clamps has. */
const mostEvents = 500

function tell(situation: Situation, cache: SweepCache): LineStory | Unsolvable {
  const { scenario, fitted, livening, key } = situation
  const ground = cachedGround(cache, scenario, fitted)
  const own = liveningSource(scenario, livening)
  const sources = [...feedersReaching(scenario, fitted, livening), ...(own === undefined ? [] : [own.id])]
  let devices = devicesOf(scenario, fitted, sources, own)
  let wear = unworn
  let now = 0
  let shot = 0
  let wasLive = false
  let isCleared = false
  let solved: Solved | undefined
  const phases: LinePhase[] = []
  const happenings: Happening[] = []
  for (let count = 0; now < scenario.horizon; count++) {
    invariant(count < mostEvents, 'a livening that comes to an end', key)
    const live = sources.filter((id) => !devices.some((it) => it.isOff && it.sources.includes(id)))
    isCleared = sources.length > 0 && live.length === 0 && !devices.some((it) => it.willClose)
    if (isCleared) break
    const state = { live, opened: devices.flatMap((it) => it.opened), wear }
    const found = solve(situation, ground, state, devices, cache, solved)
    if (isUnsolvable(found)) return found
    solved = found
    isCleared = found.isCutOff
    if (isCleared) break
    const isLive = live.length > 0
    if (isLive && !wasLive) shot += 1
    wasLive = isLive
    const step = stepOn(situation, devices, wear, found.view, now)
    phases.push({ from: now, to: step.now, isLive, shot, view: found.view })
    happenings.push(
      ...deviceHappenings(devices, step.devices, step.now),
      ...wearHappenings(fitted, wear.gone, step.wear.gone, step.now),
    )
    ;({ now, devices, wear } = step)
  }
  return lineSummary(situation, sources, joined(phases), devices, wear, isCleared, happenings)
}

/** A lead's resistance is taken as it is when the circuit changes, not at each relay's step. */
function solve(
  { scenario, fitted, livening, key }: Situation,
  ground: Ground,
  { live, opened, wear }: State,
  devices: readonly Device[],
  cache: SweepCache,
  before: Solved | undefined,
): Solved | Unsolvable {
  const state = JSON.stringify([live, opened, [...wear.gone].sort()])
  if (before?.name === state) return before
  const name = cache.shortName(JSON.stringify([key, state, [...wear.temperature]]))
  const whole = buildCircuit(scenario, fitted, livening, ground, live, wear)
  const circuit = withoutOpened(scenario, whole, new Set(opened))
  const limits = devices.filter((it) => !it.isOff).flatMap((it) => it.limits)
  const view = solveLimited(circuit, limits, (it) => viewPhase(it, ground, cache.factored, name))
  if (isUnsolvable(view)) return view
  const dead = new Set(devices.flatMap((it) => it.dead))
  const feeding = circuit.elements.filter((it) => circuit.links.includes(it.id) && !startsAt(it, dead))
  return { name: state, view, isCutOff: whole.links.length > 0 && feeding.length === 0 }
}

function startsAt(link: Element, nodes: ReadonlySet<string>): boolean {
  return 'from' in link && nodes.has(link.from)
}

function withoutOpened(scenario: Scenario, circuit: SiteCircuit, opened: ReadonlySet<string>): SiteCircuit {
  if (opened.size === 0) return circuit
  return {
    links: circuit.links.filter((id) => !opened.has(id)),
    elements: drawnAfter(
      scenario,
      opened,
      circuit.elements.filter((it) => !opened.has(it.id)),
    ),
  }
}

function stepOn(
  { scenario, fitted }: Situation,
  devices: readonly Device[],
  wear: Wear,
  view: PhaseView,
  now: number,
): { now: number; devices: readonly Device[]; wear: Wear } {
  const solution = view.solution()
  const currentOf = readingOf(view.circuit, solution)
  const next = devices.reduce(
    (soonest, it) => Math.min(soonest, it.next(now, currentOf)),
    Math.min(scenario.horizon, nextWear(fitted, wear, solution, scenario.frequency, now)),
  )
  return {
    now: next,
    devices: devices.map((it) => it.advance(now, next, currentOf)),
    wear: wearOn(fitted, wear, solution, scenario.frequency, now, next),
  }
}

function readingOf(circuit: SiteCircuit, solution: Solution): CurrentOf {
  const ids = new Set(
    circuit.elements.flatMap((it) => (it.kind === 'coupled' ? it.branches : [it]).map(({ id }) => id)),
  )
  return (element): Complex | undefined => (ids.has(element) ? solution.current(element) : undefined)
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
