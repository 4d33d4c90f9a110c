/**
 * One livening at one moment in one corner: the circuit's story, and what it does to everybody who touches anything.
 * A livening whose cause does not stand leaves the supply as it is set.
 */
import { isUnsolvable, unsolvable, type Unsolvable } from '../physics/network'
import type { Body } from '../site/contact'
import { findRemovedCause } from '../site/liveningTraits'
import type { Livening, Scenario } from '../site/scenario'
import type { Site } from '../site/site'
import { invariant } from '../units/invariant'
import { answerBody, answerTogether } from './bodies/answerBody'
import type { BodyAnswer, PersonAnswer } from './bodies/bodyAnswer'
import { joiningLeads } from './bodies/bodyPorts'
import { answerBystander } from './bystander'
import { fittedOf, type Fitted } from './circuit/fitted'
import { isComputed } from './circuit/livening'
import { isHeldByFeeders } from './circuit/sources'
import { clampId, leadPieceId } from './circuit/nodes'
import { inCorner, type Corner } from './corner'
import type { Exposure, Story, StoryAnswer } from './exposure'
import { inTime, type Happening } from './happening'
import type { LineStory } from './lineStory'
import { livestockPaceOf } from './livestock'
import { createSweepCache, type SweepCache } from './sweepCache'
import { tellLine } from './tellLine'

/** What the hazard engine reads of a moment of the run. */
export interface LiveMoment {
  readonly site: Site
  readonly bodies: readonly Body[]
}

export function liven(moment: LiveMoment, livening: string, corner: Corner, cache = createSweepCache()): StoryAnswer {
  const line = lineOf(moment.site, livening, corner, cache)
  if (isUnsolvable(line)) return { ...line, livening, corner: corner.id }
  const exposures: Exposure[] = []
  const failedItems = new Set<string>()
  const failures: Happening[] = []
  for (const { person, answer } of answersOf(moment, line, corner, cache)) {
    if (isUnsolvable(answer)) return { ...answer, livening, corner: corner.id }
    if (answer.exposure !== null) exposures.push(answer.exposure)
    for (const item of answer.failedItems) failedItems.add(item)
    for (const { at, item } of answer.failures) failures.push({ at, what: 'layer-fails', of: item, person })
  }
  const story = storyOf(fittedOnce(moment.site), line, livening, corner, exposures, failedItems, failures)
  const livestock = livestockPaceOf(scenarioInCorner(moment.site.scenario, corner), line, moment.site.barrier)
  return livestock === undefined ? story : { ...story, livestock }
}

/** The circuit's part alone. @throws on a livening that the scenario does not have */
export function lineOf(site: Site, livening: string, corner: Corner, cache: SweepCache): LineStory | Unsolvable {
  const event = standingLivening(site, livening)
  if (event !== 'none' && !isComputed(event)) return unsolvable(event.id, 'not-computed')
  const scenario = scenarioInCorner(site.scenario, corner)
  const fitted = fittedOnce(site)
  const key = cache.shortName(
    JSON.stringify([cache.scenarioName(scenario), fitted, event === 'none' ? 'none' : event.id]),
  )
  return tellLine({ scenario, fitted, livening: event, key }, cache)
}

/** The livening if its cause stands, else `none`. */
function standingLivening(site: Site, id: string): Livening | 'none' {
  if (id === 'none') return 'none'
  const livening = site.scenario.livenings.find((it) => it.id === id)
  invariant(livening, 'a livening of the scenario', id)
  return isStanding(site, livening) ? livening : 'none'
}

/** Its cause stands, and the line is not held by a feeder that it would only run beside. */
export function isStanding(site: Site, livening: Livening): boolean {
  return findRemovedCause(site, livening) === undefined && !isHeldByFeeders(site.scenario, fittedOnce(site), livening)
}

/** Everybody's answer, crew in order of id, the public last. */
export function answersOf(
  moment: LiveMoment,
  line: LineStory,
  corner: Corner,
  cache: SweepCache,
): readonly PersonAnswer[] {
  return [...crewAnswers(moment, line, corner, cache), ...publicAnswers(moment.site, line, corner, cache)]
}

