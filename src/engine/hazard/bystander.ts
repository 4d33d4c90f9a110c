/**
 * The public: one foot anywhere on its walk (publicWalk.ts), the other a pace further out along the steepest line,
 * without layers; judged by the prospective voltage of the pace. And a hand on whatever conducts within reach of there
 * (touchable.ts), judged by the prospective voltage of the touch.
 */
import { complex, magnitude, subtract } from '../math/complex'
import type { Complex } from '../math/complex'
import { heartEquivalent, shockZone } from '../physics/body'
import { isUnsolvable, type Unsolvable } from '../physics/network'
import type { GroundPoint } from '../site/place'
import type { Scenario } from '../site/scenario'
import type { BodyAnswer } from './bodies/bodyAnswer'
import { footSpreading, footTerminal, stanceWidth } from './bodies/feet'
import { solveBody, type BodyPorts } from './bodies/solveBody'
import type { Fitted } from './circuit/fitted'
import type { PhaseView, Terminal } from './circuit/phaseView'
import { exposureShots, type Exposure, type ExposureShots } from './exposure'
import { fallAlong } from './ground/pace'
import { limitOf } from './limits'
import type { LinePhase, LineStory } from './lineStory'
import { bystanderPace } from './paths/bystanderPace'
import { bystanderTouch } from './paths/bystanderTouch'
import { isPublic, publicWalk, weigh, type WalkPoint } from './publicWalk'
import { steepestDirection } from './steepest'
import { isInReach, touchables, type Touchable } from './touchable'
import { invariant } from '../units/invariant'

/** Where feet and hand are at a stretch of the story, and what lies between them. */
export interface Found {
  readonly phase: LinePhase
  readonly feet: readonly [GroundPoint, GroundPoint]
  readonly voltage: number
  /** What a hand is on. */
  readonly thing?: Touchable
}

export function answerBystander(
  scenario: Scenario,
  line: LineStory,
  outline: readonly GroundPoint[] | null,
  fitted: Fitted,
): readonly (BodyAnswer | Unsolvable)[] {
  const phases = line.phases.filter((it) => it.isLive || line.clearedBy === 'not-live')
  const paces = phases.map((phase) => worstPace(scenario, phase, outline))
  const answers = [judge(scenario, line, paces, bystanderPace, paceOf)]
  const touches = phases.flatMap((phase) => {
    const found = worstTouch(scenario, phase, outline, fitted)
    return found ? [found] : []
  })
  if (touches.length > 0) answers.push(judge(scenario, line, touches, bystanderTouch, touchOf))
  return answers
}

/** @param width between the feet, metres */
export function worstPace(
  scenario: Scenario,
  phase: LinePhase,
  outline: readonly GroundPoint[] | null,
  width: number = stanceWidth.pace,
): Found {
  const { ground, electrodeCurrents } = phase.view
  const nowhere = { x: 0, y: 0 }
  let worst: Found = { phase, feet: [nowhere, nowhere], voltage: 0 }
  for (const near of publicWalk(scenario, ground, outline)) {
    const here = weigh(near.mutual, electrodeCurrents)
    const far = paceOutward(scenario, phase.view, near, here, outline, width)
    if (far === undefined) continue
    const voltage = magnitude(subtract(here, ground.system.potentialAt(far, electrodeCurrents)))
    if (voltage > worst.voltage) worst = { phase, feet: [near.at, far], voltage }
  }
  return worst
}

/**
 * Down the steepest line, or up it where that would step over the barrier; undefined where neither way leads to a place
 * that the public can come to.
 */
function paceOutward(
  scenario: Scenario,
  { ground, electrodeCurrents }: PhaseView,
  near: WalkPoint,
  here: Complex,
  outline: readonly GroundPoint[] | null,
  width: number,
): GroundPoint | undefined {
  const slope = { x: weigh(near.slopeX, electrodeCurrents), y: weigh(near.slopeY, electrodeCurrents) }
  const along = steepestDirection(slope)
  const falls = fallAlong(slope, here, along)
  return [falls, -falls]
    .map((sign) => ({
      x: near.at.x + sign * width * along.x,
      y: near.at.y + sign * width * along.y,
    }))
    .find((far) => isPublic(scenario, ground, outline, far))
}

/** The largest touch of anything in reach from the walk. */
function worstTouch(
  scenario: Scenario,
  phase: LinePhase,
  outline: readonly GroundPoint[] | null,
  fitted: Fitted,
): Found | undefined {
  const { view } = phase
  const things = touchables(scenario, fitted).filter((it) => view.has(it.node))
  let worst: Found | undefined
  for (const { at, mutual } of publicWalk(scenario, view.ground, outline)) {
    const here = weigh(mutual, view.electrodeCurrents)
    for (const thing of things) {
      if (!isInReach(thing, at)) continue
      const voltage = magnitude(subtract(view.voltage(thing.node), here))
      if (worst === undefined || voltage > worst.voltage) worst = { phase, feet: [at, at], voltage, thing }
    }
  }
  return worst
}

