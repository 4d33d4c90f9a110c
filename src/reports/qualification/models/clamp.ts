/** `clamp`: what a fault current does to a clamp: until its seat burns off, and the first pull of the cable on it. */
import { contactBurnTime, pullAtClamp } from '../../../engine'
import { model } from '../model'

export const clampModel = model(
  'clamp',
  (inputs) => ({
    current: inputs.number('currentA', { atLeast: 0 }),
    resistance: inputs.number('contactOhm', { atLeast: 0 }),
    heat: inputs.number('heatTakenJ', { atLeast: 0 }, 0),
    length: inputs.number('cableM', { above: 0 }),
    distance: inputs.number('returnM', { above: 0 }),
  }),
  ({ current, resistance, heat, length, distance }) => ({
    burnS: contactBurnTime(resistance, current, heat),
    pullN: pullAtClamp(current, length, distance),
  }),
)
