/**
 * See it done: the demonstration's orders are given to the open job one by one, so that list, log and picture show them as
 * they show any other. Nobody else orders meanwhile; whoever takes over goes on from there with a run of their own that is
 * marked as shown.
 */
import { extendTimeline, pauseAt } from '../../engine'
import { advance, moveClock, requireHeld, takeBackTo } from './held'
import { type JobHead, jobStore } from './jobStore'
import { openJob } from './openJob'
import { forgetEvents, show } from './orders'
import { type Pace, forgetShown, shownStore, workOut } from './shownStore'
import { choosePersons, chooseThing, goTo, viewStore } from './viewStore'

/** Seconds on the trainee's clock from order to order. */
const seconds: Readonly<Record<Pace, number>> = { slow: 4, steady: 1.5, fast: 0.3 }

/** Shown from the beginning, or from where the part begins that was asked for. */
export function openShown(head: JobHead): void {
  const part = head.startsAt
  const shown: JobHead = { ...head, startsAt: 'beginning', isShowing: true }
  openJob(shown)
  goTo('site')
  workOut(shown, ({ openings }) => {
    const opening = openings.find((it) => it.part === part)
    if (opening && opening.orders > 0) jumpTo(opening.orders)
    play()
  })
}

/** A page that was loaded anew goes on showing where it was. */
export function resumeShown(): void {
  const { head } = jobStore.getState()
  if (head?.isShowing) workOut(head, () => undefined)
}

let timer: ReturnType<typeof setTimeout> | undefined

function play(): void {
  clearTimeout(timer)
  shownStore.setState({ isPlaying: true })
  timer = setTimeout(playOn, seconds[shownStore.getState().pace] * 1000)
}

function hold(): void {
  clearTimeout(timer)
  shownStore.setState({ isPlaying: false })
}

export const playOrHold = (): void => (shownStore.getState().isPlaying ? hold() : play())

/** Not behind another sheet: what is missed there has to be looked for. */
function playOn(): void {
  const isSeen = jobStore.getState().head?.isShowing === true && viewStore.getState().place === 'site'
  if (isSeen && shownStore.getState().isPlaying && nextStep()) play()
  else hold()
}

/** The next order is given, at its second. False at the end. */
function nextStep(): boolean {
  const { timeline } = requireHeld()
  const { job } = shownStore.getState()
  if (!job) return false
  const isOn = giveUpTo(timeline.entries.length + 1)
  if (!isOn) runOut()
  settle()
  return isOn
}

/** By hand: it is not played on. */
export function oneOn(): void {
  hold()
  nextStep()
}

/** To where so many orders have been given. */
export function jumpTo(orders: number): void {
  const given = requireHeld().timeline.entries.length
  if (orders < given) takeBackTo(orders)
  else giveUpTo(orders)
  settle()
}

/** To the beginning of this part; from there, of the one before. */
export function backAPart(): void {
  const given = requireHeld().timeline.entries.length
  const before = shownStore.getState().job?.openings.findLast((it) => it.orders < given)
  jumpTo(before?.orders ?? 0)
}

function giveUpTo(count: number): boolean {
  const orders = shownStore.getState().job?.orders ?? []
  const from = requireHeld().timeline.entries.length
  for (const order of orders.slice(from, count)) {
    const held = requireHeld()
    advance({ ...held, timeline: extendTimeline(held.timeline, order), now: order.at })
  }
  return requireHeld().timeline.entries.length > from
}

/** After the last order: until everybody is at rest. */
function runOut(): void {
  const { timeline, now } = requireHeld()
  for (let next = pauseAt(timeline, now); next !== undefined; next = pauseAt(timeline, next)) moveClock(next)
}

/** Eyes go with who acts and what on; a livening is answered by the crew that is shown. */
function settle(): void {
  const held = requireHeld()
  forgetEvents(held.now + 1)
  show({ event: null, pencil: null, notices: [] })
  const last = held.timeline.entries.at(-1)?.order
  if (!last) return
  choosePersons([last.who])
  chooseThing(last.on ?? last.with ?? null)
}

/** From here on the trainee orders. What was shown stays marked. */
export function takeOver(): void {
  const { head } = jobStore.getState()
  if (!head) return
  const { timeline, now } = requireHeld()
  const given = timeline.entries.length
  hold()
  forgetShown()
  const { struck } = timeline
  const isOpen = struck !== null && struck.at <= now && !timeline.entries.some(({ order }) => order.at > struck.at)
  if (isOpen) forgetEvents(0)
  jobStore.setState({ head: ownHead(head, given) })
  show({ event: isOpen ? { at: struck.at, answered: [] } : null })
}

/** The same job again, from the beginning, by the trainee. */
export function doItYourself(): void {
  const { head } = jobStore.getState()
  if (!head) return
  openJob(ownHead(head, 0))
}

/** The head of a run that the trainee orders, of which so many orders were shown. */
function ownHead(head: JobHead, shown: number): JobHead {
  const { scenario, title, seed, purpose, pack, packName, startsAt, person, own } = head
  return {
    scenario,
    title,
    seed,
    purpose,
    pack,
    packName,
    startsAt,
    person,
    ...(own && { own }),
    ...(shown > 0 && { shown }),
  }
}
