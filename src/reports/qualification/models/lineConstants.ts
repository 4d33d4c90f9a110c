/** `line-constants`: series impedance of overhead conductors with earth return, all but the first `keep` reduced away. */
import { kronReduce, seriesImpedance } from '../../../engine'
import { model } from '../model'

const metresPerKilometre = 1000

export const lineConstantsModel = model(
  'line-constants',
  (inputs) => {
    const conductors = inputs.list('conductors', (conductor) => ({
      x: conductor.number('xM'),
      y: conductor.number('yM', { above: 0 }),
      acResistance: conductor.number('acOhmPerKm', { atLeast: 0 }) / metresPerKilometre,
      gmr: conductor.number('gmrM', { above: 0 }),
    }))
    const keep = inputs.whole('keep', { atLeast: 1 })
    if (keep > conductors.length) inputs.refuse(`keep is ${keep}, but there are ${conductors.length} conductors`)
    return {
      frequency: inputs.number('frequencyHz', { above: 0 }),
      earthResistivity: inputs.number('earthOhmM', { above: 0 }),
      conductors,
      keep,
    }
  },
  ({ frequency, earthResistivity, conductors, keep }) => {
    const primitive = seriesImpedance(frequency, earthResistivity, conductors)
    const reduced = keep === conductors.length ? primitive : kronReduce(primitive, keep)
    return {
      resistanceOhmPerKm: reduced.map((row) => row.map(({ re }) => re * metresPerKilometre)),
      reactanceOhmPerKm: reduced.map((row) => row.map(({ im }) => im * metresPerKilometre)),
    }
  },
)
