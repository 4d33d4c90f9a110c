/** Orders in, clock on, taking back: everything that moves the open job. */
import { type Order, type Value, extendTimeline, judgeRun, pauseAt } from '../../engine'
import { type Held, advance, moveClock, requireHeld, takeBackTo } from './held'
import { type Doing, type Notice, jobStore } from './jobStore'
import { requirePack } from '../storage/library'
import { perceived } from './perceived'
import { saveJob } from './saveJob'

/** An order before it has a person and a second. */
export interface Draft {
  readonly do: string
  readonly with?: string
  readonly on?: string
  readonly values: Readonly<Record<string, Value>>
}

let pencilTimer: ReturnType<typeof setTimeout> | undefined

/** How long an act stands as a pencil line, milliseconds. */
const pencilLasts = 1000

/** Gives one draft to each person at the present second. Who cannot is named in `notices`; their order is not kept. */
export function give(draft: Draft, people: readonly string[]): boolean {
  const { head, isOver } = jobStore.getState()
  if (head?.isShowing || (isOver && head?.purpose === 'assess')) return false
  const notices: Notice[] = []
  let last: Doing | null = null
  for (const who of people) {
    const held = requireHeld()
    const order: Order = { at: held.now, who, ...draft }
    const timeline = extendTimeline(held.timeline, order)
    const entry = timeline.entries.at(-1)!
    // What is broken off later was begun: only what could not begin is no order.
    if (entry.outcome === 'refused' && entry.end === entry.start) {
      if (entry.refusal) notices.push({ who, ...entry.refusal })
      continue
    }
    advance({ ...held, timeline })
    last = {
      index: entry.index,
      who,
      act: order.do,
      thing: order.on ?? null,
      item: order.with ?? null,
      start: entry.start,
      end: entry.end,
    }
  }
  show({ notices, pencil: last })
  clearTimeout(pencilTimer)
  if (last) pencilTimer = setTimeout(() => jobStore.setState({ pencil: null }), pencilLasts)
  return last !== null
}

/** Takes back the act that still stands in pencil. It stays in the run, as withdrawn. */
export function withdraw(): void {
  const { pencil } = jobStore.getState()
  if (!pencil) return
  const held = requireHeld()
  const order: Order = { at: held.now, who: pencil.who, do: 'withdraw', values: { index: pencil.index } }
  const timeline = extendTimeline(held.timeline, order)
  if (timeline.entries.at(-1)?.outcome === 'refused') return
  advance({ ...held, timeline })
  clearTimeout(pencilTimer)
  show({ pencil: null, notices: [] })
}

/** To the next end of an act, message or event. False when nothing is going on. */
export function goOn(): boolean {
  if (jobStore.getState().head?.isShowing) return false
  const held = requireHeld()
  const next = pauseAt(held.timeline, held.now)
  if (next === undefined || next <= held.now) return false
  moveClock(next)
  clearTimeout(pencilTimer)
  show({ pencil: null, notices: [], event: eventAt(requireHeld()) })
  stopIfCritical()
  return true
}

/** The clock runs until the person is free, or something happens that stops everybody. */
export function goOnUntilFree(people: readonly string[]): boolean {
  const before = jobStore.getState().event
  for (let i = 0; i < 200; i++) {
    const { busy, event } = jobStore.getState()
    if (event !== null && before === null) return false
    if (!busy.some((doing) => people.includes(doing.who))) return true
    if (!goOn()) return false
  }
  return false
}

/** Something came alive up to this second, and nobody has been told what to do about it. */
function eventAt(held: Held) {
  const { event } = jobStore.getState()
  const struck = held.timeline.struck
  if (event || !struck || struck.at > held.now) return event
  const isOld = answeredEvents.has(struck.at)
  return isOld ? null : { at: struck.at, answered: [] }
}

const answeredEvents = new Set<number>()

export function answerEvent(name: string): void {
  const { event } = jobStore.getState()
  if (event && !event.answered.includes(name))
    jobStore.setState({ event: { ...event, answered: [...event.answered, name] } })
}

export function closeEvent(): void {
  const { event } = jobStore.getState()
  if (event) answeredEvents.add(event.at)
  show({ event: null })
}

/** A new job, or one opened again, starts with nothing answered but what lies behind it. */
export function forgetEvents(upTo: number): void {
  answeredEvents.clear()
  const struck = requireHeld().timeline.struck
  if (struck && struck.at < upTo) answeredEvents.add(struck.at)
}

export function undo(): void {
  const { ordered } = jobStore.getState()
  backTo(ordered - 1)
}

export function backTo(ordered: number): void {
  const { head } = jobStore.getState()
  if (head?.isShowing || !takeBackTo(ordered)) return
  const held = requireHeld()
  forgetEvents(held.now)
  show({
    pencil: null,
    notices: [],
    event: eventAt(held),
    isOver: false,
    ...(head?.shown !== undefined && { head: { ...head, shown: Math.min(head.shown, ordered) } }),
    checkpoints: jobStore.getState().checkpoints.filter((it) => it.ordered <= ordered),
  })
}

export function markCheckpoint(label: string): void {
  const { checkpoints, now, ordered } = jobStore.getState()
  show({ checkpoints: [...checkpoints, { label, at: now, ordered }] })
}

export function finish(): void {
  show({ isOver: true })
}

/** A pack may end a scored run at a critical finding; nothing says why before the release. */
function stopIfCritical(): void {
  const { head, isOver } = jobStore.getState()
  if (head?.purpose !== 'assess' || isOver) return
  const pack = requirePack(head.pack)
  if (pack.onCritical !== 'stop') return
  if (judgeRun(requireHeld().timeline, pack, { sweep: false }).gates.criticals > 0) finish()
}

/** Brings the store up to the truth as perceived, and keeps the run. */
export function show(change: Partial<ReturnType<typeof jobStore.getState>>): void {
  jobStore.setState({ ...perceived(requireHeld()), ...change })
  saveJob()
}
