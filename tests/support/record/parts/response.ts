/** After the line came alive: still, control room, source off, proved dead again, gear that carried it replaced. */
import type { Choices } from '../choices'
import type { Recorder } from '../recorder'
import { bondOn, clampAll, leatherOn, passLowVoltage, proveDead, sayDeadAndBrush, sendUp } from './aloft'
import { takeOut } from './gear'
import { earthEnd, fromRope, rodAt, toRope } from './ground'
import { bondOff, clampsOff } from './work'

/** The crew as ordered by the person in charge, from the second in which they know. */
export function respond(run: Recorder, { boots }: Choices): void {
  for (const who of ['pic', 'pw', 'gw', 'so']) run.order(who, 'keep-still')
  run.wait()
  run.order('pic', 'call-control', { values: { message: 'line-came-alive' } })
  run.order('pic', 'ask-source-off', { on: 'fx' })
  run.wait()
  run.order('pic', 'look', { on: 'crossing' })
  proveDead(run)
  run.order('pw', 'look', { on: run.site().cover ? 'cover' : 'pole-top' })
  for (const { item } of run.site().guards) run.order('pw', 'look', { on: item })
  for (const who of ['pic', 'pw', 'gw'] as const) if (boots[who] !== null) run.order(who, 'look', { on: boots[who] })
  run.wait()
}

/** What the fresh set is made of. */
export function fresh(choices: Choices): Choices {
  return { ...choices, lead: 'E-09', bond: 'B-03', rod: 'R-2' }
}

/** All that carried the fault comes off and is set aside; the fresh set goes on in the same order as the first. */
export function replaceGear(run: Recorder, choices: Choices): void {
  const next = fresh(choices)
  for (const id of [next.lead, next.bond, next.rod]) takeOut(run, 'gw', id, 'pass')
  bondOff(run, choices)
  run.order('pw', 'lower', { on: choices.bond })
  run.order('pw', 'take-off', { on: 'W-1' })
  run.order('pw', 'wear', { on: 'G-21' })
  run.order('pw', 'climb', { values: { to: 'below-lv' } })
  run.wait()
  fromRope(run)
  run.wait()
  run.order('pic', 'call-clear')
  run.wait()
  clampsOff(run, choices)
  run.wait()
  changeRod(run, choices, next)
  run.wait()
  toRope(run)
  sendUp(run, next.lead)
  fromRope(run)
  proveDead(run)
  sayDeadAndBrush(run)
  run.order('pic', 'read-weather')
  run.order('pic', 'call-clear')
  run.wait()
  clampAll(run, next)
  run.wait()
  run.order('pic', 'report-earths', { values: { count: 3 } })
  passLowVoltage(run)
  toRope(run)
  sendUp(run, next.bond)
  leatherOn(run)
  bondOn(run, next)
  run.order('pw', 'dress-leads')
  run.wait()
}

function changeRod(run: Recorder, old: Choices, next: Choices): void {
  run.order('gw', 'walk', { values: { to: rodAt } })
  run.order('gw', 'unclamp-earth-end', { with: old.lead, on: `rod/${old.rod}` })
  run.order('gw', 'pull-rod', { on: `rod/${old.rod}` })
  for (const id of [old.lead, old.bond, old.rod])
    run.order('gw', 'judge', { on: id, values: { verdict: 'quarantine' } })
  run.order('gw', 'drive-rod', { with: next.rod, values: { at: rodAt, depth: 1.8 } })
  earthEnd(run, next)
  fromRope(run)
  run.order('gw', 'watch')
}
