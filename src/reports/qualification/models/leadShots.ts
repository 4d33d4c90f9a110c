/** `lead-shots`: temperature of a lead after shots one after the other, no heat lost; at the melting point it opens. */
import { conductorMaterials, temperatureAfter } from '../../../engine'
import { model } from '../model'

const squareMetresPerSquareMillimetre = 1e-6

export const leadShotsModel = model(
  'lead-shots',
  (inputs) => ({
    material: inputs.oneOf('material', conductorMaterials),
    area: inputs.number('areaMm2', { above: 0 }) * squareMetresPerSquareMillimetre,
    initialC: inputs.number('initialC'),
    shots: inputs.list('shots', (shot) => ({
      current: shot.number('currentA', { atLeast: 0 }),
      duration: shot.number('durationS', { atLeast: 0 }),
    })),
  }),
  ({ material, area, initialC, shots }) => ({
    temperatureC: shots.reduce(
      (temperature, shot) => temperatureAfter(material, area, shot.current, temperature, shot.duration),
      initialC,
    ),
  }),
)
