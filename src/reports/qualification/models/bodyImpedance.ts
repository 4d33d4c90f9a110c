/** `body-impedance`: total impedance of the body along a path at a voltage across it. */
import { bodyImpedance, impedancePaths, percentiles, skins } from '../../../engine'
import { model } from '../model'

export const bodyImpedanceModel = model(
  'body-impedance',
  (inputs) => ({
    voltage: inputs.number('touchVoltageV', { atLeast: 0 }),
    percentile: inputs.oneOf('percentile', percentiles),
    path: inputs.oneOf('path', impedancePaths),
    skin: inputs.oneOf('skin', skins),
  }),
  ({ voltage, percentile, path, skin }) => ({ impedanceOhm: bodyImpedance(voltage, percentile, skin, path) }),
)
