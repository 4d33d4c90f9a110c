/** The Site: crew above; list, drawings with the action slip, and the log with the clock beside each other. */
import { useMemo } from 'react'
import { useStore } from 'zustand'
import { say } from '../../../text'
import { type Handlers, digitOf, useKeys } from '../../input/useKeys'
import { jobStore } from '../../stores/jobStore'
import { gazeAt } from '../../stores/lookStore'
import { goOn, undo, withdraw } from '../../stores/orders'
import { backAPart, oneOn, playOrHold } from '../../stores/showJob'
import { holdTape, putTapeAway, takeTape } from '../../stores/tapeStore'
import { choosePersons, showDialog, showDrawing, showLivening, togglePerson, viewStore } from '../../stores/viewStore'
import { LiveningSheet } from '../livening/LiveningSheet'
import { useBelief } from '../useBelief'
import { CrewStrip } from './CrewStrip'
import { crewInOrder } from './crewInOrder'
import { Drawings } from './Drawings'
import { EventSheet } from './EventSheet'
import { LogColumn } from './LogColumn'
import { SiteTree } from './SiteTree'
import { focusActs, focusTree } from './focus'
import { actOnThing, again, giveNamed } from './giving'
import { nextCard } from './nextCard'

export function SitePlace() {
  const event = useStore(jobStore, (job) => job.event)
  const isLivening = useStore(viewStore, (view) => view.isLivening)
  useSiteKeys()
  if (isLivening) return <LiveningSheet onBack={() => showLivening(false)} />
  return (
    <main className='stack site'>
      <h1 className='vh'>{say('app.site')}</h1>
      <CrewStrip />
      <div className='cols sitecols grow'>
        <section className='stack' aria-label={say('site.list')}>
          <h2 className='sec'>
            {say('site.list')}
            <span className='q'>{say('site.asKnown')}</span>
          </h2>
          <div className='scroll grow'>
            <SiteTree onAct={() => actOnThing() || focusActs()} />
          </div>
        </section>
        <section className='stack drawings' aria-label={say('site.drawings')}>
          {event ? <EventSheet /> : <Drawings />}
        </section>
        <LogColumn />
      </div>
    </main>
  )
}

function useSiteKeys(): void {
  const belief = useBelief()
  const purpose = belief.sheet.purpose
  const isShowing = useStore(jobStore, (job) => job.head?.isShowing === true)
  const handlers = useMemo((): Handlers => {
    const crew = crewInOrder(belief).map((person) => person.id)
    return {
      choosePerson: (key) => {
        const id = crew[digitOf(key)]
        if (id) choosePersons([id])
        focusTree()
      },
      markPerson: (key) => {
        const id = crew[digitOf(key)]
        if (id) togglePerson(id)
      },
      everyone: () => choosePersons(crew),
      sheet: focusActs,
      again,
      look: () => giveNamed('look'),
      label: () => giveNamed('read-label'),
      test: () => giveNamed('test-item'),
      pass: () => giveNamed('judge', { verdict: 'pass' }),
      quarantine: () => giveNamed('judge', { verdict: 'quarantine' }),
      drawing: () => showDrawing(viewStore.getState().drawing === 'scene' ? 'drawings' : 'scene'),
      eyes: () => {
        const [person] = viewStore.getState().persons
        if (person) gazeAt({ kind: 'eyes', person })
      },
      overhead: () => gazeAt({ kind: 'up' }),
      closer: () => {
        const { thing } = viewStore.getState()
        if (thing) gazeAt({ kind: 'near', id: thing })
      },
      tape: () => {
        const { thing } = viewStore.getState()
        if (thing && thing !== 'ground') holdTape({ kind: 'thing', id: thing })
        else takeTape()
      },
      tapeAway: putTapeAway,
      goOn: () => void goOn(),
      withdraw,
      nextCard,
      ...(purpose === 'practise' ? { undo, hint: () => showDialog('hint') } : {}),
      ...(isShowing ? { goOn: oneOn, undo: backAPart, play: playOrHold } : {}),
    }
  }, [belief, purpose, isShowing])
  useKeys(handlers)
}
