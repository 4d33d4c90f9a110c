/** Where the keyboard goes next: back to the list after an order, or to the acts of the chosen thing. */

const chosenRow = '[role="treeitem"][aria-selected="true"], [role="option"][aria-selected="true"]'

export function focusTree(): void {
  requestAnimationFrame(() => document.querySelector<HTMLElement>(chosenRow)?.focus())
}

export function focusActs(): void {
  requestAnimationFrame(() => document.querySelector<HTMLElement>('.slip .act')?.focus())
}
