/** Keys of the table, wherever the focus is, except where something is being written. */
import { useEffect } from 'react'
import { viewStore } from '../stores/viewStore'
import { type Intent, findIntent } from './keyTable'

export type Handlers = Partial<Record<Intent, (event: KeyboardEvent) => void>>

export function useKeys(handlers: Handlers): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.altKey || event.ctrlKey || event.metaKey || viewStore.getState().dialog !== null) return
      if (document.querySelector('dialog[open]') || isWriting(event.target)) return
      const digit = /^Digit([1-4])$/.exec(event.code)
      const intent = digit ? (event.shiftKey ? 'markPerson' : 'choosePerson') : findIntent(event.key)
      const handle = intent && handlers[intent]
      if (!handle || intent === 'move' || intent === 'act' || intent === 'fold') return
      event.preventDefault()
      handle(event)
    }
    window.addEventListener('keydown', onKey)
    return () => window.removeEventListener('keydown', onKey)
  }, [handlers])
}

function isWriting(target: EventTarget | null): boolean {
  return target instanceof HTMLElement && target.matches('input, textarea, select')
}

/** `Digit3` is the third of the crew strip. */
export const digitOf = (event: KeyboardEvent): number => Number(event.code.slice(-1)) - 1
