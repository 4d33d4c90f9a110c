/**
 * Which path of IEC 60479-1 two limbs make. The thigh is no contact of that table: it is judged by the factor of that
 * hand to the feet (own choice, careful). A leg alone is foot to foot. Both hands sharing one way in or out count 1.0.
 */
import type { ShockPath } from '../../physics/body'
import type { Limb } from '../../site/contact'

export function shockPathOf(a: Limb, b: Limb, areBothHandsOneWay: boolean): ShockPath {
  const hand = [a, b].find((it) => it === 'left-hand' || it === 'right-hand')
  if (hand === undefined) return a === 'chest' || b === 'chest' ? 'left-hand-feet' : 'foot-foot'
  const other = hand === a ? b : a
  if (other === 'left-hand' || other === 'right-hand') return 'hand-hand'
  if (other === 'chest') return hand === 'left-hand' ? 'chest-left-hand' : 'chest-right-hand'
  if (areBothHandsOneWay) return 'both-hands-feet'
  return hand === 'left-hand' ? 'left-hand-feet' : 'right-hand-feet'
}
