/**
 * What the chosen thing affords to the chosen person: a plate with the act the hand would do, and below it every act by
 * name, A to Z; impossible ones struck through with the world's reason.
 */
import { type KeyboardEvent, useMemo } from 'react'
import { useStore } from 'zustand'
import { type Speaker, say, timeOfDay } from '../../../text'
import { type Afford, affordsOf, findHandAct } from '../../stores/affords'
import { jobStore } from '../../stores/jobStore'
import { closeSheet, openSheet, viewStore } from '../../stores/viewStore'
import { useBelief } from '../useBelief'
import { useSpeaker } from '../useSpeaker'
import { ActForm } from './ActForm'
import { focusTree, giveAfford } from './giving'

export function ActionSlip() {
  const belief = useBelief()
  const speaker = useSpeaker()
  const persons = useStore(viewStore, (view) => view.persons)
  const thing = useStore(viewStore, (view) => view.thing)
  const node = useStore(viewStore, (view) => view.node)
  const sheet = useStore(viewStore, (view) => view.sheet)
  const busy = useStore(jobStore, (job) => job.busy)
  const who = persons[0]
  // Belief changes with every order and every second: what can be done may have changed with it.
  const affords = useMemo(
    () => (belief && who ? inAlphabet(affordsOf(who, thing), speaker) : []),
    [belief, who, thing, speaker],
  )
  const hand = useMemo(() => (belief && who ? findHandAct(who, thing) : undefined), [belief, who, thing])
  if (!who) return null
  const open = affords.find((it) => it.key === sheet?.act)
  const until = busy.find((it) => it.who === who)?.end
  const title = thing === null ? (node === 'crew' ? say('tree.crew') : '') : thingName(speaker, belief, thing)
  return (
    <section className="slip" aria-label={say('slip.label')} onKeyDown={onKeyDown}>
      <h3>
        {title}
        <span className="q">{persons.map((id) => speaker.say(`person.${id}`)).join(', ')}</span>
      </h3>
      {until !== undefined && (
        <p className="note slipnote">{say('slip.busy', { time: timeOfDay(belief.sheet.startsAt + until) })}</p>
      )}
      {hand && !open && (
        <button type="button" className="act plate" data-plate onClick={() => giveAfford(hand, persons)}>
          <span className="nm">
            <kbd>Enter</kbd> {actName(speaker, hand)}
          </span>
        </button>
      )}
      <div className="acts" role="group" aria-label={say('slip.acts')}>
        {affords.map((afford) =>
          afford === open ? (
            <ActForm
              key={afford.key}
              afford={afford}
              title={actName(speaker, afford)}
              speaker={speaker}
              onGive={(values) => giveAfford(afford, persons, values)}
            />
          ) : (
            <button
              key={afford.key}
              type="button"
              className="act"
              data-act={afford.key}
              aria-disabled={afford.refusal && afford.refusal.code.split('/')[1] !== 'busy' ? true : undefined}
              onClick={() => {
                if (afford.refusal) return
                if (afford.fields.length > 0) openSheet(afford.key)
                else giveAfford(afford, persons)
              }}
            >
              <span className="nm">{actName(speaker, afford)}</span>
              {afford.refusal && <span className="q">{refusalWords(speaker, afford.refusal)}</span>}
            </button>
          ),
        )}
        {affords.length === 0 && <p className="note slipnote">{say('slip.none')}</p>}
      </div>
    </section>
  )
}

export function actName(speaker: Speaker, afford: Afford): string {
  const name = speaker.say(`action.${afford.act}`)
  return afford.item ? `${name}, ${afford.item}` : name
}

export const refusalWords = (speaker: Speaker, refusal: { code: string; values: Readonly<Record<string, string | number>> }) =>
  speaker.has(`refusal.${refusal.code}`)
    ? speaker.say(`refusal.${refusal.code}`, refusal.values)
    : speaker.say(`refusal.${refusal.code.split('/')[1]}`, refusal.values)

export function thingName(speaker: Speaker, belief: { items: readonly { id: string; type: string }[] }, thing: string): string {
  const item = belief.items.find((it) => it.id === thing)
  return item ? `${item.id} ${speaker.say(`gear.${item.type}`)}` : speaker.say(`thing.${thing}`)
}

const inAlphabet = (affords: readonly Afford[], speaker: Speaker): readonly Afford[] =>
  [...affords].sort((a, b) => (actName(speaker, a) < actName(speaker, b) ? -1 : 1))

/** Arrows walk along the acts, Escape goes back to the list. */
function onKeyDown(event: KeyboardEvent<HTMLElement>): void {
  if (event.key === 'Escape') {
    event.stopPropagation()
    closeSheet()
    focusTree()
    return
  }
  if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return
  if (!(event.target instanceof HTMLElement) || !event.target.matches('.act')) return
  event.preventDefault()
  const acts = [...event.currentTarget.querySelectorAll<HTMLElement>('button.act')]
  const next = acts[acts.indexOf(event.target) + (event.key === 'ArrowDown' ? 1 : -1)]
  next?.focus()
}
