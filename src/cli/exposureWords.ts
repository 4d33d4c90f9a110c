/** One exposure as a phrase: who, by which path, how much, what it does. */
import type { Exposure } from '../engine'
import { bystander } from '../files/result/exposureFile'
import { amperes, exposureTime, volts, type Speaker } from '../text'
import { wordFor } from './words'

export function exposureWords(it: Exposure, speaker: Speaker): string {
  const figure = it.person === bystander ? volts(it.judged) : amperes(it.bodyCurrent)
  const who = wordFor(speaker, 'person', it.person)
  const path = wordFor(speaker, 'path', it.path)
  return `${who}: ${path}, ${figure}${it.cleared ? ' for ' : ', '}${exposureTime(it)}, ${it.zone}`
}
