/** What differs from the edition on the shelf, field by field. */
import { useMemo } from 'react'
import { useStore } from 'zustand'
import { say } from '../../../text/office'
import { type Draft, changesOf } from '../../stores/office/draft'
import { officeStore, shippedDraft } from '../../stores/office/officeStore'
import { PlaceLine } from './PlaceLine'

export function Changes({ draft }: { draft: Draft }) {
  const origin = useStore(officeStore, (office) => office.origin)
  const before = useMemo(() => origin && shippedDraft(origin), [origin])
  const changes = useMemo(() => (before ? changesOf(before, draft) : []), [before, draft])
  return (
    <div>
      <h2 className='sec gap'>
        {say('office.changes')}
        <span className='q n'>{changes.length}</span>
      </h2>
      {changes.length === 0 && <p className='q gap'>{say(before ? 'office.noChanges' : 'office.noOrigin')}</p>}
      <ul>
        {changes.map((it) => (
          <PlaceLine
            key={`${it.name} ${it.place.join(' ')}`}
            draft={draft}
            place={it.place}
            name={it.name}
            words={say('office.was', { before: shown(it.before), now: shown(it.now) })}
          />
        ))}
      </ul>
    </div>
  )
}

function shown(value: unknown): string {
  if (value === undefined) return say('office.nothing')
  const text = typeof value === 'string' ? value : JSON.stringify(value)
  return text.length > 90 ? `${text.slice(0, 88)}…` : text
}
