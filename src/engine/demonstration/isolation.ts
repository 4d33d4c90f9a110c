/** Switching by steps, blades looked at, locks and tags, earths at the switch where the pack wants them, the permit. */
import type { ScenarioSwitch } from '../site/scenario'
import { goTo, isHeld, kit, person, take, takeOff, wear } from './ask'
import { BrokenOff } from './brokenOff'
import type { Job } from './job'
import { isolateLowVoltage, restoreLowVoltage } from './lowVoltage'
import { bladesOf, switchesOf } from './things'

export function isolate(job: Job): void {
  const { so } = job.crew
  carry(job)
  for (const device of switchesOf(job)) isolateAt(job, device)
  isolateLowVoltage(job)
  goTo(job, 'truck')
  job.order(so, 'report-isolated')
  job.wait()
}

export function takePermit(job: Job): void {
  const { pic } = job.crew
  job.order(pic, 'take-permit', { values: { readBack: permitWords(job) } })
  job.order(pic, 'show-boundary')
  job.wait()
}

/** Pole and points of isolation; where permits carry a number and an end, as it is read out by the control room. */
function permitWords(job: Job): string {
  const labels = switchesOf(job)
    .map(({ label }) => label)
    .sort()
  const own = [job.scenario.pole.number, ...labels]
  if (job.scenario.control.permit === undefined) return own.join(' ')
  const hear = (): string => {
    job.order(job.crew.pic, 'hear-permit')
    return String(job.belief().evidence.findLast((it) => it.says === 'control.permit-read')?.values['readBack'] ?? '')
  }
  const heard = hear()
  // A number that is not on the own sheet was garbled on the way: it is asked for again.
  return own.every((it) => heard.split(' ').includes(it)) ? heard : hear()
}

/** Mat and earthing set fill both hands: whoever carries both puts the gloves on first. */
function carry(job: Job): void {
  const { so } = job.crew
  const gloves = kit(job, 'switching-gloves')
  const small = switchesOf(job).map((_, i) => i)
  if (job.practice.hasMainEarths) wear(job, so, gloves)
  for (const i of small) take(job, so, kit(job, `lock-${i}`))
  for (const i of small) take(job, so, kit(job, `tag-${i}`))
  if (job.scenario.control.permit) for (const i of small) writeTag(job, kit(job, `tag-${i}`))
  take(job, so, kit(job, 'operator-mat'))
  if (!job.practice.hasMainEarths) take(job, so, gloves)
  // A blade in the dark is seen by a lamp.
  const lamp = job.kit.get('lamp')
  if (lamp !== undefined) take(job, so, lamp)
}

function writeTag(job: Job, on: string): void {
  job.order(job.crew.so, 'write-tag', { on, values: { wording: 'name-and-time' } })
}

function isolateAt(job: Job, device: ScenarioSwitch): void {
  const { so } = job.crew
  const { id, remote, closed } = device
  const index = switchesOf(job).indexOf(device)
  const earth = closed && job.practice.hasMainEarths ? kit(job, `isolation-earth-${index}`) : undefined
  if (earth !== undefined) fetchEarth(job, earth)
  goTo(job, id)
  receive(job, device, 'open')
  if (closed) openIt(job, device, earth)
  lookAtBlades(job, device)
  if (remote) job.order(so, 'set-local', { on: id })
  if (device.motorSupply) job.order(so, 'motor-supply-off', { on: id })
  job.order(so, 'lock', { on: id, with: kit(job, `lock-${index}`) })
  job.order(so, 'tag', { on: id, with: kit(job, `tag-${index}`) })
  stepOffMat(job)
  if (earth !== undefined) matAside(job, () => job.order(so, 'earth-isolation-point', { on: id, with: earth }))
  report(job, device)
}

/** That the step was done, with the number again, where the pack wants to hear it. */
function report(job: Job, { id, label }: ScenarioSwitch): void {
  if (job.practice.reportsSteps) job.order(job.crew.so, 'report-step', { on: id, values: { message: label } })
}

