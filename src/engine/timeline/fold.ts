/**
 * Lays a run out in time. One fold, used live and in replay: extending a timeline by an order gives the same bits as
 * running the whole list again. Ends are applied before starts at the same second; the visible livening strikes at the
 * beginning of the first moment that meets its trigger.
 */
import { actions } from '../actions/registry'
import { checkOrder } from '../actions/checkOrder'
import { refuse } from '../actions/refuse'
import type { Order } from '../actions/action'
import { heardWeather } from './heardWeather'
import { bodiesAt } from '../site/bodies'
import { startSite } from '../site/startSite'
import type { Scenario } from '../site/scenario'
import type { Site } from '../site/site'
import { invariant } from '../units/invariant'
import { afterStrike, findFallback, isDue, nothingYet, strikeNow, type Events, type Strike } from './strike'
import type { Entry, Moment, Timeline } from './timeline'

/** Everything needed to go on from the second of the last order. */
export interface Resume {
  readonly clock: number
  readonly site: Site
  readonly entries: readonly Entry[]
  readonly running: readonly number[]
  readonly moments: readonly Moment[]
  readonly events: Events
  readonly prepared?: Timeline
}

export interface OpenTimeline extends Timeline {
  readonly resume: Resume
}

/** @param prepared the run that led to the opening site, where it is not the place's own beginning */
export function openTimeline(
  scenario: Scenario,
  opening: Site = startSite(scenario),
  prepared?: Timeline,
): OpenTimeline {
  const nothing = { entries: [], running: [], moments: [], events: nothingYet }
  const resume = { clock: opening.time, site: opening, ...nothing, ...(prepared && { prepared }) }
  return finished(resume, scenario)
}

/** @throws InvariantError when the order lies before the clock: orders come in order of time. */
export function extendTimeline(timeline: OpenTimeline, order: Order): OpenTimeline {
  const { resume, scenario } = timeline
  return finished(take(ownCopy(resume), order), scenario)
}

export function runTimeline(
  scenario: Scenario,
  orders: readonly Order[],
  opening?: Site,
  prepared?: Timeline,
): OpenTimeline {
  const { resume } = openTimeline(scenario, opening, prepared)
  return finished(orders.reduce(take, ownCopy(resume)), scenario)
}

/** A fold under way: its lists are nobody else's, and grow in place. */
interface Folding extends Resume {
  readonly entries: Entry[]
  readonly moments: Moment[]
}

function ownCopy(resume: Resume): Folding {
  return { ...resume, entries: [...resume.entries], moments: [...resume.moments] }
}

/** Lets time pass up to an order, and begins it. @throws InvariantError when it lies before the clock */
function take(from: Folding, order: Order): Folding {
  invariant(Number.isInteger(order.at) && order.at >= from.clock, `a whole second from ${from.clock}`, order.at)
  const now = advance(from, order.at)
  return order.do === 'withdraw' ? withdraw(now, order) : start(now, order)
}

/** Starts the act of an order, or refuses it. */
function start(now: Folding, order: Order): Folding {
  const index = now.entries.length
  const isBusy = now.running.some((it) => now.entries[it]?.order.who === order.who)
  const refusal = isBusy ? refuse(order, 'busy', { person: order.who }) : checkOrder(now.site, order)
  const common = { index, order, start: order.at, before: now.site, after: now.site }
  if (refusal) {
    now.entries.push({ ...common, outcome: 'refused', refusal, end: order.at })
    return now
  }
  const seconds = requireAction(order).takes(now.site, order)
  invariant(Number.isInteger(seconds) && seconds >= 1, 'an act that takes whole seconds', order.do, seconds)
  now.entries.push({ ...common, outcome: 'done', end: order.at + seconds })
  return { ...now, running: [...now.running, index] }
}

/** Takes an order back in the second in which it was given, before anybody moves. */
function withdraw(now: Folding, order: Order): Folding {
  const { index } = order.values
  const meant = typeof index === 'number' && now.running.includes(index) ? now.entries[index] : undefined
  const common = { index: now.entries.length, order, start: order.at, end: order.at, before: now.site, after: now.site }
  if (meant?.start !== order.at) {
    const refusal = refuse(order, 'too-late')
    now.entries.push({ ...common, outcome: 'refused', refusal })
    return now
  }
  now.entries[meant.index] = { ...meant, outcome: 'withdrawn', end: order.at, after: meant.before }
  now.entries.push({ ...common, outcome: 'done' })
  return { ...now, running: now.running.filter((it) => it !== meant.index) }
}

