/** Job sheet, plan and the talk before the work. */
import type { Choices } from '../choices'
import type { Recorder } from '../recorder'

const hazards = ['crossing', 'fence', 'low-voltage', 'road', 'service-span', 'stay']

/** Outside the barrier, near enough to read the number on the pole. */
const lookout = { x: -7, y: 5.5 }

export function brief(run: Recorder, choices: Choices): void {
  const sources = ['f1', 'f2', 'fx', 'lv', 'switch-27', 'switch-31']
  run.order('pic', 'read-order', { values: { sources } })
  run.order('pic', 'choose-earths', { values: { place: 'work-position', arrangement: 'chain', area: 25 } })
  run.order('gw', 'park-truck', { values: { at: { x: -14, y: 10 } } })
  run.order('pic', 'check-crew')
  run.order('pic', 'read-weather')
  for (const hazard of hazards) run.order('pic', 'mark-hazard', { on: `hazard-${hazard}` })
  run.order('pic', 'answer-livening', { values: { possible: 'yes', from: 'fx', control: 'block-reclose' } })
  run.order('pic', 'write-plan', { values: { cards: plan(choices) } })
  run.order('pic', 'ask-feeder-out', { on: 'fx' })
  for (const feeder of ['f1', 'f2', 'fx']) run.order('pic', 'ask-reclose-block', { on: feeder })
  run.order('pic', 'walk', { values: { to: lookout } })
  run.order('pic', 'match-pole', { on: 'pole' })
  run.wait()
  run.order('pic', 'hold-briefing')
  run.wait()
  for (const who of ['pic', 'pw', 'gw', 'so']) run.order(who, 'sign-on')
  run.wait()
}

/** The cards of the plan: act, item, place. */
function plan({ lead, bond, rod, isRubberAloft }: Choices): readonly string[] {
  return [
    `drive-rod:${rod}:ground`,
    `clamp-earth-end:${lead}:rod/${rod}`,
    ...['conductor-a', 'conductor-b', 'conductor-c'].map((on) => `test:D-04:${on}`),
    `clamp:${lead}:conductor-a`,
    `clamp:${lead}:conductor-b`,
    `clamp:${lead}:conductor-c`,
    ...(isRubberAloft ? [] : ['fit-cover:C-15:pole']), // where rubber gloves are the way, no cover is meant
    `bond-metal:${bond}:arm`,
    `bond-line:${bond}:conductor-b`,
  ]
}
