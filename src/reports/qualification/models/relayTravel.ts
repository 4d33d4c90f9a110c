/**
 * `relay-travel`: a relay's travel after a sequence of currents, 0 at rest, 1 when it has operated, and when that was;
 * `reset` is what its travel does at or below pickup.
 */
import { curveNames, relayProgress, relayResets, timeToOperate } from '../../../engine'
import { model } from '../model'

export const relayTravelModel = model(
  'relay-travel',
  (inputs) => ({
    setting: {
      curve: inputs.oneOf('curve', curveNames),
      pickup: inputs.number('pickupA', { above: 0 }),
      multiplier: inputs.number('multiplier', { atLeast: 0 }),
    },
    reset: inputs.oneOf('reset', relayResets),
    steps: inputs.list('steps', (step) => ({
      current: step.number('currentA', { atLeast: 0 }),
      duration: step.number('durationS', { atLeast: 0 }),
    })),
  }),
  ({ setting, reset, steps }) => {
    let travel = 0
    let now = 0
    for (const { current, duration } of steps) {
      const wait = timeToOperate(setting, travel, current)
      if (wait !== 'never' && wait <= duration) return { travel: 1, operatesS: now + wait }
      travel = relayProgress(setting, travel, current, duration, reset)
      now += duration
    }
    return { travel, operatesS: 'never' }
  },
)
