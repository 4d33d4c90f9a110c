/** The next shift takes over while everybody is on the ground: the job is walked together, briefed and signed on anew. */
import { walkOut, walkTo } from './ask'
import type { Job } from './job'

export function handOver(job: Job): void {
  const { inCharge, persons, marks } = job.belief()
  const relief = persons.find((it) => it.role === 'person-in-charge' && it.isHere && it.id !== inCharge)
  if (relief === undefined || inCharge === null || marks['charge-handed-over'] !== undefined) return
  const next = relief.id
  job.wait()
  for (const who of [inCharge, next]) walkTo(job, who, job.layout.reading)
  job.wait()
  job.order(next, 'walk-job', { on: 'charge' })
  job.wait()
  job.order(inCharge, 'hand-over-charge', {
    on: 'charge',
    values: { next, papers: ['permit', 'register', 'keys', 'plan'] },
  })
  job.wait()
  passBoots(job, inCharge, next)
  job.order(next, 'hold-briefing')
  job.wait()
  for (const { id } of job.belief().persons.filter((it) => it.isHere && !it.signedOn)) job.order(id, 'sign-on')
  job.order(next, 'report-charge', { on: 'charge' })
  walkOut(job, inCharge)
  job.wait()
}

/** The pair that was passed for the one who goes is for the one who comes, where it fits. */
function passBoots(job: Job, from: string, to: string): void {
  const size = (who: string) => job.belief().persons.find((it) => it.id === who)?.bootSize
  const pair = job.kit.get(`boots-${from}`)
  if (pair !== undefined && !job.kit.has(`boots-${to}`) && size(from) === size(to)) job.kit.set(`boots-${to}`, pair)
}
