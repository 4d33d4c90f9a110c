/**
 * `grade <scenario> <run…> [--pack <pack>] [--no-sweep] [--json]`: the result of each run. A table in words, or one
 * `earths-on/result` a line. Exit 0 only when every run passes; one that was
 * shown, all of it or its beginning, is nobody's pass.
 */
import { Gathered, issueLine, UnusableInput } from './input'
import type { Job, Judged } from './judge'
import { judgeAll } from './judgeAll'
import { cleanRunPlace, loadPack, loadRun, loadScenario, packPlace, runPlaces } from './load'
import { gradeTable } from './gradeTable'
import { readUsage } from './usage'
import { speakerOf } from './words'

const usage = 'grade <scenario> <run…> [--pack <pack>] [--no-sweep] [--json]'

export async function grade(parameters: readonly string[]): Promise<number> {
  const { options, places } = readUsage(
    usage,
    parameters,
    { json: { type: 'boolean' }, 'no-sweep': { type: 'boolean' }, pack: { type: 'string' } },
    2,
  )
  const jobs = readJobs(places, options.pack, options['no-sweep'] !== true)
  const answers = await judgeAll(jobs)
  const judged = jobs.map((job, i) => requireJudged(job, answers[i]))
  const shown = jobs.map(({ run }) => (run.run.shown ?? 0) > 0)
  const speaker = speakerOf(jobs[0]?.scenario.folder)
  const lines = options.json ? judged.map((it) => it.file) : gradeTable(judged, shown, speaker)
  for (const line of lines) console.log(line)
  return judged.every((it, i) => it.result.outcome === 'pass' && !shown[i]) ? 0 : 1
}

function requireJudged({ run }: Job, judged: Judged | undefined): Judged {
  if (judged) return judged
  throw new UnusableInput([
    issueLine(run.place, {
      path: '$.startsAt',
      found: run.run.startsAt,
      allowed: 'a part that runs/clean.json reaches',
    }),
  ])
}

/** Everything is read before anything is graded. */
export function readJobs(
  [place = '', ...runs]: readonly string[],
  pack: string | undefined,
  sweep: boolean,
): readonly Job[] {
  const gathered = new Gathered()
  const scenario = loadScenario(place, gathered)
  const loaded = runPlaces(runs).map((run) => loadRun(run, scenario, gathered))
  const cleanPlace =
    scenario && loaded.some((it) => it && it.run.startsAt !== 'beginning') ? cleanRunPlace(scenario) : undefined
  const clean = cleanPlace === undefined ? undefined : loadRun(cleanPlace, scenario, gathered)
  const packs = new Map<string, ReturnType<typeof loadPack>>()
  const jobs: Job[] = []
  for (const run of loaded) {
    if (scenario === undefined || run === undefined) continue
    const from = pack ?? packPlace(scenario, run.run.pack)
    if (!packs.has(from)) packs.set(from, loadPack(from, gathered))
    const used = packs.get(from)
    if (used) jobs.push({ scenario, pack: used, run, clean, sweep })
  }
  gathered.settle()
  return jobs
}
