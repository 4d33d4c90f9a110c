/** The one instant of a run that a verb is asked about: `--at 12` is the twelfth action, when it begins, `--at 340s` a job second. */
import { cornersOf, declaredCorner, type Corner, type Moment, type Timeline } from '../engine'
import { readJobs } from './grade'
import { UnusableInput } from './input'
import { timelineOf } from './judge'
import { shortName } from './load'

export interface InstantOfRun {
  readonly timeline: Timeline
  /** Name of the run's file. */
  readonly run: string
  /** Where the scenario's words lie; undefined when it came from standard input. */
  readonly folder: string | undefined
  /** Job second. */
  readonly at: number
  readonly moment: Moment
}

/** @throws UnusableInput with the usage line */
export function instantOfRun(usage: string, places: readonly string[], at: string | undefined): InstantOfRun {
  const [job, ...others] = readJobs(places, undefined, false)
  const timeline = job && timelineOf(job)
  if (timeline === undefined || others.length > 0) throw new UnusableInput(['one run is needed', `usage: ${usage}`])
  const second = secondOf(timeline, at)
  return {
    timeline,
    run: shortName(job!.run.place),
    folder: job!.scenario.folder,
    at: second,
    moment: momentAt(timeline, second),
  }
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

/** @throws UnusableInput on a livening that the scenario does not have */
export function requireLiveningId({ scenario }: Timeline, id: string | undefined): string {
  const known = ['none', ...scenario.livenings.map((it) => it.id)]
  if (id !== undefined && known.includes(id)) return id
  throw new UnusableInput([`--livening: found ${id ?? 'nothing'}; allowed: ${known.join(', ')}`])
}

/** @throws UnusableInput on a corner that the scenario does not have */
export function requireCorner({ scenario }: Timeline, id: string = declaredCorner.id): Corner {
  const corners = cornersOf(scenario)
  const found = corners.find((it) => it.id === id)
  if (found !== undefined) return found
  throw new UnusableInput([`--corner: found ${id}; allowed: ${corners.map((it) => it.id).join(', ')}`])
}

/** Seconds into the livening's own time. @throws UnusableInput */
export function readSecond(text = '0'): number {
  const value = Number(text)
  if (text.trim() !== '' && Number.isFinite(value) && value >= 0) return value
  throw new UnusableInput([`--second: found ${text}; allowed: seconds from the start of the livening, 0 or more`])
}
