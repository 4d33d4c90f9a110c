/**
 * Feelers: what a livening does to somebody who stands at any point of the ground. A pace from there in its worst
 * direction, or a hand on whatever conducts within reach with both feet on the spot. Nothing is worn, so nothing holds;
 * 50 kg, as for the public (bystander.ts), and judged like it by the prospective voltage. Or two hands on any two things,
 * and nothing else: judged by the current through the body, as the crew is.
 */
import { magnitude, subtract, type Complex } from '../math/complex'
import { PI, cos, sin } from '../math/portable'
import { isUnsolvable, type Unsolvable } from '../physics/network'
import type { GroundPoint } from '../site/place'
import type { Scenario } from '../site/scenario'
import type { Surface } from '../site/contact'
import { invariant } from '../units/invariant'
import { answerBody } from './bodies/answerBody'
import { stanceWidth } from './bodies/feet'
import { touchingBody } from './bodies/touch'
import { judge, paceOf, touchOf, type Found } from './bystander'
import type { PhaseView } from './circuit/phaseView'
import type { Corner } from './corner'
import type { Exposure } from './exposure'
import { findHandhold } from './handhold'
import type { LinePhase, LineStory } from './lineStory'
import { fittedOnce, lineOf, scenarioInCorner, type LiveMoment } from './liven'
import { bystanderPace } from './paths/bystanderPace'
import { bystanderTouch } from './paths/bystanderTouch'
import { createSweepCache, type SweepCache } from './sweepCache'
import { isInReach, touchables } from './touchable'

export type Feelers =
  /** The foot from which the pace is taken, or both feet. */
  | { readonly kind: 'pace' | 'touch'; readonly at: GroundPoint }
  /** Two of `handholds`. */
  | { readonly kind: 'hands'; readonly on: readonly [string, string] }

/** Directions of a pace that are tried, a turn in all: a slope that lies between two is missed by 0.1 % at most. */
const directions = 72

/** Null when there is nothing to lay a hand on, or nothing worth a number flows. @throws on a thing that is no handhold */
export function feel(
  moment: LiveMoment,
  livening: string,
  corner: Corner,
  feelers: Feelers,
  cache: SweepCache = createSweepCache(),
): Exposure | null | Unsolvable {
  const { site } = moment
  const line = lineOf(site, livening, corner, cache)
  if (isUnsolvable(line)) return line
  const scenario = scenarioInCorner(site.scenario, corner)
  if (feelers.kind === 'hands') return betweenHands(moment, scenario, line, feelers.on)
  const things = touchables(scenario, fittedOnce(site)).filter((it) => isInReach(it, feelers.at))
  const phases = line.phases.filter((it) => it.isLive || line.clearedBy === 'not-live')
  const isPace = feelers.kind === 'pace'
  const found = isPace
    ? phases.map((phase) => worstPaceFrom(phase, feelers.at))
    : phases.flatMap((phase) =>
        things
          .filter((thing) => phase.view.has(thing.node))
          .map((thing): Found => {
            const between = subtract(phase.view.voltage(thing.node), potentialAt(phase.view, feelers.at))
            return { phase, feet: [feelers.at, feelers.at], voltage: magnitude(between), thing }
          }),
      )
  const answer = isPace
    ? judge(scenario, line, found, bystanderPace, paceOf)
    : judge(scenario, line, found, bystanderTouch, touchOf)
  return isUnsolvable(answer) ? answer : answer.exposure
}

function betweenHands(
  { site }: LiveMoment,
  scenario: Scenario,
  line: LineStory,
  on: readonly [string, string],
): Exposure | null | Unsolvable {
  const [left, right] = on.map((name): Surface => {
    const found = findHandhold(site, name)
    invariant(found, 'a thing that a hand can be laid on', name)
    return found
  })
  const contacts = [
    { limb: 'left-hand', on: left!, through: [] },
    { limb: 'right-hand', on: right!, through: [] },
  ] as const
  const answer = answerBody(scenario, line, touchingBody(site, scenario, { person: 'feelers', contacts }))
  return isUnsolvable(answer) ? answer : answer.exposure
}

function worstPaceFrom(phase: LinePhase, at: GroundPoint): Found {
  const here = potentialAt(phase.view, at)
  let worst: Found = { phase, feet: [at, at], voltage: 0 }
  for (let i = 0; i < directions; i += 1) {
    const turn = (2 * PI * i) / directions
    const far = { x: at.x + stanceWidth.pace * cos(turn), y: at.y + stanceWidth.pace * sin(turn) }
    const voltage = magnitude(subtract(here, potentialAt(phase.view, far)))
    if (voltage > worst.voltage) worst = { phase, feet: [at, far], voltage }
  }
  return worst
}

const potentialAt = ({ ground, electrodeCurrents }: PhaseView, at: GroundPoint): Complex =>
  ground.system.potentialAt(at, electrodeCurrents)
