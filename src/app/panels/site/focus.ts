/** Where the keyboard goes next: back to the list after an order, or to the acts of the chosen thing. */

import { takeSlip } from '../../stores/viewStore'

const chosenRow = '[role="treeitem"][aria-selected="true"], [role="option"][aria-selected="true"]'

export const focusTree = (): void => focusSoon(chosenRow)

export function focusActs(): void {
  takeSlip()
  focusSoon('.slip .act')
}

/** At once if it is there, and again when the sheet has been drawn anew. */
function focusSoon(selector: string): void {
  const focus = () => document.querySelector<HTMLElement>(selector)?.focus()
  focus()
  requestAnimationFrame(() => {
    if (!document.activeElement || document.activeElement === document.body) focus()
  })
}
