/** Switching by steps, blades looked at, locks and tags, the permit. */
import type { Choices } from '../choices'
import type { Recorder } from '../recorder'

/** The right read-back of the permit: pole and points of isolation. */
const limits = 'P117 27 31'

export function isolate(run: Recorder, choices: Choices): void {
  if (choices.isSwitched) switchOut(run, choices)
  run.order('so', 'report-isolated')
  run.wait()
  run.order('pic', 'take-permit', { values: { readBack: limits } })
  run.order('pic', 'show-boundary')
  run.wait()
}

function switchOut(run: Recorder, choices: Choices): void {
  const { mainEarth } = choices
  // Mat and earthing set fill both hands: whoever carries both puts the gloves on first.
  if (mainEarth !== null) run.order('so', 'wear', { on: 'G-31' })
  for (const id of ['K-71', 'K-72', 'T-81', 'T-82', 'M-1', mainEarth ?? 'G-31']) run.order('so', 'take', { on: id })
  run.order('so', 'walk', { on: 'switch-27' })
  receive(run, 'switch-27', '27', 'open')
  if (mainEarth === null) run.order('so', 'wear', { on: 'G-31' })
  run.order('so', 'step-on-mat')
  if (mainEarth !== null) run.order('so', 'put-down', { on: mainEarth })
  run.order('so', 'open-switch', { on: 'switch-27' })
  lookAtBlades(run, 'switch-27', choices)
  run.order('so', 'lock', { on: 'switch-27', with: 'K-71' })
  run.order('so', 'tag', { on: 'switch-27', with: 'T-81' })
  run.order('so', 'step-off-mat')
  if (mainEarth !== null)
    matAside(run, () => run.order('so', 'earth-isolation-point', { on: 'switch-27', with: mainEarth }))
  run.order('so', 'walk', { on: 'switch-31' })
  receive(run, 'switch-31', '31', 'open')
  lookAtBlades(run, 'switch-31', choices)
  run.order('so', 'set-local', { on: 'switch-31' })
  run.order('so', 'lock', { on: 'switch-31', with: 'K-72' })
  run.order('so', 'tag', { on: 'switch-31', with: 'T-82' })
  run.order('so', 'walk', { on: 'truck' })
}

function receive(run: Recorder, device: string, label: string, to: 'open' | 'closed'): void {
  run.order('so', 'receive-step', { on: device, values: { to, readBack: label } })
  run.order('so', 'read-label', { on: device })
}

function lookAtBlades(run: Recorder, device: string, { looksAtBlades }: Choices): void {
  if (!looksAtBlades) return
  for (const phase of ['A', 'B', 'C']) run.order('so', 'look', { on: `${device}/${phase}` })
}

export function switchBack(run: Recorder, { mainEarth }: Choices): void {
  run.order('so', 'walk', { on: 'switch-31' })
  receive(run, 'switch-31', '31', 'open')
  run.order('so', 'untag', { on: 'switch-31' })
  run.order('so', 'unlock', { on: 'switch-31' })
  run.order('so', 'set-remote', { on: 'switch-31' })
  run.order('so', 'walk', { on: 'switch-27' })
  receive(run, 'switch-27', '27', 'closed')
  if (mainEarth !== null) {
    matAside(run, () => {
      run.order('so', 'clear-isolation-earth', { on: 'switch-27' })
      run.order('so', 'put-down', { on: mainEarth })
    })
  }
  run.order('so', 'untag', { on: 'switch-27' })
  run.order('so', 'unlock', { on: 'switch-27' })
  run.order('so', 'step-on-mat')
  run.order('so', 'close-switch', { on: 'switch-27' })
  for (const phase of ['A', 'B', 'C']) run.order('so', 'look', { on: `switch-27/${phase}` })
  run.order('so', 'step-off-mat')
  if (mainEarth !== null) run.order('so', 'take', { on: mainEarth })
  run.order('so', 'walk', { on: 'truck' })
}

/** An earthing set takes both hands. */
function matAside(run: Recorder, work: () => void): void {
  run.order('so', 'put-down', { on: 'M-1' })
  work()
  run.order('so', 'take', { on: 'M-1' })
}
