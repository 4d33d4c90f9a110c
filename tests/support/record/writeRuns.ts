/** Records every run anew: plays its policy, grades it, writes the file, prints what a person should look over. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { actions, drawScenario, engineVersion, judgeRun, runTimeline, type Timeline } from '../../../src/engine'
import { digestOf } from '../../../src/files/digest'
import { readPack } from '../../../src/files/rulePack/read'
import type { Run } from '../../../src/files/run/run'
import { readRun } from '../../../src/files/run/read'
import { writeRun } from '../../../src/files/run/write'
import { coverageTable } from '../coverage'
import { marrowBendBase, marrowBendText } from '../marrowBend'
import { expectationOf, summaryOf } from './expectation'
import { recordedRuns, type RecordedRun } from './runs'

const folder = new URL('../../../scenarios/marrow-bend/runs/', import.meta.url)
const usualPack = 'concrete-rod'
const packTextOf = (id: string): string =>
  readFileSync(new URL(`../../../scenarios/packs/${id}/pack.json`, import.meta.url), 'utf8')

const wanted = process.argv.slice(2).filter((it) => !it.startsWith('--'))
const isGraded = !process.argv.includes('--orders-only')

mkdirSync(folder, { recursive: true })
writeFileSync(new URL('../coverage.md', folder), coverageTable())
for (const each of recordedRuns) if (wanted.length === 0 || wanted.includes(each.name)) write(each)

function write({ name, seed, about, play, pack: packId = usualPack }: RecordedRun): void {
  const packText = packTextOf(packId)
  const base = marrowBendBase()
  const scenario = drawScenario(base, seed, 'practise')
  const orders = play(scenario).orders()
  const timeline = runTimeline(scenario, orders)
  const read = readPack(packText)
  if (!read.ok) throw new Error(JSON.stringify(read.issues))
  const result = isGraded ? judgeRun(timeline, read.value, { sweep: true }) : undefined
  const run: Run = {
    scenario: base.id,
    scenarioDigest: digestOf(JSON.parse(marrowBendText())),
    pack: packId,
    packDigest: digestOf(JSON.parse(packText)),
    engine: engineVersion,
    seed,
    purpose: 'practise',
    startsAt: 'beginning',
    orders,
    ...(result && { expect: expectationOf(result) }),
  }
  const text = writeRun(run, actions)
  const again = readRun(text, actions, base)
  if (!again.ok) throw new Error(`${name}: ${JSON.stringify(again.issues.slice(0, 5))}`)
  writeFileSync(new URL(`${name}.json`, folder), text)
  console.log(`\n${name}: ${about}`)
  console.log(outline(timeline))
  if (result) console.log(summaryOf(result))
}

function outline({ entries, end, struck }: Timeline): string {
  const refused = entries.filter((it) => it.outcome === 'refused').map((it) => `${it.refusal?.code} at ${it.start} s`)
  const event = struck ? `; ${struck.livening} strikes at ${struck.at} s` : ''
  return `  ${entries.length} orders, ${end.time} s${event}${refused.length > 0 ? `; not done: ${refused.join(', ')}` : ''}`
}
