/**
 * The whole job, from the sheet in the hand to the last signature, by the rules of a pack: what an apprentice is shown, and
 * proof that the job can be done. Every part looks at what is there and does what is left to do, so that a job that was
 * broken off is taken up again where it was.
 */
import type { Order } from '../actions/action'
import type { Pack } from '../rules/finding'
import type { Scenario } from '../site/scenario'
import type { OpenTimeline } from '../timeline/fold'
import { climbToLowVoltage, earthLine, guardLowVoltage } from './aloft'
import { coverAndBond } from './bond'
import { setUpTruck } from './bucket'
import { brief } from './brief'
import { BrokenOff, type Why } from './brokenOff'
import { takeOutGear } from './gear'
import { earthEnd, prepareGround } from './ground'
import { helpHurt, hurtOf } from './casualty'
import { closeUp, handBack } from './handBack'
import { isolate, takePermit } from './isolation'
import { openJob, type Conduct, type Job } from './job'
import { moveToNextPole } from './nextPole'
import { takeDown } from './removal'
import { renew, respond, suspectsOf } from './response'
import { handOver } from './shift'
import { isThundering } from './thunder'
import { awaitQuiet, shelter } from './weather'
import { confirmComplete, declareSafe, work } from './work'

export interface Demonstration {
  readonly timeline: OpenTimeline
  readonly orders: readonly Order[]
  /** Why the work was declined and everything handed back; null: it was done. */
  readonly declined: { readonly why: Why; readonly about: string } | null
}

/** @throws InvariantError when the world refuses what the demonstration orders: then it does not know the trade */
export function demonstrate(scenario: Scenario, pack: Pack, conduct: Conduct = {}): Demonstration {
  const job = openJob(scenario, pack, conduct)
  const declined = carryOut(job)
  const timeline = job.timeline()
  return { timeline, orders: timeline.entries.map(({ order }) => order), declined }
}

/** From the start, and again from where it was broken off, until the last signature is given. */
function carryOut(job: Job): Demonstration['declined'] {
  let declined: Demonstration['declined'] = null
  let isLivened = false
  let isThunder = false
  let suspects: readonly string[] = []
  for (;;) {
    job.at.isWorkOn = false
    try {
      if (isLivened) {
        isLivened = false
        const hurt = hurtOf(job)
        if (hurt.length > 0) {
          helpHurt(job)
          return { why: 'casualty', about: hurt.join(' ') }
        }
        suspects = suspectsOf(job)
        respond(job)
        if (declined === null && !job.belief().paper.workDone) {
          if (isThunder || isThundering(job.belief())) shelter(job)
          isThunder = false
          renew(job, suspects)
        }
      }
      if (isThunder && declined === null) shelter(job)
      isThunder = false
      if (declined === null) doTheWork(job)
      else if (!job.belief().paper.stopped) job.order(job.crew.pic, 'stop-job')
      finish(job, suspects)
      return declined
    } catch (broken) {
      if (!(broken instanceof BrokenOff)) throw broken
      if (broken.why === 'livening') isLivened = true
      else if (broken.why === 'thunder') isThunder = true
      else declined = { why: broken.why, about: broken.about }
      job.wait()
    }
  }
}

function doTheWork(job: Job): void {
  const { paper } = job.belief()
  if (paper.permit === 'none') {
    brief(job)
    takeOutGear(job)
    isolate(job)
    takePermit(job)
  }
  if (paper.workDone) return
  handOver(job)
  awaitQuiet(job)
  job.at.isWorkOn = true
  if (job.at.pole === undefined) workOnePole(job)
  if (moveToNextPole(job)) workOnePole(job)
  confirmComplete(job)
  job.at.isWorkOn = false
}

/** Earthed, covered, bonded, declared safe, and worked on. */
function workOnePole(job: Job): void {
  setUpTruck(job)
  prepareGround(job)
  earthEnd(job)
  climbToLowVoltage(job)
  guardLowVoltage(job)
  earthLine(job)
  coverAndBond(job)
  declareSafe(job)
  work(job)
}

function finish(job: Job, suspects: readonly string[]): void {
  if (job.belief().paper.permit === 'held') takeDown(job)
  handBack(job, suspects)
  closeUp(job)
}
