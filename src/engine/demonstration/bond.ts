/** Covering the pole and bonding its metal to the earthed line, and both undone. */
import { isWorn, kit, lookAgain } from './ask'
import { changeGloves, sendUp, tug } from './aloft'
import { coverEdges } from './fits'
import { climbTo } from './goingUp'
import { seatTurns } from './ground'
import type { Job } from './job'
import { here, isCovering, workOf } from './things'

const isRubberAsked = (job: Job): boolean => job.practice.bondGloves === 'lv-gloves'

export function coverAndBond(job: Job): void {
  const { pw } = job.crew
  climbTo(job, 'above-lv')
  sendUp(job, 'leather-gloves', ...(isCovering(job) ? ['cover'] : []), 'bond', workOf(job).part)
  if (!isBonded(job)) changeGloves(job, isRubberAsked(job) ? 'rubber' : 'leather')
  if (isCovering(job) && job.belief().cover === null) {
    job.order(pw, 'fit-cover', { with: kit(job, 'cover'), values: coverEdges(job) })
    job.order(pw, 'look', { on: 'cover' })
  }
  if (!isBonded(job)) {
    lookAgain(job, kit(job, 'bond'))
    bondOn(job)
  }
  const on = workOf(job).conductor
  if (!job.hasDone('tug', { on, since: lastDone(job, 'bond-line') })) tug(job, on)
  if (!job.hasDone('dress-leads', { since: lastDone(job, 'bond-line', 'clamp') })) job.order(pw, 'dress-leads')
  changeGloves(job, 'leather')
  job.wait()
}

const isBonded = (job: Job): boolean => ends(job).length === 2

/** One end of it at least. */
export const isBondOn = (job: Job): boolean => ends(job).length > 0

const ends = (job: Job): readonly string[] =>
  job
    .belief()
    .clamps.filter((it) => it.lead === kit(job, 'bond'))
    .map(({ end }) => end)

/** Metal first, the line last: a bond in the hand is on nothing that could come alive. */
function bondOn(job: Job): void {
  const { pw } = job.crew
  const [bond, on] = [kit(job, 'bond'), workOf(job).conductor]
  const isSeatBright = job.belief().conductors.some((it) => it.id === on && it.isBrushed)
  if (!isSeatBright) job.order(pw, 'brush', { with: kit(job, 'brush'), on })
  if (!ends(job).includes('metal')) {
    job.order(pw, 'bond-metal', { with: bond, on: here(job, 'arm'), values: { turns: seatTurns } })
  }
  job.order(pw, 'bond-line', { with: bond, on, values: { turns: seatTurns } })
}

/** When the last of these acts was over: thunder may have come between it and what follows. */
function lastDone(job: Job, ...acts: readonly string[]): number {
  const { entries } = job.timeline()
  return entries.findLast(({ order, outcome }) => outcome === 'done' && acts.includes(order.do))?.end ?? -1
}

/** The line first, the metal last. */
export function bondOff(job: Job): void {
  const { pw } = job.crew
  const bond = kit(job, 'bond')
  if (isBondOn(job)) changeGloves(job, isRubberAsked(job) ? 'rubber' : gloveNow(job))
  if (ends(job).includes('line')) {
    job.order(pw, 'unbond-line', { with: bond, on: workOf(job).conductor })
  }
  if (ends(job).includes('metal')) job.order(pw, 'unbond-metal', { with: bond, on: here(job, 'arm') })
}

const gloveNow = (job: Job): 'rubber' | 'leather' =>
  isWorn(job, job.crew.pw, kit(job, 'rubber-gloves')) ? 'rubber' : 'leather'
