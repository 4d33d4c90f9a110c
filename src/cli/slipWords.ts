/**
 * The worst slip of each person at one instant, beside what is graded and never graded itself: one free limb on one more
 * uncovered thing within reach.
 */
import { type Moment, declaredCorner, isUnsolvable, slipsOf } from '../engine'
import { say, type Speaker } from '../text'
import { exposureWords } from './exposureWords'
import { wordFor } from './words'

export function slipLines(moment: Moment, livening: string, speaker: Speaker): readonly string[] {
  return moment.bodies.flatMap(({ person }) => {
    const [worst] = slipsOf(moment, person, livening, declaredCorner)
    if (worst === undefined) return []
    if (isUnsolvable(worst))
      return [`  a slip of ${person}: cannot be solved (${worst.node}: ${say(`unsolved.${worst.reason}`)})`]
    const on = 'id' in worst.on ? worst.on.id : 'item' in worst.on ? worst.on.item : worst.on.kind
    const through = worst.through.length > 0 ? ` through ${worst.through.join(', ')}` : ''
    return [
      `  if the ${wordFor(speaker, 'limb', worst.limb)} slips onto ${on}${through}: ${exposureWords(worst.exposure, speaker)}`,
    ]
  })
}
