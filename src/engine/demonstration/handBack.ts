/** Register, heads, permit; then all that ends only when the permit is back. */
import { takeOff } from './ask'
import { giveCrossingsBack } from './crossing'
import { setAside } from './ground'
import { switchBack, undress } from './isolation'
import type { Job } from './job'

/** Still in use until the permit is back. */
const late = [
  'barrier-set',
  'boots',
  'cabinet-key',
  'carrier-bag',
  'isolation-earth',
  'lamp',
  'lock',
  'operator-mat',
  'sign-set',
  'switching-gloves',
  'tag',
]

export function handBack(job: Job, suspects: readonly string[]): void {
  const { pic } = job.crew
  setAside(job, suspects)
  bookIn(job, (type) => !late.includes(type))
  job.order(pic, 'head-count')
  job.wait()
  if (job.belief().paper.permit === 'held') {
    job.order(pic, 'return-permit', { values: { readBack: 'crew-clear earths-off gear-in' } })
    job.wait()
  }
}

/** Barrier, boots and switches. */
export function closeUp(job: Job): void {
  const { pic, pw, gw } = job.crew
  if (job.belief().barrier !== null) job.order(gw, 'take-in-barrier', { on: 'barrier' })
  job.wait()
  for (const who of [pic, pw, gw]) {
    const boots = job.kit.get(`boots-${who}`)
    if (boots !== undefined) takeOff(job, who, boots)
  }
  switchBack(job)
  job.wait()
  giveCrossingsBack(job)
  const { recloseBlocked } = job.belief().paper
  for (const { id } of job.scenario.feeders)
    if (recloseBlocked[id] === true) job.order(pic, 'ask-reclose-on', { on: id })
  undress(job)
  job.wait()
  bookIn(job, () => true)
  job.order(pic, 'close-job')
  job.wait()
}

/** In the order in which it was signed out, as the list runs. */
function bookIn(job: Job, isMeant: (type: string) => boolean): void {
  const listed = job.timeline().entries.flatMap(({ order }) => (order.do === 'book-out' ? (order.on ?? []) : []))
  for (const on of new Set(listed)) {
    if (isAtTarp(job, on, isMeant)) job.order(job.crew.gw, 'book-in', { on })
  }
  job.wait()
}

function isAtTarp(job: Job, id: string, isMeant: (type: string) => boolean): boolean {
  const { items, hauled, persons } = job.belief()
  const it = items.find((each) => each.id === id)
  if (!it || !it.bookedOut || it.bookedIn || !isMeant(it.type) || hauled.includes(id)) return false
  const { where } = it
  if (where.kind === 'person') {
    const holder = persons.find((each) => each.id === where.person)
    return holder?.holds.includes(id) === true && holder.place.kind !== 'switch'
  }
  return where.kind === 'tarp' || where.kind === 'truck' || where.kind === 'quarantine' || it.type === 'sign-set'
}
