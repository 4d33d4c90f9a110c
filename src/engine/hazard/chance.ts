/**
 * What chance makes of one exposure: everything that the scenario states as a range, and the body, drawn again and again
 * from named streams of the seed, each draw a solve of its own. It informs; the verdict stays with the corners.
 *
 * Each factor is drawn evenly on a logarithmic scale between its stated ends, each by itself (own choice: the scenario
 * states ends, no distribution, no dependence). The body is drawn evenly over the population, 1 to 99 %.
 * How sure a counted share is: Wilson's interval at 95 % (E. B. Wilson 1927), which stays in 0…1 and says something even
 * of none in n. Quantiles are those of the draws by nearest rank.
 */
import { exp, ln } from '../math/portable'
import { stream } from '../math/random'
import { chanceOfFibrillation, type FibrillationChance } from '../physics/body'
import { isUnsolvable, type Unsolvable } from '../physics/network'
import type { Scenario } from '../site/scenario'
import { invariant } from '../units/invariant'
import { declaredCorner, inCorner, type Corner } from './corner'
import type { Exposure } from './exposure'
import type { LiveMoment } from './liven'
import { exposureOf, type JudgedPerson } from './share'
import { createSweepCache } from './sweepCache'

/** A share of the draws, with Wilson's interval at 95 %. */
export interface CountedShare {
  readonly count: number
  readonly of: number
  readonly share: number
  readonly low: number
  readonly high: number
}

/** A value that one draw in twenty is below, one in two, and one in twenty above. */
export interface Spread {
  readonly low: number
  readonly middle: number
  readonly high: number
}

export interface Chance extends Omit<JudgedPerson, 'layers'> {
  readonly kind: 'chance'
  readonly seed: number
  readonly draws: number
  /** Draws without an answer; they are in no figure below. */
  readonly unsolved: number
  /** A, or V for the public; every layer up to its proof voltage holding. */
  readonly judged: Spread
  readonly overLimit: Spread
  /** Above the limit with every layer up to its proof voltage holding; and with those above their use voltage failing. */
  readonly above: CountedShare
  readonly aboveIfLayersFail: CountedShare
  /** Mean of the draws; `low` to `high` holds nine draws in ten, each with what c3 can be read as. */
  readonly fibrillation: FibrillationChance
}

/** @throws on less than one draw */
export function chanceOf(
  moment: LiveMoment,
  whom: Omit<JudgedPerson, 'layers'>,
  draws: number,
  onProgress?: (done: number, total: number) => void,
): Chance | Unsolvable {
  invariant(Number.isInteger(draws) && draws > 0, 'one draw or more', draws)
  const { scenario } = moment.site
  // nothing of one draw helps another
  const cache = () => createSweepCache()
  const exposures: (Exposure | null)[] = []
  let first: Unsolvable | undefined
  let done = 0
  for (const drawn of drawnScenarios(scenario, draws)) {
    const site = { ...moment.site, scenario: drawn }
    const exposure = exposureOf({ site, bodies: moment.bodies }, whom, declaredCorner, cache())
    if (exposure !== null && isUnsolvable(exposure)) first ??= exposure
    else exposures.push(exposure)
    onProgress?.(++done, draws)
  }
  if (exposures.length === 0 && first !== undefined) return first
  const { person, path, livening } = whom
  return {
    kind: 'chance',
    person,
    path,
    livening,
    seed: scenario.seed,
    draws,
    unsolved: draws - exposures.length,
    ...summed(exposures),
  }
}

function summed(
  exposures: readonly (Exposure | null)[],
): Omit<Chance, keyof JudgedPerson | 'kind' | 'seed' | 'draws' | 'unsolved'> {
  const ratio = (it: Pick<Exposure, 'judged' | 'limit'> | null): number => (it === null ? 0 : it.judged / it.limit)
  const isAbove = (it: Exposure | null): boolean => ratio(it) >= 1
  const mayBeAbove = (it: Exposure | null): boolean => isAbove(it) || ratio(it?.ifItFails ?? null) >= 1
  return {
    judged: spreadOf(exposures.map((it) => it?.judged ?? 0)),
    overLimit: spreadOf(exposures.map(ratio)),
    above: countedShare(exposures.filter(isAbove).length, exposures.length),
    aboveIfLayersFail: countedShare(exposures.filter(mayBeAbove).length, exposures.length),
    fibrillation: fibrillationOver(exposures),
  }
}

/** A layer that may fail counts as holding at the low end and as failed at the high one. */
function fibrillationOver(exposures: readonly (Exposure | null)[]): FibrillationChance {
  const chances = exposures.map((it) => chanceOfFibrillation(it?.heartEquivalent ?? 0, it?.duration ?? 0.05))
  const ifFailed = exposures.map((it, i) => {
    return it?.ifItFails ? chanceOfFibrillation(it.ifItFails.heartEquivalent, it.ifItFails.duration) : chances[i]!
  })
  const likely = chances.reduce((sum, it) => sum + it.likely, 0) / chances.length
  return {
    likely,
    low: Math.min(likely, spreadOf(chances.map((it) => it.low)).low),
    high: Math.max(likely, spreadOf(chances.map((it, i) => Math.max(it.high, ifFailed[i]!.high))).high),
    beyondRange: chances.some((it) => it.beyondRange),
  }
}

/** Each thing that is drawn has its stream, so that one more range leaves the others as they were. */
export function* drawnScenarios(scenario: Scenario, draws: number): Generator<Scenario> {
  const ranges = scenario.ranges.map((range) => ({ ...range, chance: stream(scenario.seed, `chance ${range.of}`) }))
  const people = stream(scenario.seed, 'chance body')
  for (let draw = 0; draw < draws; draw++) {
    let corner: Corner = { ...declaredCorner, id: `draw ${draw}` }
    for (const { of, low, high, chance } of ranges) {
      corner = { ...corner, [of]: exp(ln(low) + chance.next() * (ln(high) - ln(low))) }
    }
    const percentile = 1 + 98 * people.next()
    yield { ...inCorner(scenario, corner), body: { ...scenario.body, percentile } }
  }
}

function spreadOf(values: readonly number[]): Spread {
  const sorted = [...values].sort((a, b) => a - b)
  const at = (share: number): number => sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)]!
  return { low: at(0.05), middle: at(0.5), high: at(0.95) }
}

/** Two-sided 95 %. */
const z = 1.959963984540054

export function countedShare(count: number, of: number): CountedShare {
  const share = count / of
  const spread = (z * z) / of
  const centre = (share + spread / 2) / (1 + spread)
  const half = (z / (1 + spread)) * Math.sqrt((share * (1 - share)) / of + spread / (4 * of))
  return {
    count,
    of,
    share,
    low: count === 0 ? 0 : Math.max(0, centre - half),
    high: count === of ? 1 : Math.min(1, centre + half),
  }
}
