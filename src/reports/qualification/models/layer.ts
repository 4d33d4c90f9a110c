/**
 * `layer`: an insulating layer of a class at a voltage: whether it holds, may fail or fails, and what it lets through while
 * it holds: a plate capacitor beside its leakage.
 */
import {
  insulatingItems,
  insulationClasses,
  insulationRating,
  layerAdmittance,
  magnitude,
  withstand,
} from '../../../engine'
import { model } from '../model'

export const layerModel = model(
  'layer',
  (inputs) => ({
    item: inputs.oneOf('item', insulatingItems),
    cls: inputs.oneOf('class', insulationClasses),
    voltage: inputs.number('voltageV', { atLeast: 0 }),
    frequency: inputs.number('frequencyHz', { atLeast: 0 }),
    area: inputs.number('areaM2', { above: 0 }),
    thickness: inputs.number('thicknessM', { above: 0 }),
    permittivity: inputs.number('relativePermittivity', { above: 0 }),
    leakage: inputs.number('leakageOhm', { above: 0 }),
  }),
  ({ item, cls, voltage, frequency, area, thickness, permittivity, leakage }) => ({
    did: withstand(insulationRating(item, cls), voltage),
    currentA: voltage * magnitude(layerAdmittance(frequency, area, thickness, permittivity, leakage)),
  }),
)
