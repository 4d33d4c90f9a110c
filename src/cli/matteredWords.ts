/** At one instant: the exposure that is asked about, how much each thing mattered to it, and the chance of it, as lines. */
import {
  chanceOf,
  declaredCorner,
  isUnsolvable,
  sharesOf,
  type Chance,
  type Exposure,
  type JudgedPerson,
  type Moment,
  type Shares,
  type StoryAnswer,
  type Unsolvable,
} from '../engine'
import { bystander } from '../files/result/exposureFile'
import { amperes, heartWords, percent, say, volts, type Speaker } from '../text'
import { UnusableInput } from './input'
import { wordFor } from './words'

const ratio = (it: Pick<Exposure, 'judged' | 'limit'>): number => it.judged / it.limit

/**
 * The worst exposure among the answers, of one person or livening where that is named; undefined where nothing reaches
 * anybody.
 * @throws UnusableInput on a person or livening that has none here
 */
export function worstOf(
  answers: readonly StoryAnswer[],
  { person, livening }: { readonly person?: string | undefined; readonly livening?: string | undefined },
): JudgedPerson | undefined {
  const found = answers.flatMap((answer) =>
    isUnsolvable(answer) ? [] : answer.exposures.map((exposure) => ({ exposure, livening: answer.livening })),
  )
  const fitting = found.filter((it) => {
    return (person ?? it.exposure.person) === it.exposure.person && (livening ?? it.livening) === it.livening
  })
  const [worst] = fitting.sort((a, b) => failing(b.exposure) - failing(a.exposure))
  if (worst === undefined) {
    if (person === undefined && livening === undefined) return undefined
    const known = [...new Set(found.map((it) => `${it.exposure.person} ${it.livening}`))]
    throw new UnusableInput([
      `--person, --livening: nothing reaches ${person ?? 'anybody'}; allowed here: ${known.join(', ') || 'nothing'}`,
    ])
  }
  const { exposure } = worst
  const layers = exposure.ifItFails ? 'fail' : 'hold'
  return { person: exposure.person, path: exposure.path, livening: worst.livening, layers }
}

const failing = (it: Exposure): number => ratio(it.ifItFails ?? it)

export function sharesAt(moment: Moment, whom: JudgedPerson): Shares | Unsolvable {
  return sharesOf(moment, whom, declaredCorner)
}

/** @throws UnusableInput on a number of draws that is none */
export function chanceAt(moment: Moment, whom: JudgedPerson, draws = '200'): Chance | Unsolvable {
  const count = Number(draws)
  if (!Number.isInteger(count) || count < 1 || count > 100_000) {
    throw new UnusableInput([`--draws: found ${draws}; allowed: 1 to 100000`])
  }
  return chanceOf(moment, whom, count)
}

export function sharesLines(shares: Shares | Unsolvable, speaker: Speaker): readonly string[] {
  if (isUnsolvable(shares)) return [unsolvedWords(shares)]
  const inUnit = unitOf(shares.person)
  const ordered = [...shares.shares].sort((a, b) => b.share - a.share)
  const thing = (it: Shares['undivided'][number]): string => speaker.say(`fitted.${it.kind}`, { item: it.item ?? '' })
  return [
    `${say('mattered.title')}: ${whoWords(shares, speaker)}`,
    `  ${say('mattered.between', { none: inUnit(shares.withNone), all: inUnit(shares.withAll) })}`,
    ...(shares.layers === 'fail' ? [`  ${say('mattered.fails')}`] : []),
    ...ordered.map(({ thing: it, share }) => {
      return `  ${thing(it)}: ${share < 0 ? say('mattered.added', { value: inUnit(-share) }) : inUnit(share)}`
    }),
    ...(shares.undivided.length > 0
      ? [`  ${say('mattered.undivided', { things: shares.undivided.map(thing).join(', ') })}`]
      : []),
  ]
}

export function chanceLines(chance: Chance | Unsolvable, speaker: Speaker): readonly string[] {
  if (isUnsolvable(chance)) return [unsolvedWords(chance)]
  const inUnit = unitOf(chance.person)
  const { judged, above, aboveIfLayersFail, fibrillation, unsolved } = chance
  const inPercent = ({ low, high }: { readonly low: number; readonly high: number }) => {
    return { low: percent(low), high: percent(high) }
  }
  const middle = { low: inUnit(judged.low), middle: inUnit(judged.middle), high: inUnit(judged.high) }
  const share = { count: above.count, of: above.of, share: percent(above.share), ...inPercent(above) }
  const failed = { share: percent(aboveIfLayersFail.share), ...inPercent(aboveIfLayersFail) }
  return [
    `${say('chance.title')}: ${whoWords(chance, speaker)}`,
    `  ${say('chance.judged', middle)}`,
    `  ${say('chance.above', share)}`,
    ...(aboveIfLayersFail.count > above.count ? [`  ${say('chance.fails', failed)}`] : []),
    `  ${heartWords(fibrillation)}`,
    ...(fibrillation.beyondRange ? [`  ${say('chance.beyond')}`] : []),
    ...(unsolved > 0 ? [`  ${say('chance.unsolved', { count: unsolved })}`] : []),
    `  ${say('chance.note')}`,
  ]
}

function whoWords({ person, path, livening }: Omit<JudgedPerson, 'layers'>, speaker: Speaker): string {
  const words = [
    wordFor(speaker, 'livening', livening),
    wordFor(speaker, 'person', person),
    wordFor(speaker, 'path', path),
  ]
  return words.join(', ')
}

const unitOf = (person: string): ((value: number) => string) => (person === bystander ? volts : amperes)

const unsolvedWords = ({ node, reason }: Unsolvable): string =>
  say('mattered.unsolved', { node, reason: say(`unsolved.${reason}`) })
