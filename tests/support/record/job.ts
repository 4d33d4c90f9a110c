/** The whole job, from the sheet in the hand to the last signature. */
import type { Scenario } from '../../../src/engine'
import { clean, type Choices } from './choices'
import { climbToLowVoltage, coverAndBond, earth, guardLowVoltage } from './parts/aloft'
import { brief } from './parts/brief'
import { gear } from './parts/gear'
import { groundWork } from './parts/ground'
import { isolate, switchBack } from './parts/isolation'
import { fresh, replaceGear, respond } from './parts/response'
import { bookIn, declareSafe, handBack, repair, takeOff } from './parts/work'
import { record, type Recorder } from './recorder'

export function wholeJob(scenario: Scenario, changes: Partial<Choices> = {}): Recorder {
  const choices = { ...clean, ...changes }
  const run = record(scenario)
  prepare(run, choices)
  declareSafe(run)
  repair(run)
  finish(run, choices)
  return run
}

/** The same, with the line coming alive at the first touch of the conductor: answered, mended, finished. */
export function livenedJob(scenario: Scenario, changes: Partial<Choices> = {}): Recorder {
  const choices = { ...clean, ...changes }
  const run = record(scenario)
  prepare(run, choices)
  declareSafe(run)
  run.tryOrder('pw', 'untie', { on: 'conductor-b' })
  run.wait()
  respond(run, choices)
  replaceGear(run, choices)
  declareSafe(run)
  repair(run)
  finish(run, fresh(choices))
  return run
}

function prepare(run: Recorder, choices: Choices): void {
  brief(run, choices)
  gear(run, choices)
  isolate(run, choices)
  groundWork(run, choices)
  climbToLowVoltage(run)
  guardLowVoltage(run)
  earth(run, choices)
  coverAndBond(run, choices)
}

function finish(run: Recorder, choices: Choices): void {
  takeOff(run, choices)
  handBack(run)
  closeUp(run, choices)
}

/** Barrier, boots and switches: all that ends only when the permit is back. */
function closeUp(run: Recorder, choices: Choices): void {
  run.order('gw', 'take-in-barrier', { on: 'barrier' })
  run.wait()
  for (const who of ['pic', 'pw', 'gw'] as const) {
    const boots = choices.boots[who]
    if (boots !== null) run.order(who, 'take-off', { on: boots })
  }
  if (choices.isSwitched) switchBack(run, choices)
  run.wait()
  for (const feeder of ['f1', 'f2', 'fx']) run.order('pic', 'ask-reclose-on', { on: feeder })
  if (choices.isSwitched) run.order('so', 'take-off', { on: 'G-31' })
  run.wait()
  bookIn(run, () => true)
  run.order('pic', 'close-job')
  run.wait()
}
