/**
 * Whether a sound layer of a class holds a voltage: up to its maximum use voltage it holds, up to its proof voltage it may
 * fail, above that it conducts. A class promises use, not proof: the proof lasts minutes, on a new or re-tested item.
 */
import { invariant } from '../../units/invariant'
import type { InsulationRating } from './rating'

export type Withstand = 'holds' | 'may-fail' | 'fails'

/** Judgement of `voltage` (V rms across the layer). @throws when it is not a number. */
export function withstand(rating: Pick<InsulationRating, 'maxUse' | 'proofTest'>, voltage: number): Withstand {
  invariant(!Number.isNaN(voltage), 'a numeric layer voltage', voltage)
  const across = Math.abs(voltage)
  if (across <= rating.maxUse) return 'holds'
  return across <= rating.proofTest ? 'may-fail' : 'fails'
}
