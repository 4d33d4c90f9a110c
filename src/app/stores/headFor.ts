/** The head of a job from what was chosen at the Depot. */
import { english, makeSpeaker } from '../../text'
import { type OwnEdition, layEdition, packIds, packWordsOf, requirePack, scenarioWordsOf } from '../storage/library'
import { findCard } from '../storage/shelf'
import type { JobHead, Purpose } from './jobStore'
import { findName, settingsStore } from './settingsStore'

function packNameOf(id: string): string {
  const speaker = makeSpeaker(packWordsOf(id), english)
  if (speaker.has('pack.name')) return speaker.say('pack.name')
  return speaker.say('pack.named', { id, edition: requirePack(id).edition })
}

export function headFor(
  scenario: string,
  seed: number,
  purpose: Purpose,
  choice: { pack?: string; startsAt?: string; person?: string; own?: OwnEdition; shown?: number } = {},
): JobHead {
  layEdition(choice.own)
  const pack = choice.pack ?? findCard(scenario)?.pack ?? packIds[0] ?? ''
  return {
    scenario,
    title: makeSpeaker(scenarioWordsOf(scenario), english).say('scenario.name'),
    seed,
    purpose,
    pack,
    packName: packNameOf(pack),
    startsAt: choice.startsAt ?? 'beginning',
    person: choice.person ?? findName(settingsStore.getState()) ?? '',
    ...(choice.own && { own: choice.own }),
    ...(choice.shown !== undefined && { shown: choice.shown }),
  }
}
