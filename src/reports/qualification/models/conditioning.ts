/**
 * `conditioning`: whether a circuit has an answer that can be trusted. `answer` is `solved`, or why there is none, and
 * then `node` names where; of a solved one the reciprocal condition, the residual, and the largest voltage.
 */
import { factor, isUnsolvable, magnitude, PI, type Unsolvable } from '../../../engine'
import { model, type Values } from '../model'
import { readElement } from './network'

export const conditioningModel = model(
  'conditioning',
  (inputs) => {
    const frequency = inputs.number('frequencyHz', { atLeast: 0 })
    return inputs.list('elements', (element, index) => readElement(element, String(index), 2 * PI * frequency))
  },
  (elements) => {
    const factored = factor({ elements })
    if (isUnsolvable(factored)) return refusal(factored)
    const solution = factored.solve()
    if (isUnsolvable(solution)) return refusal(solution)
    const largest = Math.max(...factored.nodes.map((node) => magnitude(solution.voltage(node))))
    return {
      answer: 'solved',
      reciprocalCondition: factored.reciprocalCondition,
      residual: solution.residual,
      largestV: largest,
    }
  },
)

function refusal({ reason, node }: Unsolvable): Values {
  return { answer: reason, node }
}
