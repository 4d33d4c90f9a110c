/** An act that needs figures, opened in place: Enter goes to the next empty field, and gives the order when all are filled. */
import { useEffect, useRef, useState } from 'react'
import type { Value } from '../../../engine'
import { type Speaker, say } from '../../../text'
import type { Afford, Field } from '../../stores/affords'
import { type Entries, valueOf } from '../../stores/entries'
import { closeForm, openForm } from '../../stores/formStore'
import { FieldEntry } from './FieldEntry'

export interface ActFormProps {
  readonly afford: Afford
  readonly title: string
  readonly speaker: Speaker
  readonly onGive: (values: Readonly<Record<string, Value>>) => void
}

const control = 'input, .pick, [data-aim]'

export function ActForm({ afford, title, speaker, onGive }: ActFormProps) {
  const [entries, setEntries] = useState<Entries>({})
  const form = useRef<HTMLFormElement>(null)
  const { fields } = afford

  // Its first line comes to the top of the slip, so that as much of it as there is room for is seen.
  useEffect(() => {
    const { current } = form
    const acts = current?.parentElement
    if (acts) acts.scrollTop = current.offsetTop - acts.offsetTop
    current?.querySelector<HTMLElement>(control)?.focus({ preventScroll: true })
  }, [])

  // Hands in the picture write into the same fields.
  useEffect(() => openForm({ afford, entries, change: (some) => setEntries((before) => ({ ...before, ...some })) }))
  useEffect(() => closeForm, [])

  const giveOrFocus = (now: Entries) => {
    const missing = fields.findIndex((field) => valueOf(field, now[field.name] ?? {}) === undefined)
    if (missing === -1) return onGive(valuesOf(fields, now))
    form.current?.querySelectorAll<HTMLElement>('[data-field]')[missing]?.querySelector<HTMLElement>(control)?.focus()
  }

  return (
    <form
      ref={form}
      className='act open'
      aria-label={title}
      data-form={afford.key}
      onSubmit={(event) => {
        event.preventDefault()
        giveOrFocus(entries)
      }}
    >
      <b className='nm'>{title}</b>
      {fields.map((field) => (
        <div key={field.name} data-field={field.name}>
          <FieldEntry
            act={afford.act}
            field={field}
            entry={entries[field.name] ?? {}}
            speaker={speaker}
            onChange={(entry) => setEntries({ ...entries, [field.name]: entry })}
            onFilled={(entry) => {
              const now = { ...entries, [field.name]: entry }
              setEntries(now)
              giveOrFocus(now)
            }}
          />
        </div>
      ))}
      <div className='foot'>
        <button type='submit' className='btn go'>
          {say('site.give')}
        </button>
      </div>
    </form>
  )
}

function valuesOf(fields: readonly Field[], entries: Entries): Readonly<Record<string, Value>> {
  return Object.fromEntries(
    fields.flatMap((field) => {
      const value = valueOf(field, entries[field.name] ?? {})
      return value === undefined ? [] : [[field.name, value]]
    }),
  )
}
