/** `tsx tests/soak/soakScenario.ts <scenario> <first> <last> [pack]`: one JSON line for each seed. A process of its own for each. */
import { createSweepCache } from '../../src/engine'
import { packOf, scenarioBase } from '../support/record/shelf'
import { usualPack } from '../support/record/usualPack'
import { soakSeed } from './soakSeed'

const [slug = '', first = '1', last = '1', pack = usualPack(slug)] = process.argv.slice(2)
const base = scenarioBase(slug)
const cache = createSweepCache()
for (let seed = Number(first); seed <= Number(last); seed++) {
  process.stdout.write(`${JSON.stringify(soakSeed(base, packOf(pack), seed, cache))}\n`)
}
