/** `conductor`: a bare overhead conductor by its construction. */
import { acResistance, conductorTypes, conductorValues } from '../../../engine'
import { model } from '../model'

const metresPerKilometre = 1000
const millimetresPerMetre = 1000

export const conductorModel = model(
  'conductor',
  (inputs) => ({
    type: inputs.oneOf('type', conductorTypes),
    frequency: inputs.number('frequencyHz', { above: 0 }),
    temperature: inputs.number('temperatureC'),
  }),
  ({ type, frequency, temperature }) => {
    const { radius, gmr, resistance20 } = conductorValues(type)
    return {
      diameterMm: 2 * radius * millimetresPerMetre,
      gmrMm: gmr * millimetresPerMetre,
      dc20OhmPerKm: resistance20 * metresPerKilometre,
      acOhmPerKm: acResistance(type, frequency, temperature) * metresPerKilometre,
    }
  },
)
