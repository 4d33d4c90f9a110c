/** A run as the rules read it: the acts that were done, in order of their start, with the questions asked most often. */
import type { Entry, Timeline } from '../../timeline/timeline'
import type { ItemId, PersonId, Role } from '../../site/scenario'
import type { Pack } from '../finding'
import { namedSets } from './each'

export interface RunView {
  readonly timeline: Timeline
  readonly pack: Pack
  /** Acts carried to their end, by start and then by place in the list. Refused and withdrawn orders change nothing. */
  readonly done: readonly Entry[]
  /** Those and the acts that a livening broke off: they were going on, though they left nothing behind. */
  readonly begun: readonly Entry[]
  /** `begun` by act: most questions are about a few acts of a long run. */
  readonly begunByAct: ReadonlyMap<string, readonly Entry[]>
  readonly typeByItem: ReadonlyMap<ItemId, string>
  readonly roleByPerson: ReadonlyMap<PersonId, Role>
  /** Sets that have been asked for, by name. */
  readonly members: Map<string, ReadonlySet<string>>
}

export function viewRun(timeline: Timeline, pack: Pack): RunView {
  const begun = timeline.entries
    .filter((entry) => entry.order.do !== 'withdraw' && (entry.outcome === 'done' || isBrokenOff(entry)))
    .sort((a, b) => a.start - b.start || a.index - b.index)
  const { items, crew } = timeline.scenario
  return viewOf(timeline, pack, begun, {
    typeByItem: new Map(items.map(({ id, type }) => [id, type])),
    roleByPerson: new Map(crew.map(({ id, role }) => [id, role])),
    members: new Map(),
  })
}

function viewOf(
  timeline: Timeline,
  pack: Pack,
  begun: readonly Entry[],
  names: Pick<RunView, 'typeByItem' | 'roleByPerson' | 'members'>,
): RunView {
  const begunByAct = new Map<string, Entry[]>()
  for (const entry of begun) {
    const same = begunByAct.get(entry.order.do)
    if (same === undefined) begunByAct.set(entry.order.do, [entry])
    else same.push(entry)
  }
  return { timeline, pack, begun, done: begun.filter((entry) => entry.outcome === 'done'), begunByAct, ...names }
}

/** The same run as if it had ended when the line came alive: plans change then. */
export function viewUntilLivening(view: RunView): RunView {
  const { struck } = view.timeline
  return struck === null ? view : viewBetween(view, -Infinity, struck.at)
}

/** Acts and moments that begin at `from` or later and before `to`; the end of the run stays its end. */
export function viewBetween(view: RunView, from: number, to: number): RunView {
  const begun = view.begun.filter((entry) => entry.start >= from && entry.start < to)
  const moments = view.timeline.moments.filter((moment) => moment.from >= from && moment.from < to)
  const { typeByItem, roleByPerson, members } = view
  return viewOf({ ...view.timeline, moments }, view.pack, begun, { typeByItem, roleByPerson, members })
}

function isBrokenOff(entry: Entry): boolean {
  return entry.outcome === 'refused' && entry.refusal?.code.endsWith('/interrupted') === true
}

/** Members of a named set in the place of this run. */
export function membersOf(view: RunView, set: string): ReadonlySet<string> {
  const known = view.members.get(set)
  if (known !== undefined) return known
  const members = new Set(namedSets.get(set)?.members(view.timeline.scenario))
  view.members.set(set, members)
  return members
}

export function findRole(view: RunView, person: PersonId): Role | undefined {
  return view.roleByPerson.get(person)
}

export function findItemType(view: RunView, item: ItemId | undefined): string | undefined {
  return item === undefined ? undefined : view.typeByItem.get(item)
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

/** The same run as the rules would read it if one act had not been done; the sites stay as they were. */
export function viewWithout(view: RunView, left: Entry): RunView {
  const { typeByItem, roleByPerson, members } = view
  const begun = view.begun.filter(({ index }) => index !== left.index)
  return viewOf(view.timeline, view.pack, begun, { typeByItem, roleByPerson, members })
}
