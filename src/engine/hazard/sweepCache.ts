/**
 * What has been solved, kept for as long as the caller likes: a run re-graded after one change solves only what changed.
 * Answers do not depend on what was asked before or thrown out.
 */
import type { Factored, Unsolvable } from '../physics/network'
import type { Body } from '../site/contact'
import type { Scenario } from '../site/scenario'
import type { Site } from '../site/site'
import type { BodyAnswer } from './bodies/bodyAnswer'
import { touchingBody, type TouchingBody } from './bodies/touch'
import { groundKey, groundOf } from './circuit/electrodes'
import type { Ground } from './circuit/ground'
import type { Fitted } from './circuit/fitted'
import type { FactoredStore } from './circuit/phaseView'
import type { LineStory } from './lineStory'
import type { StateAnswer } from './stateAnswer'

export interface SweepCache {
  readonly grounds: Kept<Ground>
  readonly lines: Kept<LineStory | Unsolvable>
  readonly answers: Kept<readonly (BodyAnswer | Unsolvable)[]>
  readonly states: Kept<StateAnswer>
  readonly factored: FactoredStore
  /** A body's contacts as the circuit meets them, with a short name for all that they depend on. */
  touching(site: Site, scenario: Scenario, body: Body): NamedBody
  /** Short names for long keys. */
  shortName(long: string): string
  /** The same for scenarios that no current can tell apart. */
  scenarioName(scenario: Scenario): string
}

export interface NamedBody {
  readonly touching: TouchingBody
  readonly name: string
}

export interface Kept<T> {
  get(key: string): T | undefined
  set(key: string, value: T): void
  readonly size: number
}

/** About 300 MB when all is full: a factored circuit holds some 40 kB, a line some 20 kB, a state some 10 kB. */
const most = { factored: 500, grounds: 500, lines: 4_000, answers: 60_000, states: 8_000 }

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
  const touchingBySite = new WeakMap<Site, Map<Body, Map<Scenario, NamedBody>>>()
  return {
    grounds: keepLatest(most.grounds),
    lines: keepLatest(most.lines),
    answers: keepLatest(most.answers),
    states: keepLatest(most.states),
    factored: latestFactored(most.factored),
    shortName,
    touching: (site, scenario, body) => {
      const byScenario = inner(inner(touchingBySite, site), body)
      const known = byScenario.get(scenario)
      if (known !== undefined) return known
      const touching = touchingBody(site, scenario, body)
      const named = { touching, name: shortName(JSON.stringify(touching)) }
      byScenario.set(scenario, named)
      return named
    },
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

/** The map within a map, made when it is not there. */
function inner<K, A, B>(outer: { get(key: K): Map<A, B> | undefined; set(key: K, value: Map<A, B>): unknown }, key: K) {
  const known = outer.get(key)
  if (known !== undefined) return known
  const made = new Map<A, B>()
  outer.set(key, made)
  return made
}

/** What no current depends on. Whatever else a scenario has, or comes to have, tells one from another. */
const told: ReadonlySet<string> = new Set<keyof Scenario>([
  ...(['id', 'seed', 'purpose', 'startsAt', 'date', 'crew', 'items', 'hazards'] as const),
  ...(['triggers', 'visible', 'work', 'control'] as const),
])

function physicalKey(scenario: Scenario): string {
  return JSON.stringify(Object.entries(scenario).filter(([name]) => !told.has(name)))
}

function latestFactored(most: number): FactoredStore {
  const kept = keepLatest<Factored>(most)
  const indexes = new Map<string, ReadonlyMap<string, number>>()
  return {
    get: kept.get,
    set: kept.set,
    indexOf: (nodes) => {
      const name = nodes.join(' ')
      const index = indexes.get(name) ?? new Map(nodes.map((node, i) => [node, i]))
      indexes.set(name, index)
      return index
    },
  }
}

/** Keeps the latest used; the least recently used goes first. */
function keepLatest<T>(most: number): Kept<T> {
  const kept = new Map<string, T>()
  const set = (key: string, value: T): void => {
    kept.delete(key)
    kept.set(key, value)
    if (kept.size > most) kept.delete(kept.keys().next().value!)
  }
  return {
    set,
    get: (key) => {
      const value = kept.get(key)
      if (value !== undefined) set(key, value)
      return value
    },
    get size() {
      return kept.size
    },
  }
}
