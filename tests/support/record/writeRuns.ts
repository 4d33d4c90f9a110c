/**
 * Records runs anew: plays them, grades them, writes the files, prints what a person should look over.
 * `npm run record -- [scenario/]run …`: only those; a scenario's name alone: all of it; `--orders-only` leaves the grading out.
 */
import { mkdirSync, writeFileSync } from 'node:fs'
import { actions, demonstrate, drawScenario, engineVersion, judgeRun, type Timeline } from '../../../src/engine'
import { digestOf } from '../../../src/files/digest'
import { readRun } from '../../../src/files/run/read'
import type { Run } from '../../../src/files/run/run'
import { writeRun } from '../../../src/files/run/write'
import { coverageTable } from '../coverage'
import { expectationOf, summaryOf } from './expectation'
import type { RecordedRun } from './recordedRun'
import { runsOf } from './runs'
import { packOf, packText, scenarioBase, scenarioText } from './shelf'

const folder = new URL('../../../scenarios/', import.meta.url)
const wanted = process.argv.slice(2).filter((it) => !it.startsWith('--'))
const isGraded = !process.argv.includes('--orders-only')

const isWanted = (slug: string, name: string): boolean =>
  wanted.length === 0 || [slug, name, `${slug}/${name}`].some((it) => wanted.includes(it))

writeFileSync(new URL('marrow-bend/coverage.md', folder), coverageTable())
for (const [slug, runs] of Object.entries(runsOf)) {
  for (const run of runs) if (isWanted(slug, run.name)) write(slug, run)
}

function write(
  slug: string,
  { name, seed, purpose = 'practise', about, conduct, pack: packId, worksBy = packId }: RecordedRun,
): void {
  const base = scenarioBase(slug)
  const pack = packOf(packId)
  const { timeline, orders } = demonstrate(drawScenario(base, seed, purpose), packOf(worksBy), conduct?.())
  const result = isGraded ? judgeRun(timeline, pack, { sweep: true }) : undefined
  const run: Run = {
    scenario: base.id,
    scenarioDigest: digestOf(JSON.parse(scenarioText(slug))),
    pack: packId,
    packDigest: digestOf(JSON.parse(packText(packId))),
    engine: engineVersion,
    seed,
    purpose,
    startsAt: 'beginning',
    orders,
    ...(result && { expect: expectationOf(result) }),
  }
  const text = writeRun(run, actions)
  const again = readRun(text, actions, base)
  if (!again.ok) throw new Error(`${name}: ${JSON.stringify(again.issues.slice(0, 5))}`)
  mkdirSync(new URL(`${slug}/runs/`, folder), { recursive: true })
  writeFileSync(new URL(`${slug}/runs/${name}.json`, folder), text)
  console.log(`\n${slug}/${name}: ${about}`)
  console.log(outline(timeline))
  if (result) console.log(summaryOf(result))
}

function outline({ entries, end, struck }: Timeline): string {
  const refused = entries.filter((it) => it.outcome === 'refused').map((it) => `${it.refusal?.code} at ${it.start} s`)
  const event = struck ? `; ${struck.livening} strikes at ${struck.at} s` : ''
  return `  ${entries.length} orders, ${end.time} s${event}${refused.length > 0 ? `; not done: ${refused.join(', ')}` : ''}`
}
