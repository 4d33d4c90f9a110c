/** After the line came alive: still, control room, source off, proved dead again, gear that carried it replaced. */
import { wear, isPoleWorkerUp, isUp, isWorn, item as known, kit } from './ask'
import { changeGloves, climbToLowVoltage, proveDead } from './aloft'
import { bondOff, isBondOn } from './bond'
import type { PersonId } from '../site/scenario'
import { bringBucketHome, unbondTruck } from './bucket'
import { takeOut } from './gear'
import { climbTo, isAbove } from './goingUp'
import { pullRods, setAside } from './ground'
import type { Job } from './job'
import { isThundering } from './thunder'
import { requireNeed } from './needs'
import { lowerAll, passDown, takeOffClamps } from './removal'
import { crossingFeeders } from './things'

/** The crew as ordered by the person in charge, from the second in which they know. */
export function respond(job: Job): void {
  const { pic } = job.crew
  for (const who of job.everybody) job.order(who, 'keep-still')
  job.wait()
  job.order(pic, 'call-control', { values: { message: 'line-came-alive' } })
  askSourceOff(job, pic)
  job.wait()
  lookAround(job)
}

/** Feeder after feeder until the control room has proved one off: first those that only cross. */
export function askSourceOff(job: Job, who: PersonId): void {
  const crossing = crossingFeeders(job)
  const others = job.scenario.feeders.map(({ id }) => id).filter((id) => !crossing.includes(id))
  for (const on of [...crossing, ...others]) {
    if (job.belief().livening?.provedOff !== true) job.order(who, 'ask-source-off', { on })
  }
}

function lookAround(job: Job): void {
  const { pic, pw, gw } = job.crew
  job.order(pic, 'look', { on: 'crossing' })
  if (isPoleWorkerUp(job)) lookAloft(job)
  for (const who of [pic, pw, gw]) {
    const boots = job.kit.get(`boots-${who}`)
    if (boots !== undefined && isWorn(job, who, boots)) job.order(who, 'look', { on: boots })
  }
  for (const { item } of job.belief().rods) job.order(gw, 'look', { on: `rod/${item}` })
  job.wait()
}

function lookAloft(job: Job): void {
  const { pw } = job.crew
  // Nobody tests in thunder: that is done when it is over.
  if (canProve(job) && !isThundering(job.belief())) {
    if (job.practice.stickGloves === 'lv-gloves') changeGloves(job, 'rubber')
    proveDead(job)
  }
  const { cover, paper } = job.belief()
  if (cover) job.order(pw, 'look', { on: 'cover' })
  else if (!paper.workDone) job.order(pw, 'look', { on: 'pole-top' })
  for (const { item } of job.belief().guards) job.order(pw, 'look', { on: item })
  const bonds = job.kit.get('lv-bonds')
  if (bonds !== undefined && known(job, bonds).where.kind === 'fitted') job.order(pw, 'look', { on: bonds })
}

const canProve = (job: Job): boolean =>
  ['stick', 'detector', 'hv-proving-unit'].every((need) => {
    const id = job.kit.get(need)
    return id !== undefined && isUp(job, id)
  })

/** Leads and bonds that were on a conductor when it came alive, and the rods under them: the current may have gone there. */
export function suspectsOf(job: Job): readonly string[] {
  const { clamps, rods } = job.belief()
  const fitted = clamps.filter(({ end }) => end !== 'earth' && end !== 'metal').map(({ lead }) => lead)
  const leads = [...new Set(fitted)].sort()
  const under = rods.filter(({ item }) => clamps.some((it) => it.on === `rod/${item}` && leads.includes(it.lead)))
  return [...leads, ...under.map(({ item }) => item)]
}

/** All that carried the fault comes off and is set aside; the fresh set goes on as the first did. */
export function renew(job: Job, suspects: readonly string[]): void {
  const worn = ['lead', 'bond', 'rod'].filter((need) => suspects.includes(job.kit.get(need) ?? ''))
  if (worn.length === 0) return
  for (const name of worn) takeOut(job, { ...requireNeed(job, name), name: `fresh ${name}`, who: job.crew.gw })
  goUpAgain(job)
  bondOff(job)
  lowerAll(job, 'bond')
  if (isAbove(job)) passDown(job)
  takeOffClamps(job)
  job.wait()
  if (worn.includes('rod')) {
    bringBucketHome(job)
    unbondTruck(job)
  }
  pullRods(job)
  // The truck keeps its lead until it is down; then that is set aside too.
  setAside(
    job,
    suspects.filter((it) => it !== job.kit.get('truck-bond')),
  )
  for (const name of worn) job.kit.set(name, kit(job, `fresh ${name}`))
  job.wait()
}

/** Whoever came down before: all that is fitted is looked at and the line proved before a hand goes to it. */
function goUpAgain(job: Job): void {
  if (isPoleWorkerUp(job)) return
  wear(job, job.crew.pw, kit(job, 'harness'))
  climbToLowVoltage(job)
  lookAloft(job)
  if (isBondOn(job)) climbTo(job, 'above-lv')
}
