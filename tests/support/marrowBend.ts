/** The shipped scenario, drawn: for every test that needs a real site. */
import { readFileSync } from 'node:fs'
import { drawScenario, type Scenario, type ScenarioBase } from '../../src/engine'
import { readScenario } from '../../src/files/scenario/read'

const file = new URL('../../scenarios/marrow-bend/scenario.json', import.meta.url)

export function marrowBendText(): string {
  return readFileSync(file, 'utf8')
}

export function marrowBendBase(): ScenarioBase {
  const read = readScenario(marrowBendText())
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 2))
  return read.value
}

export function marrowBend(seed = 1, purpose: Scenario['purpose'] = 'practise'): Scenario {
  return drawScenario(marrowBendBase(), seed, purpose)
}
