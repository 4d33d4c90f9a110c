/** Opens a job: from the start, from a prepared site, or where it was left. */
import { type OpenTimeline, type Order, engineVersion, extendTimeline } from '../../engine'
import { speakAs } from '../../text'
import { layEdition, packWordsOf } from '../storage/library'
import { beginJob } from '../storage/replayJob'
import { hold, requireHeld } from './held'
import { type JobHead, jobStore, noJob } from './jobStore'
import { forgetEvents, show } from './orders'
import { forgetJob, layAside } from './keptJob'
import { perceived } from './perceived'
import { forgetShown } from './shownStore'
import { type SavedJob, findSavedJob } from './saveJob'
import { resetView } from './viewStore'

export function openJob(head: JobHead): void {
  const timeline = beginJob(head)
  forgetShown()
  speakAs(packWordsOf(head.pack))
  hold({ scenario: timeline.scenario, timeline, now: timeline.end.time })
  jobStore.setState({ ...noJob, head, ...perceived(requireHeld()) })
  forgetEvents(0)
  resetView([firstPerson(timeline)])
  show({})
}

/** Goes on where it was left; a reload is counted, and a scored run says so. */
function resumeJob(saved: SavedJob): void {
  const steps = replay(saved.head, saved.orders)
  forgetShown()
  const last = steps.at(-1)!
  speakAs(packWordsOf(saved.head.pack))
  hold(
    { scenario: last.scenario, timeline: last, now: saved.now },
    steps.slice(0, -1).map((timeline, i) => ({ scenario: timeline.scenario, timeline, now: saved.orders[i]?.at ?? 0 })),
  )
  jobStore.setState({
    ...noJob,
    head: saved.head,
    checkpoints: saved.checkpoints,
    isOver: saved.isOver,
    reloads: saved.reloads + 1,
    ...perceived(requireHeld()),
  })
  forgetEvents(saved.event ? saved.event.at : saved.now)
  resetView([firstPerson(last)])
  show({ event: saved.event })
}

/** An imported run is opened at its end. */
export function openRun(head: JobHead, orders: readonly Order[]): void {
  const now = orders.at(-1)?.at ?? 0
  resumeJob({ engine: engineVersion, head, orders, now, checkpoints: [], event: null, isOver: false, reloads: -1 })
}

/** `aside`: what was kept cannot be gone on with. */
export function resumeSaved(): 'resumed' | 'aside' | 'nothing' {
  const saved = findSavedJob()
  if (saved) {
    try {
      resumeJob(saved)
      return 'resumed'
    } catch {
      // Kept by another version of the app: it stays with the person as an export, not as a broken page.
    }
  }
  return layAside() ? 'aside' : 'nothing'
}

export function leaveJob(): void {
  forgetShown()
  forgetJob()
  layEdition(undefined)
  speakAs(null)
  hold(null)
  jobStore.setState(noJob)
}

function replay(head: JobHead, orders: readonly Order[]): readonly OpenTimeline[] {
  const steps: OpenTimeline[] = [beginJob(head)]
  for (const order of orders) steps.push(extendTimeline(steps.at(-1)!, order))
  return steps
}

const firstPerson = (timeline: OpenTimeline): string =>
  timeline.scenario.crew.find((it) => it.role === 'person-in-charge')?.id ?? timeline.scenario.crew[0]!.id
