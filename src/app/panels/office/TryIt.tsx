/** What is on the board as a job, of the seed that is asked for: to practise on, or to see whether it can be done. */
import { useStore } from 'zustand'
import { say } from '../../../text/office'
import type { Draft } from '../../stores/office/draft'
import { headOfDraft } from '../../stores/office/headOfDraft'
import { chooseSeed, officeStore } from '../../stores/office/officeStore'
import { placeToTry } from '../../stores/office/runsStore'
import { SeedEntry } from '../depot/SeedEntry'
import { type Folder, withFolder } from '../folder/loadFolder'

export function TryIt({ draft, isSound }: { draft: Draft; isSound: boolean }) {
  const seed = useStore(officeStore, (office) => office.seed)
  const isPossible = isSound && /^\d{1,9}$/.test(seed)
  const open = (how: 'openJob' | 'openShown') =>
    withFolder((folder: Folder) => folder[how](headOfDraft(draft, placeToTry(), Number(seed))))
  return (
    <>
      <SeedEntry seed={seed} onChange={chooseSeed} />
      <button
        type='button'
        className='btn'
        disabled={!isPossible}
        title={say('office.tryNote')}
        onClick={() => open('openJob')}
      >
        {say('office.try')}
      </button>
      <button
        type='button'
        className='btn'
        disabled={!isPossible}
        title={say('office.seeNote')}
        onClick={() => open('openShown')}
      >
        {say('office.see')}
      </button>
    </>
  )
}
