/**
 * `expose <scenario> <run> --at 12|340s [--json]`: the circuit's answer at one instant of a run, for the supply as it is
 * set and for every livening: per person and path. `12` is the twelfth action, when it begins; `340s` a job second.
 */
import {
  declaredCorner,
  isUnsolvable,
  liven,
  type Exposure,
  type Moment,
  type StoryAnswer,
  type Timeline,
} from '../engine'
import { amperes, seconds, volts } from '../text'
import { readJobs } from './grade'
import { UnusableInput } from './input'
import { timelineOf } from './judge'
import { readUsage } from './usage'

const usage = 'expose <scenario> <run> --at 12|340s [--json]'

export function expose(parameters: readonly string[]): number {
  const { options, places } = readUsage(usage, parameters, { json: { type: 'boolean' }, at: { type: 'string' } }, 2)
  const [job, ...others] = readJobs(places, undefined, false)
  const timeline = job && timelineOf(job)
  if (timeline === undefined || others.length > 0) throw new UnusableInput(['one run is needed', `usage: ${usage}`])
  const at = secondOf(timeline, options.at)
  const moment = momentAt(timeline, at)
  const ids = ['none', ...timeline.scenario.livenings.map((it) => it.id)]
  const answers = ids.map((id) => liven(moment, id, declaredCorner))
  if (options.json) console.log(JSON.stringify({ atS: at, answers }))
  else for (const line of answers.flatMap(linesOf)) console.log(line)
  return answers.some(isUnsolvable) ? 1 : 0
}

function secondOf(timeline: Timeline, at: string | undefined): number {
  const isSecond = /^\d+s$/.test(at ?? '')
  const entry = timeline.entries[Number(at) - 1]
  if (at !== undefined && (isSecond || entry)) return isSecond ? Number(at.slice(0, -1)) : entry!.start
  throw new UnusableInput([
    `--at: found ${at ?? 'nothing'}; allowed: 1 to ${timeline.entries.length}, or a job second like 340s`,
  ])
}

/** The stretch that holds the second; after the last one, the last. */
function momentAt(timeline: Timeline, at: number): Moment {
  const { moments } = timeline
  const found = moments.find((it) => it.from <= at && at < it.to) ?? moments.at(-1)
  if (found === undefined) throw new UnusableInput(['the run has no moment'])
  return found
}

function linesOf(answer: StoryAnswer): readonly string[] {
  if (isUnsolvable(answer)) return [`${answer.livening}: cannot be solved, ${answer.node} ${answer.reason}`]
  const { livening, siteRise, liveCurrent, duration, clearedBy, exposures } = answer
  const head = `${livening}: site rise ${volts(siteRise)}, ${amperes(liveCurrent)}, ${seconds(duration)}, cleared by ${clearedBy}`
  return [head, ...exposures.map(exposureLine)]
}

function exposureLine(it: Exposure): string {
  const layer = it.layer ? `, ${it.layer.item} ${it.layer.did} ${volts(it.layer.voltage)}` : ''
  return `  ${it.person}, ${it.path}: ${volts(it.prospectiveVoltage)} before, ${amperes(it.bodyCurrent)}, ${seconds(it.duration)}, ${it.zone}${layer}`
}
