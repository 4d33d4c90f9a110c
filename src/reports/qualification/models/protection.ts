/** `protection`: operating time of a relay at a steady current; `never` at or below pickup. */
import { curveNames, operatingTime } from '../../../engine'
import { model } from '../model'

export const protectionModel = model(
  'protection',
  (inputs) => ({
    curve: inputs.oneOf('curve', curveNames),
    pickup: inputs.number('pickupA', { above: 0 }),
    multiplier: inputs.number('multiplier', { atLeast: 0 }),
    current: inputs.number('currentA', { atLeast: 0 }),
  }),
  ({ curve, pickup, multiplier, current }) => ({ timeS: operatingTime(curve, pickup, multiplier, current) }),
)
