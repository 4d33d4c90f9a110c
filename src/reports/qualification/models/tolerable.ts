/** `tolerable`: IEEE 80 body current, step and touch voltage. */
import { tolerable, weights } from '../../../engine'
import type { Inputs } from '../inputs'
import { model } from '../model'

export const tolerableModel = model(
  'tolerable',
  (inputs) => ({
    weight: inputs.oneOf('weightKg', weights),
    duration: inputs.number('durationS', { above: 0 }),
    soil: { surface: inputs.number('soilOhmM', { above: 0 }), ...readLayer(inputs) },
  }),
  ({ weight, duration, soil }) => {
    const { current, derating, step, touch } = tolerable(weight, duration, soil)
    return { currentA: current, derating, stepV: step, touchV: touch }
  },
)

function readLayer(inputs: Inputs): { layer?: { resistivity: number; thickness: number } } {
  if (!inputs.has('layerOhmM') && !inputs.has('layerThicknessM')) return {}
  const resistivity = inputs.number('layerOhmM', { above: 0 })
  return { layer: { resistivity, thickness: inputs.number('layerThicknessM', { above: 0 }) } }
}
