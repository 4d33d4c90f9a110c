/** All of it off in reverse: bond, cover, clamps, guards, the pole worker, lead and rod. */
import { isHeld, isPoleWorkerUp, isUp, isWorn, person, takeOff, walkOut } from './ask'
import { changeGloves } from './aloft'
import { bondOff } from './bond'
import { leaveBucket, packUpTruck } from './bucket'
import { climbTo, goUpOrDown, isAbove } from './goingUp'
import { gatherGround, standBack, toRope } from './ground'
import type { Job } from './job'
import { unbondLowVoltage } from './lvBonds'
import { conductorsOf, guardedWires, workOf } from './things'
import { tieIn } from './work'

export function takeDown(job: Job): void {
  if (isPoleWorkerUp(job)) {
    tieIn(job)
    uncoverPole(job)
    takeOffClamps(job)
    lowerAll(job, 'stick', 'detector', 'hv-proving-unit', 'brush')
    unbondLowVoltage(job)
    lowerAll(job, 'lv-bonds')
    takeOffGuards(job)
    stepDown(job)
  }
  leavePole(job)
  packUpTruck(job)
  gatherGround(job)
  job.order(job.crew.pic, 'look', { on: 'pole-top' })
  job.wait()
}

function uncoverPole(job: Job): void {
  const { pw } = job.crew
  bondOff(job)
  if (job.belief().cover !== null) job.order(pw, 'remove-cover', { on: 'cover' })
  lowerAll(job, 'cover', 'bond', workOf(job).part)
  const leather = job.kit.get('leather-gloves')
  if (leather !== undefined && (isWorn(job, pw, leather) || isUp(job, leather))) {
    takeOff(job, pw, leather)
    lowerAll(job, 'leather-gloves')
  }
  if (isAbove(job)) passDown(job)
}

/** Past the low voltage in rubber; the ground worker stands back meanwhile. */
export function passDown(job: Job): void {
  changeGloves(job, 'rubber')
  goUpOrDown(job, 'below-lv')
  standBack(job)
  job.wait()
}

/** Farthest first; then the lead comes down. */
export function takeOffClamps(job: Job): void {
  const { pic, pw } = job.crew
  const leads = job.belief().hauled
  const clamps = conductorsOf(job)
    .flatMap((on) => job.belief().clamps.filter((it) => it.on === on && leads.includes(it.lead)))
    .reverse()
  if (clamps.length > 0) {
    standBack(job)
    job.wait()
    job.order(pic, 'call-clear')
    job.wait()
    for (const { lead, on } of clamps) job.order(pw, 'unclamp', { with: lead, on })
  }
  job.wait(pw)
  for (const lead of job.belief().hauled) lower(job, lead)
}

export function lowerAll(job: Job, ...needs: readonly string[]): void {
  for (const need of needs) {
    const id = job.kit.get(need)
    if (id !== undefined && (isUp(job, id) || isHeld(job, job.crew.pw, id))) lower(job, id)
  }
}

function lower(job: Job, on: string): void {
  toRope(job)
  job.order(job.crew.pw, 'lower', { on })
}

function takeOffGuards(job: Job): void {
  const { guards } = job.belief()
  for (const on of [...guardedWires(job)].reverse()) {
    if (guards.some((it) => it.on === on)) job.order(job.crew.pw, 'remove-guard', { on })
  }
}

/** Whatever is fitted stays; no conductor is left loose that was proved since the line came alive. */
export function comeDown(job: Job): void {
  if (isProved(job)) tieIn(job)
  if (isAbove(job)) {
    // The bucket comes home in one go.
    if (person(job, job.crew.pw).place.kind === 'bucket') changeGloves(job, 'rubber')
    else passDown(job)
  }
  stepDown(job)
  leavePole(job)
}

function isProved(job: Job): boolean {
  const { livening, evidence } = job.belief()
  const on = workOf(job).conductor
  return livening === null || evidence.some((it) => it.of === on && it.by === 'test' && it.at > livening.at)
}

function stepDown(job: Job): void {
  if (person(job, job.crew.pw).place.kind === 'bucket') leaveBucket(job)
  else climbTo(job, 'foot')
}

function leavePole(job: Job): void {
  const { pw } = job.crew
  const { strapped, place } = job.belief().persons.find((it) => it.id === pw)!
  if (strapped) job.order(pw, 'unstrap')
  if (place.kind === 'pole' || job.layout.isBoomNear) walkOut(job, pw)
  for (const need of ['irons', 'rubber-gloves', 'harness']) {
    const id = job.kit.get(need)
    if (id !== undefined) takeOff(job, pw, id)
  }
  job.wait()
}
