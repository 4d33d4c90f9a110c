/**
 * The work goes on at the next pole: nothing of the first place protects there. All of it comes down, the permit is widened,
 * the pole looked over, and everything is done anew around it; or it is left for another day.
 */
import { walkTo } from './ask'
import type { Job } from './job'
import { takeDown } from './removal'
import { confirmComplete } from './work'

/** @returns the work goes on there */
export function moveToNextPole(job: Job): boolean {
  if (job.scenario.nextPole?.work === undefined || job.hasDone('decline-next-pole')) return false
  if (job.at.pole === 'next') return true
  const { pic, gw } = job.crew
  const on = 'next-pole'
  if (job.practice.goesToNextPole && !job.hasDone('ask-wider-permit')) job.order(pic, 'ask-wider-permit', { on })
  if (job.belief().marks['permit-wider'] === undefined) {
    job.order(pic, 'decline-next-pole', { on })
    return false
  }
  confirmComplete(job)
  takeDown(job)
  const { along } = job.scenario.nextPole
  walkTo(job, pic, { x: along - Math.sign(along) * 4, y: 4 })
  job.order(pic, 'assess-next-pole', { on })
  if (job.belief().barrier !== null) job.order(gw, 'take-in-barrier', { on: 'barrier' })
  job.wait()
  job.at.pole = 'next'
  job.at.since = job.timeline().end.time
  walkTo(job, pic, job.layout.reading)
  job.order(pic, 'match-pole', { on: 'pole' })
  job.wait()
  return true
}
