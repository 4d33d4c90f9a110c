/**
 * `expose <scenario> <run> --at 12|340s`: the circuit's answer at one instant of a run, for the supply as it is set and
 * for every livening: per person and path, and the worst slip beside it. `12` is the twelfth action, when it begins;
 * `340s` a job second. `--share` adds how much each thing fitted and worn mattered to the worst of these exposures,
 * `--chance` how it varies over the scenario's ranges; `--person` and `--livening` say which exposure instead.
 * `--feel` answers something else instead: what would reach a bare body there (feelWords.ts).
 */
import { declaredCorner, isUnsolvable, liven } from '../engine'
import type { Chance, Exposure, Shares, StoryAnswer, Unsolvable } from '../engine'
import { canonicalText } from '../files/canonical'
import { storyFile } from '../files/result/exposureFile'
import { chanceFile, sharesFile } from '../files/result/matteredFile'
import { amperes, say, seconds, volts, type Speaker } from '../text'
import { chargeLines } from './chargeWords'
import { exposureWords } from './exposureWords'
import { feelAt, feltFile, feltLine, readFeelers } from './feelWords'
import { instantOfRun, requireLiveningId } from './instantOfRun'
import { chanceAt, chanceLines, sharesAt, sharesLines, worstOf } from './matteredWords'
import { slipLines } from './slipWords'
import { readUsage } from './usage'
import { speakerOf, wordFor } from './words'

const usage =
  'expose <scenario> <run> --at 12|340s [--share] [--chance] [--draws 200] [--person <id>] [--livening <id>] [--feel pace:x,y|touch:x,y|hands:a,b] [--json]'

const given = {
  json: { type: 'boolean' },
  at: { type: 'string' },
  share: { type: 'boolean' },
  chance: { type: 'boolean' },
  draws: { type: 'string' },
  person: { type: 'string' },
  livening: { type: 'string' },
  feel: { type: 'string' },
} as const

export function expose(parameters: readonly string[]): number {
  const { options, places } = readUsage(usage, parameters, given, 2)
  const { timeline, folder, at, moment } = instantOfRun(usage, places, options.at)
  const ids = ['none', ...timeline.scenario.livenings.map((it) => it.id)]
  if (options.feel !== undefined) {
    const feelers = readFeelers(moment, options.feel)
    const asked = options.livening === undefined ? ids : [requireLiveningId(timeline, options.livening)]
    return sayFelt(
      asked.map((id) => feelAt(moment, id, feelers)),
      speakerOf(folder),
      at,
      options.json === true,
    )
  }
  const answers = ids.map((id) => liven(moment, id, declaredCorner))
  const speaker = speakerOf(folder)
  const whom = options.share || options.chance ? worstOf(answers, options) : undefined
  const shares = whom && options.share ? sharesAt(moment, whom) : undefined
  const chance = whom && options.chance ? chanceAt(moment, whom, options.draws) : undefined
  if (options.json) {
    const more = { ...(shares && { share: sharesOrNone(shares) }), ...(chance && { chance: chanceOrNone(chance) }) }
    console.log(canonicalText({ atS: at, answers: answers.map(storyFile), ...more }))
  } else {
    const lines = [
      ...answers.flatMap((it) => [
        ...linesOf(it, speaker),
        ...(isTold(it) ? chargeLines(timeline.scenario, it.livening) : slipLines(moment, it.livening, speaker)),
      ]),
      ...((options.share || options.chance) && whom === undefined ? [say('mattered.noneHere')] : []),
      ...(shares ? sharesLines(shares, speaker) : []),
      ...(chance ? chanceLines(chance, speaker) : []),
    ]
    for (const line of lines) console.log(line)
  }
  return [...answers.filter((it) => !isTold(it)), shares, chance].some(isUnsolvable) ? 1 : 0
}

/** Not a matter of a circuit: told in words alone. */
const isTold = (it: StoryAnswer): boolean => isUnsolvable(it) && it.reason === 'not-computed'

function sayFelt(felt: readonly ReturnType<typeof feelAt>[], speaker: Speaker, at: number, isJson: boolean): number {
  if (isJson) console.log(canonicalText({ atS: at, felt: felt.map(feltFile) }))
  else for (const it of felt) console.log(feltLine(it, speaker))
  return felt.some(({ exposure }) => exposure !== null && isUnsolvable(exposure)) ? 1 : 0
}

const sharesOrNone = (it: Shares | Unsolvable) => (isUnsolvable(it) ? it : sharesFile(it))
const chanceOrNone = (it: Chance | Unsolvable) => (isUnsolvable(it) ? it : chanceFile(it))

function linesOf(answer: StoryAnswer, speaker: Speaker): readonly string[] {
  const name = wordFor(speaker, 'livening', answer.livening)
  if (isTold(answer)) return [`${name}: ${say('unsolved.not-computed')}`]
  if (isUnsolvable(answer)) return [`${name}: cannot be solved (${answer.node}: ${say(`unsolved.${answer.reason}`)})`]
  const { siteRise, liveCurrent, duration, clearedBy, exposures } = answer
  if (clearedBy === 'not-live')
    return [
      `${name}: brings nothing here`,
      ...exposures.map((it) => `  ${exposureWords(it, speaker)}${layerWords(it)}`),
    ]
  const end = say(`ended.${clearedBy}`, { duration: seconds(duration) })
  const shots = answer.shots.length > 1 ? `, ${answer.shots.length} shots` : ''
  const event = `site rise ${volts(siteRise)}, ${amperes(liveCurrent)}, ${end}${shots}`
  return [
    `${name}: ${event}`,
    ...exposures.map((it) => `  ${exposureWords(it, speaker)}${layerWords(it)}`),
    ...livestockLines(answer.livestock),
  ]
}

function livestockLines(it: Extract<StoryAnswer, { kind: 'story' }>['livestock']): readonly string[] {
  return it ? [`  ${say('path.livestock-pace')}: ${volts(it.voltage)} of ${volts(it.limit)} allowed`] : []
}

function layerWords({ layer }: Exposure): string {
  return layer ? `; ${layer.item} ${layer.did}, ${volts(layer.voltage)} across it` : ''
}
