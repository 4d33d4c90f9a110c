/** Look, label, test on the tarp: whoever does it has done it when the evidence is read. Nothing to watch. */
import { goOnUntilFree } from '../../stores/orders'
import { viewStore } from '../../stores/viewStore'
import { giveNamed } from '../site/giving'

export function turnOver(act: 'look' | 'read-label' | 'test-item'): void {
  giveNamed(act)
  goOnUntilFree(viewStore.getState().persons.slice(0, 1))
}
