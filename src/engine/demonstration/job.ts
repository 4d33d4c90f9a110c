/**
 * A job in hand: orders are given one by one, each at the first second in which the person is free, and after each the
 * crew knows what it has perceived. A part of the job asks this and nothing else.
 */
import type { Order, Value } from '../actions/action'
import type { Belief } from '../site/belief'
import { believe } from '../site/believe'
import type { ItemId, PersonId, Role, Scenario, ThingId } from '../site/scenario'
import type { PoleName } from '../site/nextPole'
import { findInCharge, isHere } from '../site/presence'
import type { Site } from '../site/site'
import type { Pack } from '../rules/finding'
import { extendTimeline, openTimeline, type OpenTimeline } from '../timeline/fold'
import type { Entry } from '../timeline/timeline'
import { invariant } from '../units/invariant'
import { BrokenOff } from './brokenOff'
import { layOut, movedAlong, type Layout } from './layout'
import { practiceOf, type Practice } from './practice'
import { isThundering } from './thunder'

/** An order that has no second yet. */
export interface Intent {
  readonly who: PersonId
  readonly do: string
  readonly with?: ItemId
  readonly on?: ThingId
  readonly values?: Readonly<Record<string, Value>>
}

/** Something that a careful crew acts upon. */
export type Doubt = 'blade' | 'indication' | 'defect' | 'loose-clamp'

/** How this crew differs from one that does everything right; left out: in nothing. */
export interface Conduct {
  /** What is ordered in place of an intent; undefined: the intent itself; nothing: it is left out. */
  readonly deviate?: (intent: Intent, job: Job) => readonly Intent[] | undefined
  /** False: what was perceived is not acted upon. */
  readonly heeds?: (doubt: Doubt, thing: string) => boolean
  /** Items that are reached for before others of their kind. */
  readonly reachesFor?: readonly ItemId[]
}

/** Who is in charge, works on the pole, on the ground, at the switches. */
export interface Crew {
  readonly pic: PersonId
  readonly pw: PersonId
  readonly gw: PersonId
  readonly so: PersonId
}

export interface Job {
  readonly scenario: Scenario
  readonly practice: Practice
  readonly layout: Layout
  /** The pole that is worked on, the second from which it is, and whether everybody is at it: thunder ends that. */
  readonly at: { pole: PoleName | undefined; since: number; isWorkOn: boolean }
  readonly conduct: Conduct
  readonly crew: Crew
  /** Everybody who is there now, the four first. */
  readonly everybody: readonly PersonId[]
  /** What was passed for each need of the job, by the name of the need. */
  readonly kit: Map<string, ItemId>
  belief(): Belief
  /** For what stands there and does not change; what is hidden of it is none of the crew's business. */
  site(): Site
  timeline(): OpenTimeline
  /** Ordered when the person is free. @throws BrokenOff when the line comes alive */
  order(who: PersonId, act: string, details?: Omit<Intent, 'who' | 'do'>): void
  /** Time passes until these people, or all, are free. */
  wait(...who: readonly PersonId[]): void
  /** Nothing is ordered for so many seconds. */
  rest(seconds: number): void
  /** An act that was carried to its end. */
  hasDone(act: string, of?: { readonly who?: PersonId; readonly on?: ThingId; readonly since?: number }): boolean
  heeds(doubt: Doubt, thing: string): boolean
}

export function openJob(scenario: Scenario, pack: Pack, conduct: Conduct): Job {
  let timeline = openTimeline(scenario)
  let clock = timeline.resume.clock
  let isStruck = false
  const crew = crewOf(scenario)
  const practice = practiceOf(pack, scenario.pole)
  const at: Job['at'] = { pole: undefined, since: -1, isWorkOn: false }
  const places = layOut(timeline.end, practice)
  const nextPlaces = movedAlong(places, practice, scenario.nextPole?.along ?? 0)

  const freeAt = (who: PersonId): number =>
    timeline.entries
      .filter((it) => it.order.who === who && it.outcome !== 'withdrawn')
      .reduce((last, it) => Math.max(last, it.end), clock)

  const wait = (...who: readonly PersonId[]): void => {
    const all = who.length > 0 ? who : Object.keys(timeline.end.persons)
    clock = Math.max(clock, ...all.map(freeAt))
  }

  const give = ({ values = {}, ...intent }: Intent): void => {
    clock = Math.max(clock, freeAt(intent.who))
    const order: Order = { at: clock, ...intent, values }
    const before = timeline
    timeline = extendTimeline(timeline, order)
    if (timeline.struck && !isStruck) {
      isStruck = true
      // Nobody rests on when it has happened: the order is never given.
      if (order.at > timeline.struck.at) [timeline, clock] = [before, timeline.struck.at]
      wait()
      throw new BrokenOff('livening')
    }
    const entry = timeline.entries.at(-1)
    invariant(entry?.outcome !== 'refused', 'an order that can be carried out', toText(order), entry?.refusal?.code)
  }

  const job: Job = {
    scenario,
    practice,
    at,
    get layout() {
      return at.pole === 'next' ? nextPlaces : places
    },
    conduct,
    get crew() {
      return { ...crew, pic: findInCharge(timeline.end) ?? crew.pic }
    },
    get everybody() {
      const all = [...new Set([job.crew.pic, crew.pw, crew.gw, crew.so, ...scenario.crew.map(({ id }) => id)])]
      return all.filter((id) => isHere(timeline.end, id))
    },
    kit: new Map(),
    belief: () => believe(timeline.end),
    site: () => timeline.end,
    timeline: () => timeline,
    order(who, act, details = {}) {
      if (at.isWorkOn && isThundering(job.belief())) throw new BrokenOff('thunder')
      const intent: Intent = { who, do: act, ...details }
      for (const each of conduct.deviate?.(intent, job) ?? [intent]) give(each)
    },
    wait,
    rest(seconds) {
      wait()
      clock += seconds
    },
    hasDone: (act, of = {}) => timeline.entries.some((it) => it.outcome === 'done' && isMeant(it, act, of)),
    heeds: (doubt, thing) => conduct.heeds?.(doubt, thing) ?? true,
  }
  return job
}

const toText = ({ at, who, do: act, with: item = '-', on = '-' }: Order): string => `${at} ${who} ${act} ${item} ${on}`

function isMeant({ order, end }: Entry, act: string, of: Parameters<Job['hasDone']>[1] = {}): boolean {
  if (order.do !== act) return false
  if (of.who !== undefined && order.who !== of.who) return false
  if (of.on !== undefined && order.on !== of.on) return false
  return of.since === undefined || end > of.since
}

/** Whoever comes first in each role; where there is nobody of it, the person in charge does that too. */
function crewOf({ crew }: Scenario): Crew {
  const find = (role: Role): PersonId | undefined => crew.find((it) => it.role === role)?.id
  const pic = find('person-in-charge') ?? crew[0]?.id
  invariant(pic !== undefined, 'a crew', crew)
  return {
    pic,
    pw: find('pole-worker') ?? pic,
    gw: find('ground-worker') ?? pic,
    so: find('switching-operator') ?? pic,
  }
}
