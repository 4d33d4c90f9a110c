/** Declaring safe, and the work itself. */
import { item, kit } from './ask'
import type { Job } from './job'

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
  const on = job.scenario.work.conductor
  const isTied = (): boolean => job.belief().marks[`untied:${on}`] === undefined
  if (job.belief().insulator !== 'replaced') {
    if (isTied()) job.order(pw, 'untie', { on })
    job.order(pw, 'swap-insulator', { with: kit(job, 'part'), on })
  }
  if (!isTied()) job.order(pw, 'retie', { on })
  if (item(job, job.scenario.work.old).where.kind === 'aloft') job.order(pw, 'lower', { on: job.scenario.work.old })
  job.wait()
}

export function confirmComplete(job: Job): void {
  if (job.belief().paper.workDone) return
  job.order(job.crew.pic, 'confirm-complete')
  job.wait()
}
