/**
 * `expose <scenario> <run> --at 12|340s [--json]`: the circuit's answer at one instant of a run, for the supply as it is
 * set and for every livening: per person and path, and the worst slip beside it. `12` is the twelfth action, when it begins; `340s` a job second.
 */
import { declaredCorner, isUnsolvable, liven, type Exposure, type StoryAnswer } from '../engine'
import { canonicalText } from '../files/canonical'
import { storyFile } from '../files/result/exposureFile'
import { amperes, seconds, volts, type Speaker } from '../text'
import { exposureWords } from './exposureWords'
import { instantOfRun } from './instantOfRun'
import { slipLines } from './slipWords'
import { readUsage } from './usage'
import { speakerOf, wordFor } from './words'

const usage = 'expose <scenario> <run> --at 12|340s [--json]'

export function expose(parameters: readonly string[]): number {
  const { options, places } = readUsage(usage, parameters, { json: { type: 'boolean' }, at: { type: 'string' } }, 2)
  const { timeline, folder, at, moment } = instantOfRun(usage, places, options.at)
  const ids = ['none', ...timeline.scenario.livenings.map((it) => it.id)]
  const answers = ids.map((id) => liven(moment, id, declaredCorner))
  const speaker = speakerOf(folder)
  if (options.json) console.log(canonicalText({ atS: at, answers: answers.map(storyFile) }))
  else
    for (const line of answers.flatMap((it) => [...linesOf(it, speaker), ...slipLines(moment, it.livening, speaker)]))
      console.log(line)
  return answers.some(isUnsolvable) ? 1 : 0
}

function linesOf(answer: StoryAnswer, speaker: Speaker): readonly string[] {
  const name = wordFor(speaker, 'livening', answer.livening)
  if (isUnsolvable(answer)) return [`${name}: cannot be solved (${answer.node}, ${answer.reason})`]
  const { siteRise, liveCurrent, duration, clearedBy, exposures } = answer
  if (clearedBy === 'not-live')
    return [
      `${name}: brings nothing here`,
      ...exposures.map((it) => `  ${exposureWords(it, speaker)}${layerWords(it)}`),
    ]
  const event = `site rise ${volts(siteRise)}, ${amperes(liveCurrent)}, ${seconds(duration)}, cleared by ${clearedBy}`
  return [`${name}: ${event}`, ...exposures.map((it) => `  ${exposureWords(it, speaker)}${layerWords(it)}`)]
}

function layerWords({ layer }: Exposure): string {
  return layer ? `; ${layer.item} ${layer.did}, ${volts(layer.voltage)} across it` : ''
}
