/** The stage as a sheet has it: stores, bar, plate, strict mode. `?stage&part=below-lv`. */
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import SiteStage from '../../../src/app/scene/SiteStage'
import { applyTheme } from '../../../src/app/look/applyTheme'
import { openJob } from '../../../src/app/stores/openJob'
import { settingsStore } from '../../../src/app/stores/settingsStore'
import { viewStore } from '../../../src/app/stores/viewStore'

export function openStage(part: string): void {
  applyTheme(settingsStore.getState().theme)
  openJob({
    scenario: 'marrow-bend',
    title: 'Marrow Bend',
    seed: 1,
    purpose: 'practise',
    pack: '',
    packName: '',
    startsAt: part,
    person: 'Wren',
  })
  const said: string[] = []
  Object.assign(window, { stage: { said, chosen: () => viewStore.getState() } })
  createRoot(document.getElementById('app')!).render(
    <StrictMode>
      <div className='place'>
        <SiteStage
          firstView='pole-top'
          onAct={(id) => said.push(`act ${id}`)}
          onLook={(id) => said.push(`look ${id}`)}
          plate={<button type='button'>Do it</button>}
        />
      </div>
    </StrictMode>,
  )
}
