/** The sheet: index strip, banner, the place that is open, title block. */
import { type ReactNode, useEffect } from 'react'
import { useStore } from 'zustand'
import { say } from '../../text'
import { download } from '../storage/download'
import { exportRun } from '../stores/exportRun'
import { assessStore, endAssessment } from '../stores/assessStore'
import { jobStore } from '../stores/jobStore'
import { asideStore, forgetAside } from '../stores/saveJob'
import { type PlaceName, goTo, places, viewStore } from '../stores/viewStore'
import { AssessPlace } from './assess/AssessPlace'
import { TryingBanner } from './assess/TryingBanner'
import { DebriefPlace } from './debrief/DebriefPlace'
import { DepotPlace } from './depot/DepotPlace'
import { GearPlace } from './gear/GearPlace'
import { JobSheetPlace } from './jobSheet/JobSheetPlace'
import { Dialogs } from './shell/Dialogs'
import { IndexStrip } from './shell/IndexStrip'
import { TitleBlock } from './shell/TitleBlock'
import { SitePlace } from './site/SitePlace'

export function App() {
  const place = useStore(viewStore, (view) => view.place)
  const head = useStore(jobStore, (job) => job.head)
  const now = useStore(jobStore, (job) => job.now)
  usePlaceKeys()
  return (
    <>
      <div className='app' data-now={now}>
        <IndexStrip />
        <Banners />
        {placeOf(head ? place : 'depot', head?.purpose === 'assess')}
        <TitleBlock />
      </div>
      <Dialogs />
    </>
  )
}

function placeOf(place: PlaceName, isAssessed: boolean): ReactNode {
  if (place === 'job-sheet') return <JobSheetPlace />
  if (place === 'gear') return <GearPlace />
  if (place === 'site') return <SitePlace />
  if (place === 'debrief') return isAssessed ? <AssessPlace /> : <DebriefPlace />
  return <DepotPlace />
}

function Banners() {
  return (
    <div>
      <TryingBanner />
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
      <button type='button' className='btn' onClick={() => download('run.json', exportRun())}>
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
