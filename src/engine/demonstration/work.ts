/** Declaring safe, and the work itself. */
import { item, kit } from './ask'
import { toRope } from './ground'
import type { Job } from './job'
import { workOf } from './things'

export function declareSafe(job: Job): void {
  const { pic } = job.crew
  if (job.belief().paper.safeToWork) return
  job.order(pic, 'check-from-ground', { with: kit(job, 'binoculars') })
  job.order(pic, 'read-weather')
  job.wait()
  job.order(pic, 'declare-safe')
  job.wait()
}

/** The conductor is untied, the insulator changed, the conductor tied in again; the old one comes down. */
export function work(job: Job): void {
  const { pw } = job.crew
  const { conductor: on, part } = workOf(job)
  const isTied = (): boolean => job.belief().marks[`untied:${on}`] === undefined
  if (!job.hasDone('swap-insulator', { on })) {
    if (isTied()) job.order(pw, 'untie', { on })
    job.order(pw, 'swap-insulator', { with: kit(job, part), on })
  }
  tieIn(job)
}

/** No conductor is left loose, and what came out of the line comes down. */
export function tieIn(job: Job): void {
  const { pw } = job.crew
  const { conductor, old } = workOf(job)
  if (job.belief().marks[`untied:${conductor}`] !== undefined) job.order(pw, 'retie', { on: conductor })
  if (item(job, old).where.kind === 'aloft') {
    toRope(job)
    job.order(pw, 'lower', { on: old })
  }
  job.wait()
}

export function confirmComplete(job: Job): void {
  if (job.belief().paper.workDone) return
  job.order(job.crew.pic, 'confirm-complete')
  job.wait()
}
