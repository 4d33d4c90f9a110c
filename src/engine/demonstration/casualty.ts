/**
 * Somebody was struck and does not answer: ambulance, source off, down with the rope, first aid, in this order. The job then ends where it stands: another crew takes it up.
 */
import { isAloft } from '../site/questions'
import type { PersonId } from '../site/scenario'
import { person, walkTo, wear } from './ask'
import { takeOut } from './gear'
import type { Job } from './job'
import { askSourceOff } from './response'

export const hurtOf = (job: Job): readonly PersonId[] =>
  job
    .belief()
    .persons.filter(({ isHurt }) => isHurt)
    .map(({ id }) => id)

export function helpHurt(job: Job): void {
  const hurt = hurtOf(job)
  const { pic, gw, so } = job.crew
  const caller = [pic, gw, so].find((id) => !hurt.includes(id))
  const helper = [gw, pic].find((id) => !hurt.includes(id))
  if (caller === undefined || helper === undefined) return
  for (const who of job.everybody) if (!hurt.includes(who)) job.order(who, 'keep-still')
  job.wait()
  for (const message of ['line-came-alive', 'need-ambulance'])
    job.order(caller, 'call-control', { values: { message } })
  askSourceOff(job, caller)
  job.wait()
  for (const whom of hurt) help(job, helper, whom)
  job.wait()
  job.order(caller, 'stop-job')
  job.wait()
}

/** On the pole or in the bucket first brought to the ground. */
function help(job: Job, helper: PersonId, whom: PersonId): void {
  for (const id of person(job, helper).holds) job.order(helper, 'put-down', { on: id })
  const { place } = person(job, whom)
  const kit = job.kit.get('rescue-kit')
  if (isAloft(person(job, whom)) && kit !== undefined) {
    if (place.kind === 'bucket') fromBucket(job, helper, whom, kit)
    else if (place.kind === 'pole' && job.belief().sheet.pole.stepBoltsTo > 0) {
      harness(job, helper)
      job.order(helper, 'walk', { on: place.pole === 'next' ? 'next-pole' : 'pole-foot' })
      if (job.kit.has('rescue-harness')) job.order(helper, 'strap-on')
      job.order(helper, 'climb', { values: { to: place.station } })
      job.order(helper, 'bring-down', { with: kit, values: { whom } })
      job.order(helper, 'climb', { values: { to: 'foot' } })
      if (person(job, helper).strapped) job.order(helper, 'unstrap')
    }
  }
  if (!isAloft(person(job, whom))) giveAid(job, helper, whom)
}

/** One of their own, where the truck has another. */
function harness(job: Job, helper: PersonId): void {
  if (hurtOf(job).includes(job.crew.gw)) return
  const isType = (type: string): boolean => type === 'harness'
  takeOut(job, { name: 'rescue-harness', who: helper, isOptional: true, isType })
  const found = job.kit.get('rescue-harness')
  if (found !== undefined) wear(job, helper, found)
}

function fromBucket(job: Job, helper: PersonId, whom: PersonId, kit: string): void {
  walkTo(job, helper, job.belief().truck)
  if (job.belief().truckState?.bucket) job.order(helper, 'stow-bucket', { on: 'bucket' })
  job.order(helper, 'bring-down', { with: kit, values: { whom } })
}

function giveAid(job: Job, helper: PersonId, whom: PersonId): void {
  // The register is the ground worker's.
  if (hurtOf(job).includes(job.crew.gw)) return
  takeOut(job, { name: 'first-aid', who: helper, isOptional: true, isType: (type) => type === 'first-aid-kit' })
  const aid = job.kit.get('first-aid')
  const { place } = person(job, whom)
  if (aid === undefined || place.kind !== 'ground') return
  walkTo(job, helper, place.at)
  job.order(helper, 'first-aid', { with: aid, values: { whom } })
}
