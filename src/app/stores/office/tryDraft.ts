/** Opens what is on the board as a job to practise. It is marked as an own edition wherever its name stands, and never scored. */
import { say } from '../../../text/office'
import { headFor } from '../headFor'
import { openJob } from '../openJob'
import { draftText } from './draft'
import { officeStore } from './officeStore'
import { runsStore } from './runsStore'

export function tryDraft(): void {
  const { draft } = officeStore.getState()
  if (!draft) return
  const { kind } = draft
  const id = String(draft.file.id)
  const own = { kind, id, file: draftText(draft, 'file'), words: draftText(draft, 'words') }
  const head = headFor(kind === 'scenario' ? id : runsStore.getState().scenario, 1, 'practise', {
    own,
    ...(kind === 'pack' && { pack: id }),
  })
  const named = kind === 'pack' ? { packName: ownName(head.packName) } : { title: ownName(head.title) }
  openJob({ ...head, ...named })
}

const ownName = (name: string): string => say('office.own', { name })
