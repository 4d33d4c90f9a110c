// Wiring, nothing else: puts the app into the page.

import '@fontsource-variable/atkinson-hyperlegible-next'
import '@fontsource-variable/atkinson-hyperlegible-next/wght-italic.css'
import '@fontsource-variable/atkinson-hyperlegible-mono'
import './look/sheet.css'
import './look/parts.css'
import './look/slip.css'
import './look/drawing.css'
import './look/places.css'
import './look/debrief.css'
import './look/tablet.css'
import './look/print.css'
import { StrictMode, lazy } from 'react'
import { createRoot } from 'react-dom/client'
import { applyTheme } from './look/applyTheme'
import { App } from './panels/App'
import { StageSlot } from './panels/site/stageSlot'
import { readAddress, writeAddress } from './storage/address'
import { startFromAddress } from './stores/startFromAddress'
import { jobStore } from './stores/jobStore'
import { settingsStore } from './stores/settingsStore'
import { viewStore } from './stores/viewStore'

const place = document.getElementById('app')
if (!place) throw new Error('index.html has no element #app')

applyTheme(settingsStore.getState().theme)
settingsStore.subscribe((settings) => applyTheme(settings.theme))

startFromAddress(readAddress(location.hash))
const showAddress = () => writeAddress(jobStore.getState().head, viewStore.getState().place)
showAddress()
jobStore.subscribe((job, before) => job.head !== before.head && showAddress())
viewStore.subscribe((view, before) => view.place !== before.place && showAddress())

// Loaded when the Site is first looked at in 3D.
const SiteStage = lazy(() => import('./scene/SiteStage'))

createRoot(place).render(
  <StrictMode>
    <StageSlot value={SiteStage}>
      <App />
    </StageSlot>
  </StrictMode>,
)
