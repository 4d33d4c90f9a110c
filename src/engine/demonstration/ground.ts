/** Signs, rescue, boots, barrier, rod and earth end. */
import { isWorn, item, kit, takeOff, walkOut, walkTo, wear } from './ask'
import type { Job } from './job'
import { isEarthedByNeutral } from './things'

/** Full turns of the screw that seat a clamp (common practice, no source); a tug tells whether it holds. */
export const seatTurns = 6

export function prepareGround(job: Job): void {
  const { pic, pw, gw } = job.crew
  once(job, gw, 'set-signs', { with: kit(job, 'sign-set') })
  once(job, gw, 'stage-rescue', { with: kit(job, 'rescue-kit'), values: { rescuer: gw } })
  for (const who of [pic, pw, gw]) wear(job, who, kit(job, `boots-${who}`))
  wear(job, pw, kit(job, 'harness'))
  job.wait()
  sendOutOfBarrier(job)
  wear(job, gw, kit(job, 'ground-gloves'))
  if (!isEarthedByNeutral(job)) locate(job)
  setBarrier(job)
  job.wait()
}

/** The truck will stand inside: whoever wears no boots waits elsewhere. */
function sendOutOfBarrier(job: Job): void {
  const { so, pic, pw, gw } = job.crew
  if (job.layout.isBoomNear && ![pic, pw, gw].includes(so)) walkOut(job, so)
}

function once(job: Job, who: string, act: string, details: Parameters<Job['order']>[2]): void {
  if (!job.hasDone(act, { who })) job.order(who, act, details)
}

function locate(job: Job): void {
  const { gw } = job.crew
  if (job.hasDone('locate-services', { since: job.at.since })) return
  job.order(gw, 'locate-services', { values: { at: job.layout.rod } })
}

function setBarrier(job: Job): void {
  if (job.belief().barrier !== null) return
  job.order(job.crew.gw, 'set-barrier', { with: kit(job, 'barrier-set'), values: { outline: job.layout.outline } })
}

/** The rod goes in, the lead's own end on it, before anything of the lead goes up. */
export function earthEnd(job: Job): void {
  const { gw } = job.crew
  const lead = kit(job, 'lead')
  const rod = isEarthedByNeutral(job) ? undefined : kit(job, 'rod')
  const isIn = rod === undefined || job.belief().rods.some((it) => it.item === rod)
  const isOn = job.belief().clamps.some((it) => it.lead === lead && it.end === 'earth')
  const isLaid =
    job.belief().written[`route:${lead}`] !== undefined &&
    (job.at.pole === undefined || job.hasDone('lay-lead', { since: job.at.since }))
  if (!isIn || !isOn || !isLaid) walkTo(job, gw, job.layout.rod)
  if (!isIn) {
    job.order(gw, 'drive-rod', { with: rod, values: { at: job.layout.rod, depth: depthOf(job) } })
  }
  const on = rod === undefined ? 'pole-earth' : `rod/${rod}`
  if (!isOn) job.order(gw, 'clamp-earth-end', { with: lead, on, values: { turns: seatTurns } })
  if (!isLaid) job.order(gw, 'lay-lead', { with: lead, values: { route: 'clear-of-lv' } })
  standBack(job)
}

/** To the mark, or as deep as the pack wants it. */
const depthOf = (job: Job): number => job.practice.rodDepth

/** Out of the barrier before a clamp is touched. */
export function standBack(job: Job): void {
  walkTo(job, job.crew.gw, job.layout.lookout)
}

export function toRope(job: Job): void {
  walkTo(job, job.crew.gw, job.layout.ropeStand)
  job.wait(job.crew.gw)
}

/** Leads off their earth, rods out of the ground. */
export function pullRods(job: Job): void {
  const { gw } = job.crew
  const truckBond = job.kit.get('truck-bond')
  for (const { lead, on } of job
    .belief()
    .clamps.filter((it) => it.end === 'earth' && it.on === 'pole-earth' && it.lead !== truckBond)) {
    walkTo(job, gw, job.layout.rod)
    job.order(gw, 'unclamp-earth-end', { with: lead, on })
  }
  for (const { item: rod } of job.belief().rods) {
    walkTo(job, gw, job.layout.rod)
    for (const { lead } of job.belief().clamps.filter((it) => it.on === `rod/${rod}`)) {
      job.order(gw, 'unclamp-earth-end', { with: lead, on: `rod/${rod}` })
    }
    job.order(gw, 'pull-rod', { on: `rod/${rod}` })
  }
}

/** What carried the current is set aside as soon as it lies on the tarp. */
export function setAside(job: Job, suspects: readonly string[]): void {
  for (const id of suspects) {
    const { verdict, where } = item(job, id)
    const isLoose = where.kind === 'tarp' || where.kind === 'truck'
    if (isLoose && verdict !== 'quarantine')
      job.order(job.crew.gw, 'judge', { on: id, values: { verdict: 'quarantine' } })
  }
}

export function gatherGround(job: Job): void {
  const { gw } = job.crew
  pullRods(job)
  const gloves = job.kit.get('ground-gloves')
  if (gloves === undefined || !isWorn(job, gw, gloves)) return
  walkOut(job, gw)
  takeOff(job, gw, gloves)
  job.wait()
}
