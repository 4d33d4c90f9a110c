/** The job sheet: order, diagram, soil, protection, weather, crew; and the briefing, which is done here. */
import { useMemo, useState } from 'react'
import { say } from '../../../text'
import { type Handlers, digitOf, useKeys } from '../../input/useKeys'
import { goOn, undo, withdraw } from '../../stores/orders'
import { choosePersons } from '../../stores/viewStore'
import { crewInOrder } from '../site/crewInOrder'
import { useBelief } from '../useBelief'
import { useSpeaker } from '../useSpeaker'
import { Briefing } from './Briefing'
import { HazardPlan } from './HazardPlan'
import { OrderColumn } from './OrderColumn'
import { PlanCards } from './PlanCards'
import { SeeItDone } from './SeeItDone'
import { SingleLine } from './SingleLine'

export function JobSheetPlace() {
  const belief = useBelief()
  const speaker = useSpeaker()
  const [part, setPart] = useState<'briefing' | 'plan'>('briefing')
  const handlers = useMemo((): Handlers => {
    const crew = crewInOrder(belief).map((person) => person.id)
    return {
      choosePerson: (key) => {
        const id = crew[digitOf(key)]
        if (id) choosePersons([id])
      },
      everyone: () => choosePersons(crew),
      goOn: () => void goOn(),
      withdraw,
      ...(belief.sheet.purpose === 'practise' ? { undo } : {}),
    }
  }, [belief])
  useKeys(handlers)
  return (
    <main className='cols jobsheet'>
      <section className='stack scroll' tabIndex={0} aria-label={say('job.order')}>
        <h1 className='vh'>{say('app.job-sheet')}</h1>
        <OrderColumn belief={belief} speaker={speaker} />
        <SeeItDone />
      </section>
      <section className='stack scroll' tabIndex={0} aria-label={say('job.drawings')}>
        <h2 className='sec'>{say('sld.title')}</h2>
        <SingleLine belief={belief} speaker={speaker} />
        <HazardPlan belief={belief} speaker={speaker} />
      </section>
      <section className='stack scroll' tabIndex={0} aria-label={say('job.briefing')}>
        <div className='seg' role='tablist' aria-label={say('job.briefing')}>
          {(['briefing', 'plan'] as const).map((each) => (
            <button
              key={each}
              type='button'
              role='tab'
              className='btn'
              aria-selected={part === each}
              data-part={each}
              onClick={() => setPart(each)}
            >
              {say(each === 'plan' ? 'plan.title' : 'job.briefing')}
            </button>
          ))}
        </div>
        {part === 'plan' ? (
          <PlanCards belief={belief} speaker={speaker} />
        ) : (
          <Briefing belief={belief} speaker={speaker} />
        )}
      </section>
    </main>
  )
}
