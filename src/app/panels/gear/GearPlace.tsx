/**
 * The tarp: the register on the left, the item that is turned over on the right. Three keys look, label, test; two pass
 * or quarantine. What comes back is evidence, never a verdict.
 */
import { type KeyboardEvent, useMemo } from 'react'
import { useStore } from 'zustand'
import type { Belief, ItemBelief } from '../../../engine'
import { type Speaker, say } from '../../../text'
import { type Handlers, digitOf, useKeys } from '../../input/useKeys'
import { jobStore } from '../../stores/jobStore'
import { goOn, undo, withdraw } from '../../stores/orders'
import { chooseKeeper, choosePersons, chooseThing, viewStore } from '../../stores/viewStore'
import { crewInOrder } from '../site/crewInOrder'
import { lettersOf } from '../site/lettersOf'
import { refusalWords } from '../site/ActionSlip'
import { giveNamedTo } from '../site/giving'
import { useBelief } from '../useBelief'
import { useSpeaker } from '../useSpeaker'
import { ItemSheet } from './ItemSheet'
import { Register } from './Register'
import { judge, turnOver, turnOverAgain } from './turnOver'

export function GearPlace() {
  const belief = useBelief()
  const speaker = useSpeaker()
  const thing = useStore(viewStore, (view) => view.thing)
  const item = belief.items.find((it) => it.id === thing) ?? belief.items[0]
  const inHand = useStore(viewStore, (view) => view.inHand)
  const shown = belief.items.find((it) => it.id === inHand) ?? item
  useGearKeys(belief, item)
  return (
    <main className='cols gear'>
      <section className='stack' aria-label={say('gear.register')}>
        <h1 className='sec'>
          {say('gear.register')}
          <span className='q'>{countWords(belief)}</span>
        </h1>
        <Register belief={belief} speaker={speaker} chosen={item?.id ?? ''} onChoose={(id) => chooseThing(id)} />
        <Who belief={belief} speaker={speaker} />
      </section>
      <section className='stack' aria-label={say('gear.item')}>
        {shown && (
          <ItemSheet item={shown} next={item && item !== shown ? item : null} belief={belief} speaker={speaker} />
        )}
      </section>
    </main>
  )
}

const countWords = (belief: Belief): string =>
  say('gear.counts', {
    out: belief.items.filter((it) => it.bookedOut).length,
    all: belief.items.length,
    aside: belief.items.filter((it) => it.verdict === 'quarantine').length,
  })

/** Who signs the register, and who turns it over. */
function Who({ belief, speaker }: { belief: Belief; speaker: Speaker }) {
  const persons = useStore(viewStore, (view) => view.persons)
  const keeper = useStore(viewStore, (view) => view.keeper) ?? persons[0]
  const busy = useStore(jobStore, (job) => job.busy)
  const notices = useStore(jobStore, (job) => job.notices)
  return (
    <>
      <div className='gearwho'>
        <Crew label={say('gear.keeper')} belief={belief} chosen={keeper} onChoose={chooseKeeper} />
        <Crew label={say('gear.who')} belief={belief} chosen={persons[0]} onChoose={(id) => choosePersons([id])} />
      </div>
      <p className='note' role='status'>
        {notices.map((notice) => refusalWords(speaker, notice)).join(' ') ||
          busy.map((doing) => `${lettersOf(belief, doing.who)}: ${speaker.say(`action.${doing.act}`)}`).join('. ')}
      </p>
    </>
  )
}

interface CrewProps {
  readonly label: string
  readonly belief: Belief
  readonly chosen: string | undefined
  readonly onChoose: (id: string) => void
}

function Crew({ label, belief, chosen, onChoose }: CrewProps) {
  return (
    <div>
      <p className='note'>{label}</p>
      <div className='seg' role='radiogroup' aria-label={label} onKeyDown={(event) => walkRadios(event, onChoose)}>
        {crewInOrder(belief).map((person) => (
          <button
            key={person.id}
            type='button'
            role='radio'
            className='btn'
            aria-checked={person.id === chosen}
            tabIndex={person.id === chosen ? 0 : -1}
            data-person={person.id}
            onClick={() => onChoose(person.id)}
          >
            {lettersOf(belief, person.id)}
          </button>
        ))}
      </div>
    </div>
  )
}

/** As radio buttons do: the arrow keys choose. */
function walkRadios(event: KeyboardEvent<HTMLElement>, onChoose: (id: string) => void): void {
  const by = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0
  const buttons = [...event.currentTarget.querySelectorAll('button')]
  const next = buttons[buttons.findIndex((button) => button === event.target) + by]
  if (by === 0 || !next?.dataset.person) return
  event.preventDefault()
  onChoose(next.dataset.person)
  next.focus()
}

function useGearKeys(belief: Belief, item: ItemBelief | undefined): void {
  const handlers = useMemo((): Handlers => {
    const crew = crewInOrder(belief).map((person) => person.id)
    const on = (act: (id: string) => void) => () => {
      if (item) act(item.id)
    }
    return {
      choosePerson: (key) => {
        const id = crew[digitOf(key)]
        if (id) choosePersons([id])
      },
      markPerson: (key) => {
        const id = crew[digitOf(key)]
        if (id) chooseKeeper(id)
      },
      look: on((id) => turnOver('look', id)),
      label: on((id) => turnOver('read-label', id)),
      test: on((id) => turnOver('test-item', id)),
      pass: () => item && judge(item, 'pass'),
      quarantine: () => item && judge(item, 'quarantine'),
      bookOut: on((id) => turnOver('book-out', id)),
      take: on((id) => giveNamedTo('take', viewStore.getState().persons.slice(0, 1), id)),
      again: on(turnOverAgain),
      goOn: () => void goOn(),
      withdraw,
      ...(belief.sheet.purpose === 'practise' ? { undo } : {}),
    }
  }, [belief, item])
  useKeys(handlers)
}
