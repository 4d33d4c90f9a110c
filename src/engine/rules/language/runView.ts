/** A run as the rules read it: the acts that were done, in order of their start, with the questions asked most often. */
import type { Entry, Timeline } from '../../timeline/timeline'
import type { ItemId, PersonId, Role } from '../../site/scenario'
import type { Pack } from '../finding'

export interface RunView {
  readonly timeline: Timeline
  readonly pack: Pack
  /** Acts carried to their end, by start and then by place in the list. Refused and withdrawn orders change nothing. */
  readonly done: readonly Entry[]
  /** Those and the acts that a livening broke off: they were going on, though they left nothing behind. */
  readonly begun: readonly Entry[]
}

export function viewRun(timeline: Timeline, pack: Pack): RunView {
  const begun = timeline.entries
    .filter((entry) => entry.order.do !== 'withdraw' && (entry.outcome === 'done' || isBrokenOff(entry)))
    .sort((a, b) => a.start - b.start || a.index - b.index)
  return { timeline, pack, begun, done: begun.filter((entry) => entry.outcome === 'done') }
}

/** The same run as if it had ended when the line came alive: plans change then. */
export function viewUntilLivening(view: RunView): RunView {
  const { struck } = view.timeline
  if (struck === null) return view
  const early = (entry: Entry): boolean => entry.start < struck.at
  const moments = view.timeline.moments.filter((moment) => moment.from < struck.at)
  return {
    ...view,
    timeline: { ...view.timeline, moments },
    begun: view.begun.filter(early),
    done: view.done.filter(early),
  }
}

export function isBrokenOff(entry: Entry): boolean {
  return entry.outcome === 'refused' && entry.refusal?.code.endsWith('/interrupted') === true
}

export function findRole(view: RunView, person: PersonId): Role | undefined {
  return view.timeline.scenario.crew.find((member) => member.id === person)?.role
}

export function findItemType(view: RunView, item: ItemId | undefined): string | undefined {
  if (item === undefined) return undefined
  return view.timeline.scenario.items.find((candidate) => candidate.id === item)?.type
}

/** The piece of gear that an act is about: the one in the hand, else the one it is done to. */
export function findItemOf(view: RunView, entry: Entry): ItemId | undefined {
  const { with: held, on } = entry.order
  if (findItemType(view, held) !== undefined) return held
  return findItemType(view, on) === undefined ? undefined : on
}

/** Second at which the run ends: the last act's end, or the last moment's. */
export function endOf(view: RunView): number {
  return view.timeline.end.time
}

/** `earlier` was finished when `later` began. */
export function isBefore(earlier: Entry, later: Entry): boolean {
  return earlier.end <= later.start && earlier.index !== later.index
}
