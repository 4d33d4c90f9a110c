/** `lead-heating`: time until a lead reaches a temperature, no heat lost; `never` without current. */
import { adiabaticTime, conductorMaterials } from '../../../engine'
import { model } from '../model'

const squareMetresPerSquareMillimetre = 1e-6

export const leadHeatingModel = model(
  'lead-heating',
  (inputs) => ({
    material: inputs.oneOf('material', conductorMaterials),
    area: inputs.number('areaMm2', { above: 0 }) * squareMetresPerSquareMillimetre,
    current: inputs.number('currentA', { atLeast: 0 }),
    initialC: inputs.number('initialC'),
    limitC: inputs.number('limitC'),
  }),
  ({ material, area, current, initialC, limitC }) => ({
    timeS: adiabaticTime(material, area, current, initialC, limitC),
  }),
)