/** One set fits into the hands beside the mat: the next is fetched for the next switch. */
function fetchEarth(job: Job, earth: string): void {
  if (person(job, job.crew.so).place.kind === 'switch') goTo(job, 'truck')
  take(job, job.crew.so, earth)
}

function openIt(job: Job, { id }: ScenarioSwitch, earth: string | undefined): void {
  const { so } = job.crew
  wear(job, so, kit(job, 'switching-gloves'))
  job.order(so, 'step-on-mat')
  if (earth !== undefined) job.order(so, 'put-down', { on: earth })
  job.order(so, 'open-switch', { on: id })
}

function receive(job: Job, { id, label }: ScenarioSwitch, to: 'open' | 'closed'): void {
  const { so } = job.crew
  if (job.practice.hearsSteps) job.order(so, 'hear-step', { on: id })
  job.order(so, 'receive-step', { on: id, values: { to, readBack: label } })
  job.order(so, 'read-label', { on: id })
}

function lookAtBlades(job: Job, device: ScenarioSwitch): void {
  const blades = bladesOf(job, device)
  for (const on of blades) job.order(job.crew.so, 'look', { on })
  const { evidence } = job.belief()
  const shut = blades.find(
    (on) => evidence.findLast((it) => it.of === on && it.by === 'look')?.says === 'see.blade-closed',
  )
  if (shut !== undefined && job.heeds('blade', shut)) throw new BrokenOff('blade-closed', shut)
}

function stepOffMat(job: Job): void {
  if (person(job, job.crew.so).onMat) job.order(job.crew.so, 'step-off-mat')
}

/** An earthing set takes both hands. */
function matAside(job: Job, work: () => void): void {
  const { so } = job.crew
  const mat = kit(job, 'operator-mat')
  const isCarried = isHeld(job, so, mat)
  if (isCarried) job.order(so, 'put-down', { on: mat })
  work()
  if (isCarried) job.order(so, 'take', { on: mat })
}

/** Everything as it was found: the last that was made safe comes first. */
export function switchBack(job: Job): void {
  for (const device of [...switchesOf(job)].reverse()) restore(job, device)
  goTo(job, 'truck')
  restoreLowVoltage(job)
}

function restore(job: Job, device: ScenarioSwitch): void {
  const { so } = job.crew
  const { id, remote, closed } = device
  const state = job.belief().switches.find((it) => it.id === id)
  const isUntouched = state?.handle === (closed ? 'closed' : 'open') && state.lock === null && state.tag === null
  if (!state || isUntouched) return
  goTo(job, id)
  receive(job, device, closed ? 'closed' : 'open')
  const { earth } = state
  if (earth !== null) {
    matAside(job, () => {
      job.order(so, 'clear-isolation-earth', { on: id })
      job.order(so, 'put-down', { on: earth })
    })
  }
  if (state.tag !== null) job.order(so, 'untag', { on: id })
  if (state.lock !== null) job.order(so, 'unlock', { on: id })
  if (device.motorSupply) job.order(so, 'motor-supply-on', { on: id })
  if (remote && state.control === 'local') job.order(so, 'set-remote', { on: id })
  if (closed) closeIt(job, device)
  report(job, device)
  if (earth !== null) {
    job.order(so, 'take', { on: earth })
    // With the mat that fills both hands: it goes to the truck before the next is taken off.
    if (switchesOf(job).indexOf(device) > 0) bringBack(job, earth)
  }
}

function closeIt(job: Job, device: ScenarioSwitch): void {
  const { so } = job.crew
  wear(job, so, kit(job, 'switching-gloves'))
  if (!person(job, so).onMat) job.order(so, 'step-on-mat')
  job.order(so, 'close-switch', { on: device.id })
  for (const on of bladesOf(job, device)) job.order(so, 'look', { on })
  stepOffMat(job)
}

function bringBack(job: Job, earth: string): void {
  goTo(job, 'truck')
  job.order(job.crew.so, 'put-down', { on: earth })
}

/** Back at the truck with nothing left to work on. */
export function undress(job: Job): void {
  const gloves = job.kit.get('switching-gloves')
  if (gloves !== undefined) takeOff(job, job.crew.so, gloves)
}
