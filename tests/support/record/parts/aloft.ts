/** Up past the low voltage, proving dead, earthing, covering, bonding. */
import type { Choices } from '../choices'
import type { Recorder } from '../recorder'
import { earthEnd, fromRope, rodAt, toRope } from './ground'

export const conductors = ['conductor-a', 'conductor-b', 'conductor-c'] as const
const lvWires = ['lv-a', 'lv-b', 'lv-n', 'lv-c'] as const

export function climbToLowVoltage(run: Recorder): void {
  run.order('pw', 'wear', { on: 'G-21' })
  for (const id of ['T-06', 'P-08', 'L-51', 'L-52', 'Z-1']) run.order('pw', 'take', { on: id })
  run.order('pw', 'walk', { on: 'pole-foot' })
  run.order('pw', 'match-pole', { on: 'pole' })
  run.order('pw', 'inspect-pole', { on: 'pole' })
  run.order('pw', 'strap-on')
  run.order('gw', 'watch')
  run.wait()
  run.order('pw', 'climb', { values: { to: 'below-lv' } })
  run.wait()
}

export function guardLowVoltage(run: Recorder): void {
  run.order('pw', 'prove', { with: 'T-06', on: 'P-08' })
  for (const wire of lvWires) run.order('pw', 'test', { with: 'T-06', on: wire })
  run.order('pw', 'prove', { with: 'T-06', on: 'P-08' })
  run.order('pw', 'fit-guard', { with: 'L-51', on: 'lv-b' })
  run.order('pw', 'fit-guard', { with: 'L-52', on: 'lv-n' })
}

/** The ground worker ties on while the pole worker is still at the last thing. */
export function sendUp(run: Recorder, ...ids: readonly string[]): void {
  for (const id of ids) {
    run.order('gw', 'tie-on', { on: id })
    run.wait('gw')
    run.order('pw', 'haul', { on: id })
  }
}

export function proveDead(run: Recorder): void {
  run.order('pw', 'prove', { with: 'D-04', on: 'P-03' })
  for (const on of conductors) run.order('pw', 'test', { with: 'D-04', on })
  run.order('pw', 'prove', { with: 'D-04', on: 'P-03' })
}

export function sayDeadAndBrush(run: Recorder): void {
  for (const on of conductors) run.order('pw', 'say-dead', { on })
  for (const on of conductors) run.order('pw', 'brush', { with: 'K-1', on })
  run.wait()
}

export function earth(run: Recorder, choices: Choices): void {
  const { lead } = choices
  toRope(run)
  sendUp(run, choices.stick, 'D-04', 'P-03', 'K-1', lead)
  proveDead(run)
  sayDeadAndBrush(run)
  if (choices.holdsLead !== 'no') run.order('gw', 'walk', { values: { to: { x: 1.5, y: -1 } } })
  if (choices.holdsLead === 'before') run.order('gw', 'hold-lead', { with: lead })
  if (choices.holdsLead !== 'while') fromRope(run)
  run.wait()
  run.order('pic', 'call-clear')
  run.wait()
  clampAll(run, choices)
  if (choices.holdsLead === 'while') fromRope(run)
  if (choices.isConductorEndFirst) {
    run.order('gw', 'walk', { values: { to: rodAt } })
    earthEnd(run, choices)
    fromRope(run)
  }
  run.wait()
  run.order('pic', 'report-earths', { values: { count: 3 } })
  run.wait()
}

export function clampAll(run: Recorder, { lead, holdsLead }: Choices): void {
  conductors.forEach((on, index) => {
    if (index === 0 && holdsLead === 'while') run.order('gw', 'hold-lead', { with: lead })
    run.order('pw', 'clamp', { with: lead, on, values: { turns: 6 } })
    run.order('pw', 'tug', { on })
  })
}

export function coverAndBond(run: Recorder, choices: Choices): void {
  passLowVoltage(run)
  toRope(run)
  sendUp(run, 'W-1', ...(choices.isCovered ? ['C-15'] : []), choices.bond, 'I-1')
  if (!choices.isRubberAloft) leatherOn(run)
  if (choices.isCovered) {
    run.order('pw', 'fit-cover', { with: 'C-15', values: { from: 7.2, to: 8.3 } })
    run.order('pw', 'look', { on: 'cover' })
  }
  bondOn(run, choices)
  run.order('pw', 'dress-leads')
  if (choices.isRubberAloft) leatherOn(run)
  run.wait()
}

export function passLowVoltage(run: Recorder): void {
  run.order('pw', 'climb', { values: { to: 'above-lv' } })
  run.wait()
}

export function leatherOn(run: Recorder): void {
  run.order('pw', 'take-off', { on: 'G-21' })
  run.order('pw', 'wear', { on: 'W-1' })
}

export function bondOn(run: Recorder, { bond }: Choices): void {
  run.order('pw', 'brush', { with: 'K-1', on: 'conductor-b' })
  run.order('pw', 'bond-metal', { with: bond, on: 'arm', values: { turns: 6 } })
  run.order('pw', 'bond-line', { with: bond, on: 'conductor-b', values: { turns: 6 } })
  run.order('pw', 'tug', { on: 'conductor-b' })
}
