/** Declaring safe, the repair, and all of it off in reverse. */
import type { Choices } from '../choices'
import type { Recorder } from '../recorder'
import { conductors } from './aloft'
import { fromRope, rodAt, toRope } from './ground'

export function declareSafe(run: Recorder): void {
  run.order('pic', 'check-from-ground', { with: 'N-1' })
  run.order('pic', 'read-weather')
  run.wait()
  run.order('pic', 'declare-safe')
  run.wait()
}

export function repair(run: Recorder): void {
  run.order('pw', 'untie', { on: 'conductor-b' })
  run.order('pw', 'swap-insulator', { with: 'I-1', on: 'conductor-b' })
  run.order('pw', 'retie', { on: 'conductor-b' })
  run.order('pw', 'lower', { on: 'I-0' })
  run.wait()
}

export function takeOff(run: Recorder, choices: Choices): void {
  run.order('pic', 'confirm-complete')
  run.wait()
  if (choices.isRubberAloft) {
    run.order('pw', 'take-off', { on: 'W-1' })
    run.order('pw', 'wear', { on: 'G-21' })
  }
  bondOff(run, choices)
  if (choices.isCovered) run.order('pw', 'remove-cover', { on: 'cover' })
  for (const id of [...(choices.isCovered ? ['C-15'] : []), choices.bond]) run.order('pw', 'lower', { on: id })
  if (!choices.isRubberAloft) run.order('pw', 'take-off', { on: 'W-1' })
  run.order('pw', 'lower', { on: 'W-1' })
  if (!choices.isRubberAloft) run.order('pw', 'wear', { on: 'G-21' })
  run.order('pw', 'climb', { values: { to: 'below-lv' } })
  fromRope(run)
  run.wait()
  run.order('pic', 'call-clear')
  run.wait()
  clampsOff(run, choices)
  for (const id of [choices.stick, 'D-04', 'P-03', 'K-1']) run.order('pw', 'lower', { on: id })
  run.order('pw', 'remove-guard', { on: 'lv-n' })
  run.order('pw', 'remove-guard', { on: 'lv-b' })
  run.order('pw', 'climb', { values: { to: 'foot' } })
  run.order('pw', 'unstrap')
  run.order('pw', 'walk', { on: 'clear' })
  run.order('pw', 'take-off', { on: 'G-21' })
  run.order('pw', 'take-off', { on: 'Y-1' })
  run.wait()
  rodOut(run, choices)
}

export function bondOff(run: Recorder, { bond }: Choices): void {
  run.order('pw', 'unbond-line', { with: bond, on: 'conductor-b' })
  run.order('pw', 'unbond-metal', { with: bond, on: 'arm' })
}

export function clampsOff(run: Recorder, { lead, leavesLeadAloft }: Choices): void {
  for (const on of [...conductors].reverse()) run.order('pw', 'unclamp', { with: lead, on })
  run.wait('pw')
  toRope(run)
  if (!leavesLeadAloft) run.order('pw', 'lower', { on: lead })
}

function rodOut(run: Recorder, { lead, rod }: Choices): void {
  run.order('gw', 'walk', { values: { to: rodAt } })
  run.order('gw', 'unclamp-earth-end', { with: lead, on: `rod/${rod}` })
  run.order('gw', 'pull-rod', { on: `rod/${rod}` })
  run.order('gw', 'walk', { on: 'clear' })
  run.order('gw', 'take-off', { on: 'W-2' })
  run.wait()
  run.order('pic', 'look', { on: 'pole-top' })
  run.wait()
}

/** Booked in only after the permit is back: still in use until then. */
const late = ['barrier-set', 'boots', 'isolation-earth', 'lock', 'operator-mat', 'sign-set', 'switching-gloves', 'tag']

export function handBack(run: Recorder): void {
  bookIn(run, (type) => !late.includes(type))
  run.order('pic', 'head-count')
  run.wait()
  run.order('pic', 'return-permit', { values: { readBack: 'crew-clear earths-off gear-in' } })
  run.wait()
}

/** In the order in which it was signed out, as the list runs. */
export function bookIn(run: Recorder, isMeant: (type: string) => boolean): void {
  const listed = run
    .orders()
    .filter((it) => it.do === 'book-out')
    .flatMap((it) => it.on ?? [])
  for (const id of new Set(listed)) {
    const item = run.site().items[id]
    if (!item || item.bookedIn || !isMeant(item.type)) continue
    if (item.where.kind === 'fitted' && item.type !== 'sign-set') continue
    if (run.site().hauled.includes(id) || item.where.kind === 'aloft') continue
    run.order('gw', 'book-in', { on: id })
  }
  run.wait()
}
