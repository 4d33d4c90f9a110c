/** Where the keyboard goes next: back to the list after an order, or to the acts of the chosen thing. */

import { flushSync } from 'react-dom'
import { takeSlip } from '../../stores/viewStore'

const chosenRow = '[role="treeitem"][aria-selected="true"], [role="option"][aria-selected="true"]'

export const focusTree = (): void => focusSoon(chosenRow)

export function focusActs(): void {
  // Drawn before the next key comes, so that the key is the slip's and not the list's.
  flushSync(takeSlip)
  focusSoon('.slip .act')
}

/** At once if it is there; else, or when the sheet has been drawn anew without it, as soon as it is drawn. */
function focusSoon(selector: string): void {
  const find = () => document.querySelector<HTMLElement>(selector)
  const wasThere = find() !== null
  find()?.focus()
  requestAnimationFrame(() => {
    if (!wasThere || !document.activeElement || document.activeElement === document.body) find()?.focus()
  })
}
