/** Stay: its upper part hangs on the arm's metalwork, the insulator leaks to the lower part, which is the anchor. */
import type { Element } from '../../physics/network'
import type { Stay } from '../../site/scenario'
import { armNode, stayLowerNode, stayUpperNode } from './nodes'
import { resistor } from './parts'

export function stay(it: Stay): readonly Element[] {
  return [
    resistor('stay/fixing', stayUpperNode, armNode, it.fixing),
    resistor('stay/insulator', stayUpperNode, stayLowerNode, it.insulatorLeakage),
  ]
}
