/** The Depot: who, why, which folder; opening, bringing in and taking out runs; the caution. */
import { useState } from 'react'
import { useStore } from 'zustand'
import { say } from '../../../text/front'
import type { FolderCard } from '../../storage/makeCard'
import { findCard } from '../../storage/shelf'
import { assessStore } from '../../stores/assessStore'
import { depotStore, setDepot } from '../../stores/depotStore'
import { jobStore } from '../../stores/jobStore'
import { offlineStore } from '../../stores/offlineStore'
import { addPerson, choosePerson, settingsStore } from '../../stores/settingsStore'
import { goTo } from '../../stores/viewStore'
import { InFolder } from '../folder/InFolder'
import { withFolder } from '../folder/loadFolder'
import { Choice, Choices } from './Choice'
import { Locality } from './Locality'
import { PackChoice } from './PackChoice'
import { RunsBox } from './RunsBox'
import { ScenarioFacts } from './ScenarioFacts'
import { ScenarioList } from './ScenarioList'
import { PartChoice, SeedEntry } from './SeedEntry'

export function DepotPlace() {
  const { scenario, purpose } = useStore(depotStore)
  const isSealed = useStore(assessStore, (assessment) => assessment.phase === 'running')
  const card = findCard(scenario)
  return (
    <main className='cols depot'>
      <section className='stack scroll' tabIndex={0} aria-label={say('depot.whoWhy')}>
        <People />
        <h2 className='sec gap'>{say('depot.purpose')}</h2>
        <Choices label={say('depot.purpose')}>
          {(['practise', 'assess'] as const).map((each) => (
            <Choice
              key={each}
              name={say(`purpose.${each}`)}
              note={say(`depot.${each}Note`)}
              isChosen={each === purpose}
              onChoose={() => setDepot({ purpose: each })}
            />
          ))}
        </Choices>
        {purpose === 'practise' && <PackChoice />}
        {purpose === 'practise' && <PartChoice parts={card?.parts ?? []} />}
        <p className='cautiontext'>{say('app.caution.full')}</p>
        <Offline />
        <button type='button' className='btn gap' onClick={() => goTo('figures')}>
          {say('depot.figures')}
        </button>
      </section>
      <section className='stack places' aria-label={say('depot.scenarios')}>
        <h2 className='sec'>
          {say('depot.scenarios')}
          <span className='q'>
            <button type='button' className='btn plain' disabled={isSealed} onClick={() => goTo('office')}>
              {say('depot.office')}
            </button>
          </span>
        </h2>
        <ScenarioList />
        <RunsBox />
      </section>
      <section className='stack scroll' tabIndex={0} aria-label={card?.words['scenario.name'] ?? scenario}>
        {isSealed ? (
          <>
            <h1 className='title'>{say('depot.sealed')}</h1>
            <p className='gap'>{say('depot.sealedText')}</p>
            <Resume />
          </>
        ) : purpose === 'assess' ? (
          <InFolder>{(folder) => <folder.AssessSetUp scenario={scenario} />}</InFolder>
        ) : (
          card && <Opening card={card} />
        )}
      </section>
    </main>
  )
}

/** What is known of the place, and the ways into the job. */
function Opening({ card }: { card: FolderCard }) {
  const seed = useStore(depotStore, (depot) => depot.seed)
  const isSeed = /^\d{1,9}$/.test(seed)
  const open = (way: 'openJob' | 'openShown') =>
    withFolder((folder) => {
      const { pack, part } = depotStore.getState()
      folder[way](folder.headFor(card.id, Number(seed), 'practise', { pack, startsAt: part }))
    })
  return (
    <>
      <h1 className='title'>{card.words['scenario.name']}</h1>
      <div className='placefacts'>
        <Locality card={card} />
        <ScenarioFacts card={card} />
      </div>
      <div className='foot'>
        <SeedEntry seed={seed} onChange={(written) => setDepot({ seed: written })} />
        <button type='button' className='btn go grow' disabled={!isSeed} onClick={() => open('openJob')}>
          {say('depot.open')}
        </button>
        <button type='button' className='btn' disabled={!isSeed} onClick={() => open('openShown')}>
          {say('depot.see')}
        </button>
      </div>
      <Resume />
    </>
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

function People() {
  const people = useStore(settingsStore, (settings) => settings.people)
  const chosen = useStore(settingsStore, (settings) => settings.person)
  const [name, setName] = useState('')
  return (
    <>
      <h2 className='sec'>{say('depot.who')}</h2>
      <Choices label={say('depot.who')}>
        {people.map(({ id, name: known }, i) => (
          <Choice
            key={id}
            name={known}
            isChosen={id === chosen}
            isStop={i === 0 && !people.some((it) => it.id === chosen)}
            onChoose={() => choosePerson(id)}
          />
        ))}
      </Choices>
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