type PortsOf = (scenario: Scenario, found: Found) => BodyPorts | Unsolvable

/** A shot is judged by its highest voltage over the whole shot. */
export function judge(
  scenario: Scenario,
  line: LineStory,
  found: readonly Found[],
  path: typeof bystanderPace,
  portsOf: PortsOf,
): BodyAnswer | Unsolvable {
  let worst: { it: Found; duration: number; ratio: number } | undefined
  for (const it of found) {
    const duration = found.reduce((sum, other) => {
      return other.phase.shot === it.phase.shot ? sum + other.phase.to - other.phase.from : sum
    }, 0)
    const ratio = it.voltage / limitOf(path.limit, scenario, duration).limit
    if (worst === undefined || ratio > worst.ratio) worst = { it, duration, ratio }
  }
  if (worst === undefined || worst.it.voltage < leastVoltage) return { kind: 'body', exposure: null, ...untouched }
  const shots = exposureShots(found.filter((it) => it.voltage >= leastVoltage).map((it) => it.phase))
  const exposure = exposureOf(scenario, line, worst.it, worst.duration, shots, path, portsOf)
  return isUnsolvable(exposure) ? exposure : { kind: 'body', exposure, ...untouched }
}

/** The public wears nothing that could fail, and nobody else feels it. */
const untouched = { failedItems: [], failures: [], largestCurrent: 0 }

/** Below this nothing is reported, volt. */
const leastVoltage = 0.01

function exposureOf(
  scenario: Scenario,
  line: LineStory,
  found: Found,
  duration: number,
  shots: ExposureShots,
  path: typeof bystanderPace,
  portsOf: PortsOf,
): Exposure | Unsolvable {
  const ports = portsOf(scenario, found)
  if (isUnsolvable(ports)) return ports
  const solution = solveBody(
    ports,
    ports.limbs.map(() => []),
    scenario.body,
    'bystander',
  )
  if (isUnsolvable(solution)) return solution
  const bodyCurrent = magnitude(solution.currents[0]!)
  const shockPath = path === bystanderPace ? 'foot-foot' : 'left-hand-feet'
  const heart = heartEquivalent(bodyCurrent, shockPath)
  const { limit, beyondRange } = limitOf(path.limit, scenario, duration)
  return {
    person: 'bystander',
    path: path.id,
    shockPath,
    prospectiveVoltage: found.voltage,
    bodyVoltage: solution.bodyVoltage,
    bodyCurrent,
    heartEquivalent: heart,
    duration,
    cleared: line.cleared,
    shots,
    zone: shockZone(bodyCurrent, heart, duration),
    limit,
    judged: found.voltage,
    layer: null,
    beyondRange,
  }
}

export function paceOf(scenario: Scenario, found: Found): BodyPorts | Unsolvable {
  const { ground } = found.phase.view
  const terminals = found.feet.map((foot) => footTerminal(ground, scenario.contact.footRadius, foot))
  const spreading = footSpreading(scenario)
  return portsBetween(found.phase.view, ['left-foot', 'right-foot'], terminals, (i, j) => {
    return i === j ? spreading.self : spreading.pair(stanceWidth.pace)
  })
}

/** One hand on the thing, both feet beside each other on the spot: 0.75 of the body from hand to hand. */
export function touchOf(scenario: Scenario, found: Found): BodyPorts | Unsolvable {
  const { view } = found.phase
  const { thing } = found
  invariant(thing, 'a thing that is touched', found.voltage)
  const foot = footTerminal(view.ground, scenario.contact.footRadius, found.feet[0])
  const spreading = footSpreading(scenario)
  const terminals: readonly Terminal[] = [{ kind: 'node', node: thing.node }, foot, foot]
  return portsBetween(view, ['left-hand', 'left-foot', 'right-foot'], terminals, (i, j) => {
    if (i === 0 || j === 0) return i === j ? thing.series : 0
    if (foot.kind === 'node') return 0
    return i === j ? spreading.self : spreading.pair(stanceWidth.standing)
  })
}

function portsBetween(
  view: PhaseView,
  limbs: BodyPorts['limbs'],
  terminals: readonly Terminal[],
  direct: (i: number, j: number) => number,
): BodyPorts | Unsolvable {
  const transfer: Complex[][] = []
  for (const [i, seen] of terminals.entries()) {
    const row: Complex[] = []
    for (const [j, driven] of terminals.entries()) {
      const through = view.transfer(seen, driven)
      if (isUnsolvable(through)) return through
      row.push({ re: through.re + complex(direct(i, j)).re, im: through.im })
    }
    transfer.push(row)
  }
  return { limbs, open: terminals.map((it) => view.openVoltage(it)), transfer }
}
