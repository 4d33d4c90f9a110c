/** Up to the low voltage, guarding it, proving the line dead, earthing it. */
import { clampedOn, item, isPoleWorkerUp, isUp, isWorn, kit, lookAgain, person, take, takeOff, wear } from './ask'
import { BrokenOff } from './brokenOff'
import { boardBucket, bondTruck, isFromBucket, isInRestingBucket } from './bucket'
import { climbTo } from './goingUp'
import { seatTurns, standBack, toRope } from './ground'
import type { Job } from './job'
import { areBondsBelow, bondLowVoltage } from './lvBonds'
import { conductorsOf, guardedWires, lowVoltageOf } from './things'

export function climbToLowVoltage(job: Job): void {
  if (isPoleWorkerUp(job) && !isInRestingBucket(job)) {
    bondTruck(job)
    return
  }
  const { pw, gw } = job.crew
  if (!isPoleWorkerUp(job)) getReady(job)
  if (isFromBucket(job)) boardBucket(job)
  else if (!person(job, pw).strapped) job.order(pw, 'strap-on')
  job.order(gw, 'watch')
  job.wait()
  climbTo(job, 'below-lv')
}

/** With what is carried, at the foot of the pole that was looked over. */
function getReady(job: Job): void {
  const { pw } = job.crew
  const wires = lowVoltageOf(job)
  wear(job, pw, kit(job, 'rubber-gloves'))
  if (job.kit.has('irons')) wear(job, pw, kit(job, 'irons'))
  if (wires.length > 0) for (const need of ['lv-tester', 'lv-proving-unit']) take(job, pw, kit(job, need))
  guardedWires(job).forEach((_, i) => take(job, pw, kit(job, `guard-${i}`)))
  take(job, pw, kit(job, 'handline'))
  if (person(job, pw).place.kind !== 'pole')
    job.order(pw, 'walk', { on: job.at.pole === 'next' ? 'next-pole' : 'pole-foot' })
  job.order(pw, 'match-pole', { on: 'pole' })
  job.order(pw, 'inspect-pole', { on: 'pole' })
}

export function guardLowVoltage(job: Job): void {
  const { pw } = job.crew
  const bare = guardedWires(job).filter((on) => !job.belief().guards.some((it) => it.on === on))
  if (bare.length === 0) return
  const [tester, unit] = [kit(job, 'lv-tester'), kit(job, 'lv-proving-unit')]
  job.order(pw, 'prove', { with: tester, on: unit })
  for (const on of lowVoltageOf(job)) job.order(pw, 'test', { with: tester, on })
  job.order(pw, 'prove', { with: tester, on: unit })
  guardedWires(job).forEach((on, i) => {
    if (bare.includes(on)) job.order(pw, 'fit-guard', { with: kit(job, `guard-${i}`), on })
  })
  if (areBondsBelow(job)) sendUp(job, 'lv-bonds')
  bondLowVoltage(job)
}

/** The ground worker ties on while the pole worker is still at the last thing. */
export function sendUp(job: Job, ...needs: readonly string[]): void {
  const { pw, gw } = job.crew
  const wanted = needs.map((need) => kit(job, need)).filter((id) => isBelow(job, id))
  if (wanted.length === 0) return
  toRope(job)
  for (const id of wanted) {
    if (job.site().items[id]?.where.kind !== 'handline') job.order(gw, 'tie-on', { on: id })
    job.wait(gw)
    job.order(pw, 'haul', { on: id })
  }
}

/** Still on the ground, or a lead of which only the earth end is on. */
function isBelow(job: Job, id: string): boolean {
  const isInPlace = item(job, id).where.kind === 'fitted' && id !== job.kit.get('lead')
  return !isInPlace && !isUp(job, id) && !isWorn(job, job.crew.pw, id)
}

/** @throws BrokenOff when the detector does not prove or a conductor is not dead */
export function proveDead(job: Job): void {
  const { pw } = job.crew
  const [detector, unit] = [kit(job, 'detector'), kit(job, 'hv-proving-unit')]
  const prove = (): void => {
    job.order(pw, 'prove', { with: detector, on: unit })
    heed(job, detector, 'test.indicates')
  }
  prove()
  for (const on of conductorsOf(job)) {
    job.order(pw, 'test', { with: detector, on })
    heed(job, on, 'test.silent')
  }
  prove()
}

function heed(job: Job, of: string, wanted: string): void {
  const last = job.belief().evidence.findLast((it) => it.of === of && it.by === 'test')
  if (last && last.says !== wanted && job.heeds('indication', of)) throw new BrokenOff('not-dead', of)
}

export function earthLine(job: Job): void {
  const { pic, pw } = job.crew
  const bare = conductorsOf(job).filter((on) => !clampedOn(job, on))
  if (bare.length > 0) {
    sendUp(job, 'stick', 'detector', 'hv-proving-unit', 'brush', 'lead')
    lookAgain(job, kit(job, 'lead'))
    proveDead(job)
    for (const on of bare) job.order(pw, 'say-dead', { on })
    for (const on of bare) job.order(pw, 'brush', { with: kit(job, 'brush'), on })
    job.wait()
    standBack(job)
    job.wait()
    job.order(pic, 'call-clear')
    job.wait()
    for (const on of bare) clampOn(job, on)
    job.wait()
  }
  if (!job.belief().paper.earthsReported || bare.length > 0) {
    job.order(pic, 'report-earths', { values: { count: conductorsOf(job).length } })
    job.wait()
  }
}

function clampOn(job: Job, on: string): void {
  job.order(job.crew.pw, 'clamp', { with: kit(job, 'lead'), on, values: { turns: seatTurns } })
  tug(job, on)
}

/** A clamp that moves is screwed further, and tried again. */
export function tug(job: Job, on: string): void {
  const { pw } = job.crew
  job.order(pw, 'tug', { on })
  const felt = job.belief().evidence.findLast((it) => it.of === on && it.by === 'feel')
  if (felt?.says !== 'feel.clamp-turns' || !job.heeds('loose-clamp', on)) return
  job.order(pw, 'tighten', { on, values: { turns: 4 } })
  job.order(pw, 'tug', { on })
}

/** From one pair of gloves into the other, hands bare in between. */
export function changeGloves(job: Job, to: 'rubber' | 'leather'): void {
  const { pw } = job.crew
  const other = to === 'rubber' ? 'leather' : 'rubber'
  takeOff(job, pw, kit(job, `${other}-gloves`))
  wear(job, pw, kit(job, `${to}-gloves`))
}
