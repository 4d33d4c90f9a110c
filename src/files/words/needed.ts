/** The keys that the words of a scenario or a pack must have: everything in it that is shown by name. */
import type { Pack, ScenarioBase } from '../../engine'
import type { Issue } from '../issue'
import type { WordsFile } from './read'

export function wordsOfScenario(scenario: ScenarioBase): readonly string[] {
  const {
    conductors,
    lv,
    feeders,
    switches,
    hazards,
    transformers = [],
    embedded = [],
    metalwork = [],
    grounds = [],
  } = scenario
  const neutralWires = feeders.flatMap((it) => (it.neutralWire === undefined ? [] : [it.neutralWire]))
  const things = [
    conductors,
    lv.wires,
    neutralWires,
    feeders,
    switches,
    hazards,
    transformers,
    embedded,
    metalwork,
    grounds,
  ]
    .flat()
    .map((it) => it.id)
  const blades = switches.flatMap((it) => conductors.map(({ phase }) => `${it.id}/${phase}`))
  const rods = scenario.items.filter((it) => it.type === 'earth-rod').map((it) => `rod/${it.id}`)
  return [
    ...['scenario.name', 'scenario.summary', 'scenario.order'],
    ...scenario.crew.map((it) => `person.${it.id}`),
    ...[...things, ...blades, ...rods].map((id) => `thing.${id}`),
    ...scenario.livenings.map((it) => `livening.${it.id}`),
  ]
}

export function wordsOfPack(pack: Pack): readonly string[] {
  return [
    'pack.caution',
    ...pack.elements.map((id) => `element.${id}`),
    ...pack.rules.flatMap((rule) => [rule.asks, rule.reason]),
  ]
}

export function missingWords(needed: readonly string[], { words }: WordsFile): readonly Issue[] {
  return [...new Set(needed)]
    .filter((key) => !Object.hasOwn(words, key))
    .map((key) => ({ path: `$.words[${JSON.stringify(key)}]`, found: 'nothing', allowed: 'a sentence' }))
}
