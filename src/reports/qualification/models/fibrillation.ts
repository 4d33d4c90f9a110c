/** `fibrillation`: the chance that a current stops the heart, and its interval, per cent. */
import { chanceOfFibrillation } from '../../../engine'
import { model } from '../model'

export const fibrillationModel = model(
  'fibrillation',
  (inputs) => ({
    current: inputs.number('heartEquivalentA', { atLeast: 0 }),
    duration: inputs.number('durationS', { above: 0 }),
  }),
  ({ current, duration }) => {
    const { likely, low, high, beyondRange } = chanceOfFibrillation(current, duration)
    const range = beyondRange ? 'beyond the range' : 'within the range'
    return { likelyPercent: 100 * likely, lowPercent: 100 * low, highPercent: 100 * high, range }
  },
)
