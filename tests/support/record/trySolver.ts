/**
 * `npx tsx tests/support/record/trySolver.ts <scenario> [seed or first-last] [pack] [--no-sweep] [--orders]`: the job as
 * the demonstration does it, graded: what a scenario's author looks at first.
 */
import { createSweepCache, demonstrate, drawScenario, judgeRun, type Order } from '../../../src/engine'
import { summaryOf } from './expectation'
import { packOf, scenarioBase } from './shelf'

const [slug = 'marrow-bend', seeds = '2', pack = 'concrete-rod'] = process.argv
  .slice(2)
  .filter((it) => !it.startsWith('--'))
const has = (flag: string): boolean => process.argv.includes(flag)
const cache = createSweepCache()
const [first = 1, last = first] = seeds.split('-').map(Number)

for (let seed = first; seed <= last; seed++) trySeed(seed)

function trySeed(seed: number): void {
  const purpose = has('--assess') ? 'assess' : 'practise'
  const scenario = drawScenario(scenarioBase(slug), seed, purpose)
  console.log(`${slug}, seed ${seed}, ${pack}`)
  try {
    const { timeline, orders, declined } = demonstrate(scenario, packOf(pack))
    if (has('--orders')) console.log(orders.map(lineOf).join('\n'))
    const struck = timeline.struck ? `; ${timeline.struck.livening} strikes at ${timeline.struck.at} s` : ''
    const ending = declined ? `declined: ${declined.why} ${declined.about}` : 'done'
    console.log(`  ${ending}; ${orders.length} orders, ${timeline.end.time} s${struck}`)
    const began = Date.now()
    console.log(summaryOf(judgeRun(timeline, packOf(pack), { sweep: !has('--no-sweep'), cache })))
    console.log(`  graded in ${Date.now() - began} ms`)
  } catch (error) {
    console.log(`  stuck: ${error instanceof Error ? error.message : String(error)}`)
    process.exitCode = 1
  }
}

function lineOf({ at, who, do: act, with: item = '', on = '', values }: Order): string {
  return `  ${at} ${who} ${act} ${item} ${on} ${Object.keys(values).length > 0 ? JSON.stringify(values) : ''}`
}
