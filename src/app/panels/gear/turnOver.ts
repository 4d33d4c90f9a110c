/**
 * On the tarp: whoever looks, reads or tests has done it when the evidence is read; nothing to watch. *Again* does with
 * the next item what was done with the last one, in the same order, as far as it can be done; the verdict is always new.
 */
import { hasPrint } from '../../stores/affords'
import { goOnUntilFree } from '../../stores/orders'
import type { ItemBelief } from '../../../engine'
import { holdInHand, viewStore } from '../../stores/viewStore'
import { giveNamedTo } from '../site/giving'

type Step = 'book-out' | 'look' | 'read-label' | 'test-item'

interface Handling {
  readonly item: string
  readonly steps: readonly { readonly act: Step }[]
}

let handling: Handling | null = null

export function turnOver(act: Step, item: string): void {
  const { persons, keeper } = viewStore.getState()
  const who = act === 'book-out' ? (keeper ?? persons[0]) : persons[0]
  if (!who) return
  const steps = handling?.item === item ? handling.steps : []
  handling = { item, steps: [...steps, { act }] }
  holdInHand(item)
  handle(act, who, item)
}

export function turnOverAgain(item: string): void {
  if (!handling || handling.item === item) return
  const { persons, keeper } = viewStore.getState()
  for (const { act } of handling.steps) {
    const who = act === 'book-out' ? (keeper ?? persons[0]) : persons[0]
    // Where nothing but the number is printed there is nothing to read.
    if (who && !(act === 'read-label' && !hasPrint(item))) handle(act, who, item)
  }
  handling = { ...handling, item }
  holdInHand(item)
}

function handle(act: Step, who: string, item: string): void {
  giveNamedTo(act, [who], item)
  goOnUntilFree([who])
}

/**
 * What is in the hand goes on one of the two piles, and the hand reaches for the next: an item that is pointed at and that
 * nobody has turned over is turned over as the last one was.
 */
export function judge(pointedAt: ItemBelief, verdict: 'pass' | 'quarantine'): void {
  const { inHand, persons } = viewStore.getState()
  const item = inHand ?? pointedAt.id
  giveNamedTo('judge', persons.slice(0, 1), item, { verdict })
  holdInHand(null)
  if (item === pointedAt.id || pointedAt.bookedOut || !goOnUntilFree(persons.slice(0, 1))) return
  turnOverAgain(pointedAt.id)
}
