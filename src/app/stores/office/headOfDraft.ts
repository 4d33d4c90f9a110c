/** The head of a job to practise on what is on the board. It is marked as an own edition wherever its name stands, and never scored. */
import { say } from '../../../text/office'
import { headFor } from '../headFor'
import type { JobHead } from '../jobStore'
import { type Draft, draftText } from './draft'

/** @param runsOf the scenario that a pack is tried on */
export function headOfDraft(draft: Draft, runsOf: string, seed: number): JobHead {
  const { kind } = draft
  const id = String(draft.file.id)
  const own = { kind, id, file: draftText(draft, 'file'), words: draftText(draft, 'words') }
  const head = headFor(kind === 'scenario' ? id : runsOf, seed, 'practise', {
    own,
    ...(kind === 'pack' && { pack: id }),
  })
  return kind === 'pack' ? { ...head, packName: ownName(head.packName) } : { ...head, title: ownName(head.title) }
}

const ownName = (name: string): string => say('office.own', { name })
