/**
 * The tarp: the register on the left, the item that is turned over on the right. Three keys look, label, test; two pass
 * or quarantine. What comes back is evidence, never a verdict.
 */
import { useMemo } from 'react'
import { useStore } from 'zustand'
import type { Belief, ItemBelief } from '../../../engine'
import { type Speaker, say } from '../../../text'
import { type Handlers, digitOf, useKeys } from '../../input/useKeys'
import { jobStore } from '../../stores/jobStore'
import { goOn, undo, withdraw } from '../../stores/orders'
import { choosePersons, chooseThing, viewStore } from '../../stores/viewStore'
import { crewInOrder } from '../site/CrewStrip'
import { lettersOf } from '../site/LogColumn'
import { again, giveNamed } from '../site/giving'
import { useBelief } from '../useBelief'
import { useSpeaker } from '../useSpeaker'
import { ItemSheet } from './ItemSheet'
import { Register } from './Register'
import { turnOver } from './turnOver'

export function GearPlace() {
  const belief = useBelief()
  const speaker = useSpeaker()
  const thing = useStore(viewStore, (view) => view.thing)
  const item = belief.items.find((it) => it.id === thing) ?? belief.items[0]
  useGearKeys(belief, item)
  return (
    <main className="cols gear">
      <section className="stack" aria-label={say('gear.register')}>
        <h1 className="sec">
          {say('gear.register')}
          <span className="q">{countWords(belief)}</span>
        </h1>
        <Register belief={belief} speaker={speaker} chosen={item?.id ?? ''} onChoose={(id) => chooseThing(id)} />
        <Who belief={belief} speaker={speaker} />
      </section>
      <section className="stack" aria-label={say('gear.item')}>
        {item && <ItemSheet item={item} belief={belief} speaker={speaker} />}
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

/** Who turns it over and signs the register. */
function Who({ belief, speaker }: { belief: Belief; speaker: Speaker }) {
  const persons = useStore(viewStore, (view) => view.persons)
  const busy = useStore(jobStore, (job) => job.busy)
  const notices = useStore(jobStore, (job) => job.notices)
  return (
    <div className="gearwho">
      <div className="seg" role="radiogroup" aria-label={say('gear.who')}>
        {crewInOrder(belief).map((person) => (
          <button key={person.id} type="button" role="radio" className="btn" aria-checked={persons.includes(person.id)} onClick={() => choosePersons([person.id])}>
            {lettersOf(belief, person.id)}
          </button>
        ))}
      </div>
      <p className="note" role="status">
        {notices.map((notice) => speaker.say(`refusal.${notice.code.split('/')[1]}`, notice.values)).join(' ') ||
          busy.map((doing) => `${lettersOf(belief, doing.who)}: ${speaker.say(`action.${doing.act}`)}`).join('. ')}
      </p>
    </div>
  )
}

function useGearKeys(belief: Belief, item: ItemBelief | undefined): void {
  const handlers = useMemo((): Handlers => {
    const crew = crewInOrder(belief).map((person) => person.id)
    const on = (act: () => void) => () => {
      if (item && viewStore.getState().thing !== item.id) chooseThing(item.id)
      act()
    }
    return {
      choosePerson: (key) => {
        const id = crew[digitOf(key)]
        if (id) choosePersons([id])
      },
      look: on(() => turnOver('look')),
      label: on(() => turnOver('read-label')),
      test: on(() => turnOver('test-item')),
      pass: on(() => giveNamed('judge', { verdict: 'pass' })),
      quarantine: on(() => giveNamed('judge', { verdict: 'quarantine' })),
      bookOut: on(() => giveNamed('book-out')),
      again: on(again),
      goOn: () => void goOn(),
      withdraw,
      ...(belief.sheet.purpose === 'practise' ? { undo } : {}),
    }
  }, [belief, item])
  useKeys(handlers)
}
