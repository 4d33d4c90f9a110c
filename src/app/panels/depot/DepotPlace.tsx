/** The Depot: who, why, which folder; opening, bringing in and taking out runs; the caution. */
import { useState } from 'react'
import { useStore } from 'zustand'
import { say } from '../../../text/front'
import { packShelf } from '../../storage/packShelf'
import { shelf } from '../../storage/shelf'
import { assessStore } from '../../stores/assessStore'
import { type Purpose, jobStore } from '../../stores/jobStore'
import { offlineStore } from '../../stores/offlineStore'
import { addPerson, choosePerson, settingsStore } from '../../stores/settingsStore'
import { goTo } from '../../stores/viewStore'
import { InFolder } from '../folder/InFolder'
import { withFolder } from '../folder/loadFolder'
import { Locality } from './Locality'
import { PackChoice } from './PackChoice'
import { RunsBox } from './RunsBox'
import { ScenarioFacts } from './ScenarioFacts'
import { PartChoice, SeedEntry } from './SeedEntry'

export function DepotPlace() {
  const [scenario, setScenario] = useState(shelf[0]?.id ?? '')
  const [purpose, setPurpose] = useState<Purpose>('practise')
  const [seed, setSeed] = useState('1')
  const [part, setPart] = useState('beginning')
  const [pack, setPack] = useState(packShelf[0]?.id ?? '')
  const isSealed = useStore(assessStore, (assessment) => assessment.phase === 'running')
  const card = shelf.find((it) => it.id === scenario)
  const name = card?.words['scenario.name'] ?? scenario
  return (
    <main className='cols depot'>
      <section className='stack scroll' tabIndex={0} aria-label={say('depot.whoWhy')}>
        <People />
        <h2 className='sec gap'>{say('depot.purpose')}</h2>
        <div role='radiogroup' aria-label={say('depot.purpose')}>
          <Choice
            name={say('purpose.practise')}
            note={say('depot.practiseNote')}
            isChosen={purpose === 'practise'}
            onChoose={() => setPurpose('practise')}
          />
          <Choice
            name={say('purpose.assess')}
            note={say('depot.assessNote')}
            isChosen={purpose === 'assess'}
            onChoose={() => setPurpose('assess')}
          />
        </div>
        {purpose === 'practise' && <PackChoice pack={pack} onChoose={setPack} />}
        {purpose === 'practise' && <PartChoice parts={card?.parts ?? []} part={part} onChoose={setPart} />}
        <p className='cautiontext'>{say('app.caution.full')}</p>
        <Offline />
        <button type='button' className='btn gap' onClick={() => goTo('figures')}>
          {say('depot.figures')}
        </button>
      </section>
      <section className='stack scroll' tabIndex={0} aria-label={say('depot.scenarios')}>
        <h2 className='sec'>
          {say('depot.scenarios')}
          <span className='q'>
            <button type='button' className='btn plain' disabled={isSealed} onClick={() => goTo('office')}>
              {say('depot.office')}
            </button>
          </span>
        </h2>
        <div role='radiogroup' aria-label={say('depot.scenarios')}>
          {shelf.map(({ id, words }) => (
            <Choice
              key={id}
              name={words['scenario.name'] ?? id}
              note={words['scenario.summary'] ?? ''}
              isChosen={id === scenario}
              onChoose={() => setScenario(id)}
            />
          ))}
        </div>
        <RunsBox />
      </section>
      <section className='stack scroll' tabIndex={0} aria-label={name}>
        {isSealed ? (
          <>
            <h1 className='title'>{say('depot.sealed')}</h1>
            <p className='gap'>{say('depot.sealedText')}</p>
            <Resume />
          </>
        ) : purpose === 'assess' ? (
          <InFolder>{(folder) => <folder.AssessSetUp scenario={scenario} />}</InFolder>
        ) : (
          <>
            <h1 className='title'>{name}</h1>
            {card && <Locality card={card} />}
            {card && <ScenarioFacts card={card} />}
            <div className='foot'>
              <SeedEntry seed={seed} onChange={setSeed} />
              <button
                type='button'
                className='btn go grow'
                disabled={!/^\d{1,9}$/.test(seed)}
                onClick={() =>
                  withFolder((folder) =>
                    folder.openJob(folder.headFor(scenario, Number(seed), 'practise', { pack, startsAt: part })),
                  )
                }
              >
                {say('depot.open')}
              </button>
              <button
                type='button'
                className='btn'
                disabled={!/^\d{1,9}$/.test(seed)}
                onClick={() =>
                  withFolder((folder) =>
                    folder.openShown(folder.headFor(scenario, Number(seed), 'practise', { pack, startsAt: part })),
                  )
                }
              >
                {say('depot.see')}
              </button>
            </div>
            <Resume />
          </>
        )}
      </section>
    </main>
  )
}

function Offline() {
  const state = useStore(offlineStore, (offline) => offline.state)
  if (state === 'none') return null
  return (
    <p className='note gap' role='status'>
      {say(`depot.offline.${state}`)}
    </p>
  )
}

function Resume() {
  const head = useStore(jobStore, (job) => job.head)
  if (!head) return null
  return (
    <div className='foot'>
      <button type='button' className='btn grow' onClick={() => goTo('site')}>
        {say('depot.back', { title: head.title, seed: head.purpose === 'assess' ? say('block.sealed') : head.seed })}
      </button>
    </div>
  )
}

function Choice({
  name,
  note,
  isChosen,
  onChoose,
}: {
  name: string
  note: string
  isChosen: boolean
  onChoose: () => void
}) {
  return (
    <button type='button' className='pick' role='radio' aria-checked={isChosen} onClick={onChoose}>
      <span className='dot' />
      <span>
        {name}
        <br />
        <span className='q'>{note}</span>
      </span>
    </button>
  )
}

function People() {
  const people = useStore(settingsStore, (settings) => settings.people)
  const chosen = useStore(settingsStore, (settings) => settings.person)
  const [name, setName] = useState('')
  return (
    <>
      <h2 className='sec'>{say('depot.who')}</h2>
      <div role='radiogroup' aria-label={say('depot.who')}>
        {people.map((person) => (
          <button
            key={person.id}
            type='button'
            className='pick'
            role='radio'
            aria-checked={person.id === chosen}
            onClick={() => choosePerson(person.id)}
          >
            <span className='dot' />
            {person.name}
          </button>
        ))}
      </div>
      <form
        className='addperson'
        onSubmit={(event) => {
          event.preventDefault()
          if (name.trim() !== '') addPerson(name.trim())
          setName('')
        }}
      >
        <input
          className='entry'
          aria-label={say('depot.name')}
          placeholder={say('depot.name')}
          value={name}
          maxLength={60}
          onChange={(event) => setName(event.target.value)}
        />
        <button type='submit' className='btn'>
          {say('depot.add')}
        </button>
      </form>
    </>
  )
}
