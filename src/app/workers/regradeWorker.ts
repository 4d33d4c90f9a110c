/**
 * Grades recorded runs under two editions of a scenario or a pack: first what happened, at once for all of them, then what
 * could have, a run at a time. What was solved for a place is kept while it stays the same: a pack changes no current.
 */
import {
  type OpenTimeline,
  type Pack,
  type Result,
  type ScenarioBase,
  type WorstExposure,
  actions,
  createSweepCache,
  drawScenario,
  extendTimeline,
  judgeRun,
  openTimeline,
  openingAt,
} from '../../engine'
import type { Issue } from '../../files/issue'
import { readPack } from '../../files/rulePack/read'
import { readRun } from '../../files/run/read'
import { readScenario } from '../../files/scenario/read'
import { shippedTexts } from '../storage/library'
import type { Edition, RegradeAnswer, RegradeQuestion, RunAnswer } from './regrade'
import { sweepInSteps } from './sweepInSteps'

type Cache = ReturnType<typeof createSweepCache>

/** A run on an edition, ready to be judged. */
interface Played {
  readonly timeline: OpenTimeline
  readonly pack: Pack
  readonly cache: Cache
}

/** Of the question that is being worked on: a later one ends it. */
let latest = -1

self.onmessage = ({ data }: MessageEvent<RegradeQuestion>) => {
  latest = data.number
  if (Object.keys(data.runs).length > 0) void work(data)
}

async function work(question: RegradeQuestion): Promise<void> {
  const isWanted = () => latest === question.number
  const answer = (it: RegradeAnswer): void => {
    if (isWanted()) self.postMessage({ ...it, number: question.number })
  }
  try {
    await regrade(question, isWanted, answer)
  } catch (error) {
    answer({ tell: 'failed', reason: error instanceof Error ? error.message : String(error) })
  }
}

async function regrade(
  { runs, before, now, isQuick = false }: RegradeQuestion,
  isWanted: () => boolean,
  answer: (it: RegradeAnswer) => void,
): Promise<void> {
  const names = Object.keys(runs).sort()
  keepCachesOf([before.scenario, now.scenario])
  const played = new Map<string, readonly [Played | readonly Issue[], Played | readonly Issue[]]>()
  const tell = (name: string, isSwept: boolean): void => {
    const [was, is] = played.get(name)!
    answer({ tell: 'run', run: { name, before: judged(was, isSwept), now: judged(is, isSwept) } })
  }
  for (const name of names) {
    const text = runs[name] ?? ''
    played.set(name, [play(text, before, runs.clean), play(text, now, runs.clean)])
    tell(name, false)
    await new Promise((resume) => setTimeout(resume))
    if (!isWanted()) return
  }
  let done = 0
  for (const name of isQuick ? [] : names) {
    for (const it of played.get(name)!) {
      const part = done
      const onProgress = (step: { done: number; total: number }): void =>
        answer({ tell: 'progress', done: part + step.done / step.total, total: names.length * 2 })
      if ('timeline' in it && !(await sweepInSteps(it.timeline, it.cache, { isWanted, onProgress }))) return
      done++
    }
    tell(name, true)
  }
  answer({ tell: 'done' })
}

const caches = new Map<string, Cache>()

function keepCachesOf(texts: readonly string[]): void {
  for (const text of [...caches.keys()]) if (!texts.includes(text)) caches.delete(text)
  for (const text of texts) if (!caches.has(text)) caches.set(text, createSweepCache())
}

function play(text: string, edition: Edition, clean: string | undefined): Played | readonly Issue[] {
  const base = readScenario(edition.scenario)
  if (!base.ok) return base.issues
  // A draft may have an id of its own.
  const run = readRun(JSON.stringify({ ...(JSON.parse(text) as object), scenario: base.value.id }), actions, base.value)
  if (!run.ok) return run.issues
  const pack = readPack(edition.pack ?? shippedTexts('pack', run.value.pack)[0])
  if (!pack.ok) return pack.issues
  const timeline = timelineOf(base.value, run.value, clean)
  if (!timeline)
    return [{ path: '$.startsAt', found: run.value.startsAt, allowed: 'a part that the clean run gets to' }]
  return { timeline, pack: pack.value, cache: caches.get(edition.scenario)! }
}

type Run = Extract<ReturnType<typeof readRun>, { ok: true }>['value']

function timelineOf(base: ScenarioBase, { seed, purpose, startsAt, orders }: Run, clean: string | undefined) {
  const drawn = drawScenario(base, seed, purpose)
  if (startsAt === 'beginning') return orders.reduce(extendTimeline, openTimeline(drawn))
  const preparing = readRun(clean ?? '', actions, base)
  const opening = preparing.ok ? openingAt(drawn, preparing.value.orders, startsAt) : undefined
  return opening && orders.reduce(extendTimeline, openTimeline(drawn, opening.site, opening.prepared))
}

function judged(it: Played | readonly Issue[], sweep: boolean): RunAnswer {
  if (!('timeline' in it)) return { issues: it }
  const result = judgeRun(it.timeline, it.pack, { sweep, cache: it.cache })
  return {
    outcome: result.outcome,
    rules: result.findings.map(({ rule }) => rule),
    isSwept: sweep,
    worst: worstOf(result),
    refused: it.timeline.entries.filter((entry) => entry.outcome === 'refused').length,
  }
}

/** The furthest over its limit, or nearest to it, of everything that could have reached anybody. */
function worstOf({ sweep }: Result): WorstExposure | null {
  const over = (it: WorstExposure): number => Math.max(...Object.values(it.ratios))
  return sweep.reduce<WorstExposure | null>((worst, it) => (worst && over(worst) >= over(it) ? worst : it), null)
}
