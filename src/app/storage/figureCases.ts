/**
 * Cases against which the physics is checked, from published standards and handbooks: every third of them is tried in
 * the browser, in order of id, so that the third is the same for everybody.
 */
import { readQualification } from '../../files/qualification/readQualification'
import type { FindScenarioText, QualificationCase } from '../../reports/qualification'

const texts = import.meta.glob<string>('../../../tests/qualification/**/*.json', { query: '?raw', import: 'default' })
const scenarioTexts = import.meta.glob<string>(
  ['../../../scenarios/*/scenario.json', '../../../scenarios/*/runs/clean.json'],
  { query: '?raw', import: 'default' },
)
const scenarios = '../../../scenarios/'

export interface FigureCases {
  readonly third: readonly QualificationCase[]
  /** How many there are in all. */
  readonly all: number
  /** The shipped scenarios and their clean runs, which cases of whole sites stand on. */
  readonly findScenarioText: FindScenarioText
}

/** @throws when a file of the build cannot be loaded or read */
export async function loadFigureCases(): Promise<FigureCases> {
  const files = await Promise.all(Object.values(texts).map((load) => load()))
  const cases = files.flatMap((text) => {
    const read = readQualification(text)
    if (!read.ok) throw new Error(read.issues.map((it) => `${it.path} ${it.found}`).join('; '))
    return read.value.cases
  })
  const inOrder = [...cases].sort((a, b) => (a.id < b.id ? -1 : 1))
  const third = inOrder.filter((_, i) => i % 3 === 0)
  return { third, all: inOrder.length, findScenarioText: await scenarioFinder(third) }
}

/** Loads only what the cases name. */
async function scenarioFinder(cases: readonly QualificationCase[]): Promise<FindScenarioText> {
  const named = new Set(cases.map(({ inputs }) => inputs.scenario))
  const wanted = Object.entries(scenarioTexts).filter(([path]) => named.has(path.slice(scenarios.length).split('/')[0]))
  const loaded = await Promise.all(
    wanted.map(async ([path, load]) => [path.slice(scenarios.length), await load()] as const),
  )
  const byPlace = new Map(loaded)
  return (place) => byPlace.get(place)
}
