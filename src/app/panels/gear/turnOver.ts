/**
 * On the tarp: whoever looks, reads or tests has done it when the evidence is read; nothing to watch. *Again* does with
 * the next item what was done with the last one, in the same order, as far as it can be done; the verdict is always new.
 */
import { hasPrint } from '../../stores/affords'
import { goOnUntilFree } from '../../stores/orders'
import { viewStore } from '../../stores/viewStore'
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
}

function handle(act: Step, who: string, item: string): void {
  giveNamedTo(act, [who], item)
  goOnUntilFree([who])
}

export function judge(item: string, verdict: 'pass' | 'quarantine'): void {
  giveNamedTo('judge', viewStore.getState().persons.slice(0, 1), item, { verdict })
}