/** Lets time pass up to a second; what ends at that second has ended. */
function advance(from: Folding, to: number): Folding {
  let now = from
  while (now.clock < to) now = passOneMoment(now, to)
  return now
}

/** One moment passes, at the longest to a second; then, in this order: the strike takes its effect, acts end. */
function passOneMoment(now: Folding, to: number): Folding {
  const acts = now.running.map((index) => now.entries[index]!)
  const open = momentNow(now, to)
  const events = isDue(now.events, open, acts) ? strikeNow(now.events, open, now.moments.length) : now.events
  const clock = nextChange(now, events, to)
  now.moments.push({ ...open, to: clock })
  const passed: Folding = { ...now, clock, site: heardWeather({ ...now.site, time: clock }), events }
  return endActs(events.striking && events.striking.at < clock ? strikeEffects(passed, events.striking) : passed)
}

/** The nearest second at which anything changes: an act ends, the livening falls due or has done its work. */
function nextChange(now: Resume, events: Events, to: number): number {
  const ends = now.running.map((index) => now.entries[index]!.end)
  const fallback = findFallback(now.site)
  const isOpen = now.site.scenario.visible !== null && !events.struck && !events.prevented
  const due = isOpen && fallback !== undefined ? [fallback] : []
  const turns = (now.site.scenario.weatherChanges ?? []).map(({ at }) => at)
  const effects = events.striking ? [events.striking.at + 1] : []
  return Math.min(to, ...[...ends, ...due, ...turns, ...effects].filter((second) => second > now.clock))
}

function momentNow(now: Resume, to: number): Moment {
  const acts = now.running.map((index) => now.entries[index]!)
  const active = acts.flatMap(({ order }) => requireAction(order).contacts?.(now.site, order) ?? [])
  const moving = acts.filter(({ order }) => requireAction(order).moves).map(({ order }) => order.who)
  const also = jointsChanged(now.site, acts)
  const moment = { from: now.clock, to, site: now.site, busy: now.running, bodies: bodiesAt(now.site, active, moving) }
  return also.length > 0 ? { ...moment, also } : moment
}

/** Every other combination of joints made and not made, while several people may be at one each. */
function jointsChanged(site: Site, acts: readonly Entry[]): readonly Site[] {
  let states: readonly Site[] = [site]
  for (const { order } of acts) {
    const { joint } = requireAction(order)
    if (joint) states = [...states, ...states.map((it) => joint(it, order)).filter((it) => !states.includes(it))]
  }
  return states.slice(1)
}

/** What the livening leaves behind; whoever was at something breaks it off. */
function strikeEffects(now: Folding, striking: Strike): Folding {
  const moment = now.moments[striking.moment]
  invariant(moment, 'the moment of the strike', striking.moment)
  const brokenOff = (entry: Entry): Entry => ({
    ...entry,
    outcome: 'refused',
    refusal: refuse(entry.order, 'interrupted'),
    end: now.clock,
    after: entry.before,
  })
  for (const index of now.running) now.entries[index] = brokenOff(now.entries[index]!)
  const site = afterStrike(now.site, moment, striking)
  return { ...now, site, running: [], events: { ...now.events, striking: null } }
}

/** Ends every act that is due, in order of their places in the run. What can no longer be done comes to nothing. */
function endActs(now: Folding): Folding {
  const due = now.running.filter((index) => now.entries[index]!.end <= now.clock)
  if (due.length === 0) return now
  let { site } = now
  const { entries } = now
  for (const index of due) {
    const entry = entries[index]!
    const refusal = checkOrder(site, entry.order)
    if (refusal) entries[index] = { ...entry, outcome: 'refused', refusal, after: entry.before }
    else {
      site = requireAction(entry.order).apply(site, entry.order)
      entries[index] = { ...entry, after: site }
    }
  }
  return { ...now, site, running: now.running.filter((index) => !due.includes(index)) }
}

/** The timeline with every act in progress carried to its end, and the state of rest that follows as last moment. */
function finished(resume: Resume, scenario: Scenario): OpenTimeline {
  const last = Math.max(resume.clock, ...resume.running.map((index) => resume.entries[index]!.end))
  const rest = advance(ownCopy(resume), last)
  const { entries, moments } = rest
  moments.push(momentNow(rest, rest.clock))
  const { struck, prevented } = rest.events
  const { prepared } = resume
  return { scenario, entries, moments, end: rest.site, struck, prevented, resume, ...(prepared && { prepared }) }
}

function requireAction(order: Order) {
  const action = actions.get(order.do)
  invariant(action, 'an action', order.do)
  return action
}
