/**
 * `check <file or folder…> [--json] [--no-sweep]`: validates scenarios, packs, runs and words. A scenario folder must
 * also pass its own recorded runs: outcome, findings and exposures as each run expects. Exit 1 when a run gives
 * something else, 2 when a file cannot be used.
 */
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { wordsOfPack, wordsOfScenario } from '../files/words/needed'
import { checkExpectation } from './checkExpectation'
import { checkWordsOf } from './checkWords'
import { folderEntries, Gathered, isFolder, readText } from './input'
import type { Job, Judged } from './judge'
import { judgeAll } from './judgeAll'
import {
  cleanRunPlace,
  loadPack,
  loadRun,
  loadScenario,
  packPlace,
  runPlaces,
  type LoadedPack,
  type LoadedRun,
  type LoadedScenario,
} from './load'
import { readFileOf } from './readFileOf'
import { readUsage } from './usage'

interface Checked {
  readonly place: string
  readonly faults: readonly string[]
}

interface Folder {
  readonly scenario: LoadedScenario
  readonly runs: readonly { readonly run: LoadedRun; readonly pack: LoadedPack }[]
  readonly clean: LoadedRun | undefined
}

export async function check(parameters: readonly string[]): Promise<number> {
  const { options, places } = readUsage(
    'check <file or folder…> [--no-sweep] [--json]',
    parameters,
    { json: { type: 'boolean' }, 'no-sweep': { type: 'boolean' } },
    1,
  )
  const gathered = new Gathered()
  const fine: string[] = []
  const folders = places.flatMap((place) => readPlace(place, gathered, fine))
  gathered.settle()
  const sweep = options['no-sweep'] !== true
  const jobs = folders.flatMap((folder) => folder.runs.map((it): Job => ({ ...folder, ...it, sweep })))
  const judged = await judgeAll(jobs)
  const checked = [
    ...fine.map((place): Checked => ({ place, faults: [] })),
    ...jobs.map((job, i) => checkRun(job, judged[i])),
  ]
  if (options.json) console.log(JSON.stringify(checked))
  else for (const line of checked.flatMap(linesOf)) console.log(line)
  return checked.every((it) => it.faults.length === 0) ? 0 : 1
}

function linesOf({ place, faults }: Checked): readonly string[] {
  return faults.length === 0 ? [`${place}: fine`] : [`${place}:`, ...faults.map((fault) => `  ${fault}`)]
}

/** What stands at a place; a folder without a known file in it stands for the folders in it. */
function readPlace(place: string, gathered: Gathered, fine: string[]): readonly Folder[] {
  if (!isFolder(place)) {
    if (gathered.take(place, () => readFileOf(readText(place)))) fine.push(place)
    return []
  }
  if (existsSync(join(place, 'scenario.json'))) return readScenarioFolder(place, gathered, fine)
  if (existsSync(join(place, 'pack.json'))) {
    const loaded = loadPack(place, gathered)
    if (loaded) fine.push(loaded.place)
    fine.push(...checkWordsOf(place, loaded ? wordsOfPack(loaded.pack) : [], gathered))
    return []
  }
  const inside = folderEntries(place)
    .map((name) => join(place, name))
    .filter((it) => isFolder(it) || it.endsWith('.json'))
  if (inside.length === 0) gathered.lines.push(`${place}: found no .json file; allowed: a folder that has some`)
  return inside.flatMap((it) => readPlace(it, gathered, fine))
}

function readScenarioFolder(place: string, gathered: Gathered, fine: string[]): readonly Folder[] {
  const scenario = loadScenario(place, gathered)
  if (scenario) fine.push(scenario.place)
  fine.push(...checkWordsOf(place, scenario ? wordsOfScenario(scenario.base) : [], gathered))
  if (scenario === undefined) return []
  const runsFolder = join(place, 'runs')
  const packs = new Map<string, LoadedPack | undefined>()
  const runs = (existsSync(runsFolder) ? runPlaces([runsFolder]) : []).flatMap((file) => {
    const run = loadRun(file, scenario, gathered)
    if (run === undefined) return []
    const from = packPlace(scenario, run.run.pack)
    if (!packs.has(from)) packs.set(from, loadPack(from, gathered))
    const pack = packs.get(from)
    return pack ? [{ run, pack }] : []
  })
  const cleanPlace = cleanRunPlace(scenario)
  const clean = runs.find(({ run }) => run.place === cleanPlace)?.run
  return [{ scenario, runs, clean }]
}

function checkRun({ scenario, pack, run, sweep }: Job, judged: Judged | undefined): Checked {
  const { expect } = run.run
  if (expect === undefined) return { place: run.place, faults: ['it does not say what it must give (expect)'] }
  const editions = [
    ...(run.run.scenarioDigest === scenario.digest ? [] : ['it was recorded on another edition of the scenario']),
    ...(run.run.packDigest === pack.digest ? [] : ['it was recorded under another edition of the pack']),
  ]
  const faults = judged
    ? checkExpectation(expect, judged.result, sweep)
    : [`the clean run never gets to ${run.run.startsAt}`]
  return { place: run.place, faults: [...editions, ...faults] }
}