/** One for each way of being exposed. */
export function publicAnswers(site: Site, line: LineStory, corner: Corner, cache: SweepCache): readonly PersonAnswer[] {
  const scenario = scenarioInCorner(site.scenario, corner)
  const key = `${line.key} public ${cache.shortName(JSON.stringify(site.barrier))}`
  const answers = remembered(cache, key, () => answerBystander(scenario, line, site.barrier, fittedOnce(site)))
  return answers.map((answer) => ({ person: 'bystander', answer }))
}

/** Each alone; where one of them draws enough to be felt by others, or two hold one lead, all of them together. */
export function crewAnswers(
  moment: LiveMoment,
  line: LineStory,
  corner: Corner,
  cache: SweepCache,
): readonly PersonAnswer[] {
  const scenario = scenarioInCorner(moment.site.scenario, corner)
  const bodies = [...moment.bodies].sort((a, b) => (a.person < b.person ? -1 : 1))
  const named = bodies.map((body) => cache.touching(moment.site, scenario, body))
  const alone = named.flatMap(({ touching, name }) => {
    return remembered(cache, `${line.key} ${name}`, () => [answerBody(scenario, line, touching)])
  })
  const touching = named.map((it) => it.touching)
  const answers = isFelt(line, alone) || joiningLeads(touching).size > 0 ? together() : alone
  return bodies.map(({ person }, b) => ({ person, answer: answers[b]! }))

  function together(): Answers {
    return remembered(cache, `${line.key} ${named.map((it) => it.name).join('+')}`, () => {
      const found = answerTogether(scenario, line, touching)
      return isUnsolvable(found) ? bodies.map(() => found) : found
    })
  }
}

/** A body that draws less than a hundredth of the fault, or than a milliampere, moves nobody else's voltage (own choice). */
function isFelt(line: LineStory, alone: Answers): boolean {
  const least = Math.max(0.001, 0.01 * line.liveCurrent)
  return alone.length > 1 && alone.some((it) => !isUnsolvable(it) && it.largestCurrent > least)
}

type Answers = readonly (BodyAnswer | Unsolvable)[]

function remembered(cache: SweepCache, key: string, make: () => Answers): Answers {
  const known = cache.answers.get(key)
  if (known !== undefined) return known
  const made = make()
  cache.answers.set(key, made)
  return made
}

const fittedBySite = new WeakMap<Site, Fitted>()

/** Sites are immutable, so what is fitted on one is read once. */
export function fittedOnce(site: Site): Fitted {
  const known = fittedBySite.get(site)
  if (known !== undefined) return known
  const fitted = fittedOf(site)
  fittedBySite.set(site, fitted)
  return fitted
}

const inCornerByScenario = new WeakMap<Scenario, Map<string, Scenario>>()

export function scenarioInCorner(scenario: Scenario, corner: Corner): Scenario {
  let known = inCornerByScenario.get(scenario)
  if (known === undefined) inCornerByScenario.set(scenario, (known = new Map()))
  const name = JSON.stringify(corner)
  const made = known.get(name) ?? inCorner(scenario, corner)
  known.set(name, made)
  return made
}

function storyOf(
  fitted: Fitted,
  line: LineStory,
  livening: string,
  corner: Corner,
  exposures: readonly Exposure[],
  failedItems: ReadonlySet<string>,
  failures: readonly Happening[],
): Story {
  const { siteRise, liveCurrent, duration, end, clearedBy, shots } = line
  return {
    kind: 'story',
    livening,
    corner: corner.id,
    siteRise,
    liveCurrent,
    duration,
    end,
    clearedBy,
    shots,
    exposures,
    failedItems: [...failedItems].sort(),
    meltedItems: fitted.leads
      .filter((lead) => partsOf(lead).some((id) => line.gone.includes(id)))
      .map((lead) => lead.item),
    carriedBy: line.carriers,
    happenings: inTime([...line.happenings, ...failures]),
  }
}

function partsOf(lead: Fitted['leads'][number]): readonly string[] {
  const pieces = lead.pieces.map((piece) => leadPieceId(lead.item, piece.from, piece.to))
  return [...pieces, ...lead.clamps.map((clamp) => clampId(lead.item, clamp.end))]
}
