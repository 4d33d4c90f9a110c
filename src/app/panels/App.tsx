/** The sheet: index strip, banner, the place that is open, title block. */
import { useEffect } from 'react'
import { useStore } from 'zustand'
import { say } from '../../text/front'
import { download } from '../storage/download'
import { assessStore, endAssessment } from '../stores/assessStore'
import { jobStore } from '../stores/jobStore'
import { asideStore, forgetAside } from '../stores/keptJob'
import { goTo, places, viewStore } from '../stores/viewStore'
import { DepotPlace } from './depot/DepotPlace'
import { FolderLine } from './folder/InFolder'
import { folderStore, withFolder } from './folder/loadFolder'
import { Dialogs } from './shell/Dialogs'
import { Fetched } from './shell/Fetched'
import { IndexStrip } from './shell/IndexStrip'
import { PaperHead } from './shell/PaperHead'
import { TitleBlock } from './shell/TitleBlock'

export function App() {
  const now = useStore(jobStore, (job) => job.now)
  usePlaceKeys()
  return (
    <>
      <div className='app' data-now={now}>
        <PaperHead />
        <IndexStrip />
        <Banners />
        <Place />
        <TitleBlock />
      </div>
      <Dialogs />
    </>
  )
}

const loadFigures = () => import('./figures/FiguresPlace')
const loadOffice = () => import('./office/OfficePlace')

function Place() {
  const place = useStore(viewStore, (view) => view.place)
  const isOpen = useStore(jobStore, (job) => job.head !== null)
  const { folder, isStarting } = useStore(folderStore)
  const isSealed = useStore(assessStore, (assessment) => assessment.phase === 'running')
  if (place === 'figures') return <Fetched load={loadFigures} props={{}} meanwhile={null} />
  // What is wrong with the gear stands there: nothing for a scored run.
  if (place === 'office' && !isSealed) return <Fetched load={loadOffice} props={{}} meanwhile={null} />
  if (isStarting) return <main className='sheetpage' />
  return folder && isOpen && place !== 'depot' && place !== 'office' ? (
    <folder.JobPlace place={place} />
  ) : (
    <DepotPlace />
  )
}

function Banners() {
  const folder = useStore(folderStore, (load) => load.folder)
  return (
    <div>
      <FolderLine />
      {folder && <folder.TryingBanner />}
      {folder && <folder.ShownBanner />}
      <Banner />
      <AsideBanner />
    </div>
  )
}

/** A browser that keeps nothing: the run goes on in memory, and can be taken out. */
function Banner() {
  const isKept = useStore(jobStore, (job) => job.isKept)
  const isOpen = useStore(jobStore, (job) => job.head !== null)
  if (isKept || !isOpen) return null
  return (
    <div className='banner' role='alert'>
      {say('banner.notKept')}
      <button
        type='button'
        className='btn'
        onClick={() => withFolder((folder) => download('run.json', folder.exportRun()))}
      >
        {say('banner.export')}
      </button>
    </div>
  )
}

/** A job kept by another version: it cannot be gone on with, and is not lost. */
function AsideBanner() {
  const text = useStore(asideStore, (aside) => aside.text)
  const isAtDepot = useStore(viewStore, (view) => view.place === 'depot')
  const isOpen = useStore(jobStore, (job) => job.head !== null)
  if (text === null || (isOpen && !isAtDepot)) return null
  return (
    <div className='banner' role='alert'>
      <p>{say('banner.aside')}</p>
      <button type='button' className='btn' onClick={() => download('kept-job.json', text)}>
        {say('banner.asideExport')}
      </button>
      <button
        type='button'
        className='btn'
        onClick={() => {
          // A scored run that cannot be gone on with must not lock the device.
          if (!isOpen && assessStore.getState().phase === 'running') endAssessment()
          forgetAside()
        }}
      >
        {say('banner.asideForget')}
      </button>
    </div>
  )
}

function usePlaceKeys(): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const digit = /^Digit([1-5])$/.exec(event.code)
      if (!event.altKey || !digit) return
      const place = places[Number(digit[1]) - 1]
      if (!place || (place !== 'depot' && !jobStore.getState().head)) return
      event.preventDefault()
      goTo(place)
    }
    window.addEventListener('keydown', onKey)
    return () => window.removeEventListener('keydown', onKey)
  }, [])
}
