/**
 * What has been solved, kept for as long as the caller likes: a run re-graded after one change solves only what changed.
 * Answers do not depend on what was asked before; a full cache only costs memory.
 */
import type { Factored, Unsolvable } from '../physics/network'
import type { Scenario } from '../site/scenario'
import type { BodyAnswer } from './bodies/bodyAnswer'
import { groundKey, groundOf, type Ground } from './circuit/electrodes'
import type { Fitted } from './circuit/fitted'
import type { FactoredStore } from './circuit/phaseView'
import type { LineStory } from './lineStory'
import type { StateAnswer } from './stateAnswer'

export interface SweepCache {
  readonly grounds: Map<string, Ground>
  readonly lines: Map<string, LineStory | Unsolvable>
  readonly answers: Map<string, readonly (BodyAnswer | Unsolvable)[]>
  readonly factored: FactoredStore
  readonly states: Map<string, StateAnswer>
  /** Short names for long keys. */
  shortName(long: string): string
  /** The same for scenarios that no current can tell apart. */
  scenarioName(scenario: Scenario): string
}

const factoredKept = 32

export function createSweepCache(): SweepCache {
  const names = new Map<string, string>()
  const shortName = (long: string): string => {
    const known = names.get(long)
    if (known !== undefined) return known
    const name = names.size.toString(36)
    names.set(long, name)
    return name
  }
  const nameByScenario = new WeakMap<Scenario, string>()
  return {
    grounds: new Map(),
    lines: new Map(),
    answers: new Map(),
    factored: latestFactored(factoredKept),
    states: new Map(),
    shortName,
    scenarioName: (scenario) => {
      const known = nameByScenario.get(scenario)
      if (known !== undefined) return known
      const name = shortName(physicalKey(scenario))
      nameByScenario.set(scenario, name)
      return name
    },
  }
}

export function cachedGround(cache: SweepCache, scenario: Scenario, fitted: Fitted): Ground {
  const key = cache.shortName(groundKey(scenario, fitted))
  const known = cache.grounds.get(key)
  if (known !== undefined) return known
  const ground = groundOf(scenario, fitted)
  cache.grounds.set(key, ground)
  return ground
}

/** Everything of a scenario that reaches a current; names, words and the crew do not. */
function physicalKey(scenario: Scenario): string {
  const { frequency, soil, pole, conductors, section, feeders, lv, stay, switches, livenings } = scenario
  const { publicApproach, horizon, body, contact, ranges } = scenario
  const network = { frequency, soil, pole, conductors, section, feeders, lv, stay, switches, livenings }
  return JSON.stringify({ ...network, publicApproach, horizon, body, contact, ranges })
}

/** The least recently used goes first. */
function latestFactored(most: number): FactoredStore {
  const kept = new Map<string, Factored>()
  return {
    get: (key) => {
      const value = kept.get(key)
      if (value === undefined) return undefined
      kept.delete(key)
      kept.set(key, value)
      return value
    },
    set: (key, value) => {
      kept.delete(key)
      kept.set(key, value)
      if (kept.size > most) kept.delete(kept.keys().next().value!)
    },
  }
}
