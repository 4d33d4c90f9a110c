/** The places on the shelf, and what one of them must have to stand on the list. */
import { useStore } from 'zustand'
import { say } from '../../../text/front'
import type { FolderCard } from '../../storage/makeCard'
import { packShelf } from '../../storage/packShelf'
import { shelf } from '../../storage/shelf'
import { type Wanted, anyPlace, chooseScenario, depotStore, setDepot, want } from '../../stores/depotStore'
import { traitWords } from './ScenarioFacts'
import { Choice, Choices } from './Choice'

export function ScenarioList() {
  const chosen = useStore(depotStore, (depot) => depot.scenario)
  const wanted = useStore(depotStore, (depot) => depot.wanted)
  const shown = shelf.filter((card) => isWanted(card, wanted))
  return (
    <>
      <Finder wanted={wanted} />
      <Choices label={say('depot.scenarios')}>
        {shown.map(({ id, words }, i) => (
          <Choice
            key={id}
            name={words['scenario.name'] ?? id}
            note={words['scenario.summary'] ?? ''}
            isChosen={id === chosen}
            isStop={i === 0 && !shown.some((it) => it.id === chosen)}
            onChoose={() => chooseScenario(id)}
          />
        ))}
      </Choices>
      {shown.length === 0 && (
        <p className='gap' role='status'>
          {say('depot.noneFound')}{' '}
          <button type='button' className='btn' onClick={() => setDepot({ wanted: anyPlace })}>
            {say('depot.showAll')}
          </button>
        </p>
      )}
    </>
  )
}

function Finder({ wanted }: { wanted: Wanted }) {
  return (
    <div className='finder'>
      <input
        className='entry'
        type='search'
        aria-label={say('depot.find')}
        placeholder={say('depot.find')}
        value={wanted.words}
        onChange={(event) => want({ words: event.target.value })}
      />
      <Pick
        label={say('depot.anyPole')}
        value={wanted.pole}
        options={inUse((card) => [card.poleKind]).map((it) => [it, say(`pole.${it}`)])}
        onPick={(pole) => want({ pole: pole as Wanted['pole'] })}
      />
      <Pick
        label={say('depot.anyTrait')}
        value={wanted.trait}
        options={inUse((card) => card.traits).map((it) => [it, say(`trait.${it}`)])}
        onPick={(trait) => want({ trait: trait as Wanted['trait'] })}
      />
      <Pick
        label={say('depot.anyPack')}
        value={wanted.pack}
        options={packShelf.map(({ id, name }) => [id, name])}
        onPick={(pack) => want({ pack })}
      />
    </div>
  )
}

interface PickProps {
  /** Said where nothing is asked for. */
  readonly label: string
  readonly value: string
  readonly options: readonly (readonly [value: string, words: string])[]
  readonly onPick: (value: string) => void
}

function Pick({ label, value, options, onPick }: PickProps) {
  return (
    <select className='entry' aria-label={label} value={value} onChange={(event) => onPick(event.target.value)}>
      <option value=''>{label}</option>
      {options.map(([each, words]) => (
        <option key={each} value={each}>
          {words}
        </option>
      ))}
    </select>
  )
}

/** What some place has, each once, in the order of the cards. */
const inUse = <Each,>(of: (card: FolderCard) => readonly Each[]): readonly Each[] => [...new Set(shelf.flatMap(of))]

function isWanted(card: FolderCard, { words, pole, trait, pack }: Wanted): boolean {
  const told = [...Object.values(card.words), say(`pole.${card.poleKind}`), traitWords(card)].join(' ').toLowerCase()
  return (
    (pole === '' || card.poleKind === pole) &&
    (trait === '' || card.traits.includes(trait)) &&
    (pack === '' || card.pack === pack) &&
    words
      .toLowerCase()
      .split(/\s+/)
      .every((word) => told.includes(word))
  )
}
