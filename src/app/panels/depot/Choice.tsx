/** One of several, as a row with its note. The group is one stop of the Tab key; up and down go along it. */
import type { KeyboardEvent, ReactNode } from 'react'

export function Choices({ label, children }: { label: string; children: ReactNode }) {
  return (
    <div role='radiogroup' aria-label={label} onKeyDown={walk}>
      {children}
    </div>
  )
}

function walk(event: KeyboardEvent<HTMLElement>): void {
  const by = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0
  const rows = [...event.currentTarget.querySelectorAll('button')]
  const next = rows[rows.findIndex((row) => row === event.target) + by]
  if (by === 0 || !next) return
  event.preventDefault()
  next.focus()
  next.click()
}

interface ChoiceProps {
  readonly name: string
  readonly note?: string
  readonly isChosen: boolean
  /** The Tab key comes here although it is not chosen: none of the group is. */
  readonly isStop?: boolean
  readonly onChoose: () => void
}

export function Choice({ name, note, isChosen, isStop = false, onChoose }: ChoiceProps) {
  return (
    <button
      type='button'
      className='pick'
      role='radio'
      aria-checked={isChosen}
      tabIndex={isChosen || isStop ? 0 : -1}
      onClick={onChoose}
    >
      <span className='dot' />
      <span>
        {name}
        {note && (
          <>
            <br />
            <span className='q'>{note}</span>
          </>
        )}
      </span>
    </button>
  )
}
