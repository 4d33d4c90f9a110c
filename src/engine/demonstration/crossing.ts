/**
 * Circuits that only go over or along the section: asked out, or without reclose; where the control room grants neither, kept
 * apart by taking jumpers out or by a guard. After the job everything as it was found.
 */
import type { ThingId } from '../site/scenario'
import type { Job } from './job'
import { crossingFeeders } from './things'

export function askCrossingsOut(job: Job): void {
  for (const on of crossingFeeders(job)) job.order(job.crew.pic, 'ask-feeder-out', { on })
}

/** After the reclose was asked off. */
export function keepCrossingsApart(job: Job): void {
  const { pic } = job.crew
  const { sectionJumpers = [], control } = job.scenario
  const isHeld = (feeder: ThingId): boolean =>
    hasHeard(job, feeder, 'control.feeder-out') || job.belief().paper.recloseBlocked[feeder] === true
  const open = crossingFeeders(job).filter((feeder) => !isHeld(feeder))
  if (open.length === 0) return
  for (const { id: on } of sectionJumpers)
    job.order(pic, 'ask-jumpers-out', { on, values: { message: 'jumpers-out-tied-back' } })
  if (sectionJumpers.some(({ id }) => hasHeard(job, id, 'control.jumpers-tied-back'))) return
  if (control.guardsCrossing !== undefined) for (const on of open) job.order(pic, 'ask-crossing-guard', { on })
}

/** Once the permit is back. */
export function giveCrossingsBack(job: Job): void {
  const { pic } = job.crew
  for (const on of crossingFeeders(job)) {
    if (hasHeard(job, on, 'control.feeder-out')) job.order(pic, 'ask-feeder-in', { on })
  }
  for (const { id: on } of job.scenario.sectionJumpers ?? []) {
    if (hasHeard(job, on, 'control.jumpers-tied-back')) job.order(pic, 'ask-jumpers-in', { on })
  }
}

const hasHeard = (job: Job, of: ThingId, says: string): boolean =>
  job.belief().evidence.some((it) => it.of === of && it.says === says)
