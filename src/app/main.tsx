// Wiring, nothing else: puts the app into the page.

import './look/fonts.css'
import './look/sheet.css'
import './look/parts.css'
import './look/slip.css'
import './look/drawing.css'
import './look/places.css'
import './look/debrief.css'
import './look/livening.css'
import './look/tablet.css'
import './look/print.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { applyPaper, applyTheme } from './look/applyTheme'
import { App } from './panels/App'
import { startWithFolder } from './panels/folder/loadFolder'
import { Fetched } from './panels/shell/Fetched'
import { type StageProps, StageSlot } from './panels/site/stageSlot'
import { readAddress, writeAddress } from './storage/address'
import { chooseScenario, followJob, setDepot } from './stores/depotStore'
import { jobStore } from './stores/jobStore'
import { hasKeptJob } from './stores/keptJob'
import { keepAppOffline } from './stores/offlineStore'
import { settingsStore } from './stores/settingsStore'
import { goTo, viewStore } from './stores/viewStore'

const place = document.getElementById('app')
if (!place) throw new Error('index.html has no element #app')

applyTheme(settingsStore.getState().theme)
settingsStore.subscribe((settings) => applyTheme(settings.theme))
addEventListener('beforeprint', applyPaper)
addEventListener('afterprint', () => applyTheme(settingsStore.getState().theme))

const showAddress = () => writeAddress(jobStore.getState().head, viewStore.getState().place)
const address = readAddress(location.hash)
if (address.scenario !== undefined) chooseScenario(address.scenario)
if (address.purpose === 'assess') setDepot({ purpose: 'assess' })
const openOffice = () => address.place === 'office' && goTo('office')
openOffice()
if (hasKeptJob() || address.scenario !== undefined)
  startWithFolder((folder) => {
    folder.startFromAddress(address)
    openOffice()
    // What could not be opened is not asked for again.
    showAddress()
  })
jobStore.subscribe(({ head }, before) => {
  if (head === before.head) return
  if (head) followJob(head)
  showAddress()
})
viewStore.subscribe((view, before) => view.place !== before.place && showAddress())

// Fetched when the Site is first looked at in 3D.
const loadStage = () => import('./scene/SiteStage')
const SiteStage = (props: StageProps) => <Fetched load={loadStage} props={props} meanwhile={props.extra} />

createRoot(place).render(
  <StrictMode>
    <StageSlot value={SiteStage}>
      <App />
    </StageSlot>
  </StrictMode>,
)

if (import.meta.env.PROD) keepAppOffline()
