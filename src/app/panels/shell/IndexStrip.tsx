/** Head of the sheet: brand, Depot, the tabs of the job folder, who is at the screen. */
import { useStore } from 'zustand'
import { say } from '../../../text/front'
import { jobStore } from '../../stores/jobStore'
import { findName, settingsStore } from '../../stores/settingsStore'
import { goTo, type places, showDialog, viewStore } from '../../stores/viewStore'
import { BrandMark } from '../drawing/Marks'

const folder = ['job-sheet', 'gear', 'site', 'debrief'] as const

export function IndexStrip() {
  const place = useStore(viewStore, (view) => view.place)
  const name = useStore(settingsStore, findName)
  const isOpen = useStore(jobStore, (job) => job.head !== null)
  return (
    <header className='index'>
      <div className='brand'>
        <BrandMark />
        {say('app.name')}
      </div>
      <nav className='tabs' aria-label={say('app.places')}>
        <Tab name='depot' number={1} isHere={place === 'depot'} isOpen />
        <div className='folder'>
          {folder.map((each, i) => (
            <Tab key={each} name={each} number={i + 2} isHere={place === each} isOpen={isOpen} />
          ))}
        </div>
      </nav>
      <div className='who'>
        {name && <span className='q'>{name}</span>}
        <button type='button' className='btn plain' onClick={() => showDialog('keys')}>
          {say('app.keys')}
        </button>
        <button type='button' className='btn plain' onClick={() => showDialog('settings')}>
          {say('app.settings')}
        </button>
      </div>
    </header>
  )
}

function Tab({
  name,
  number,
  isHere,
  isOpen,
}: {
  name: (typeof places)[number]
  number: number
  isHere: boolean
  isOpen: boolean
}) {
  return (
    <button
      type='button'
      aria-current={isHere ? 'page' : undefined}
      disabled={!isOpen}
      onClick={() => goTo(name)}
      aria-keyshortcuts={`Alt+${number}`}
    >
      {say(`app.${name}`)}
    </button>
  )
}
