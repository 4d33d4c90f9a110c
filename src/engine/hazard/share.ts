/**
 * How much each protective thing mattered at one instant, to one person, in one corner: the value that the person is
 * judged by is solved for every combination of the things that are fitted and worn, and the whole reduction is divided
 * among them by Shapley's shares (shapley.ts). A negative share: the thing made it worse for that person.
 *
 * Each combination is an ordinary solve of the site without the other things, so what it gives is what `liven` gives.
 * 2ⁿ grows fast: at most ten things are divided among. Of more, the ten with the largest effect by themselves, taken
 * from everything or added to nothing; the rest stay as they are in every combination and are named.
 */
import { isUnsolvable, type Unsolvable } from '../physics/network'
import type { PersonId } from '../site/scenario'
import type { Corner } from './corner'
import type { Exposure } from './exposure'
import { crewAnswers, lineOf, publicAnswers, type LiveMoment } from './liven'
import { shapley } from './shapley'
import { createSweepCache, type SweepCache } from './sweepCache'
import { fittedThings, withoutThing, type FittedThing } from './without'

export interface JudgedPerson {
  readonly person: PersonId | 'bystander'
  /** Of the public one path is judged; of the crew whatever reaches the person. */
  readonly path: string
  readonly livening: string
  /** Layers between their use and their proof voltage: taken as holding, or as failing. */
  readonly layers: 'hold' | 'fail'
}

export interface Shares extends JudgedPerson {
  readonly kind: 'shares'
  readonly corner: string
  /** The value judged (A; V for the public) as it was, and with none of the divided things. */
  readonly withAll: number
  readonly withNone: number
  /** In the order of `fittedThings`; together they are `withNone` - `withAll`. */
  readonly shares: readonly { readonly thing: FittedThing; readonly share: number }[]
  /** Fitted in every combination, because more than ten things are. */
  readonly undivided: readonly FittedThing[]
}

export const mostDivided = 10

export function sharesOf(
  moment: LiveMoment,
  whom: JudgedPerson,
  corner: Corner,
  cache: SweepCache = createSweepCache(),
): Shares | Unsolvable {
  const all = protectiveThings(moment)
  const judged = judgedWith(moment, all, whom, corner, cache)
  const things = all.length > mostDivided ? mostEffective(all, judged) : all
  if (isUnsolvable(things)) return things
  const undivided = all.filter((it) => !things.includes(it))
  const values = new Float64Array(1 << things.length)
  for (let set = 0; set < values.length; set++) {
    const fitted = things.filter((_, i) => (set & (1 << i)) !== 0)
    const value = judged(new Set([...undivided, ...fitted]))
    if (isUnsolvable(value)) return value
    values[set] = value
  }
  const withNone = values[0]!
  const shares = shapley(values.map((value) => withNone - value))
  return {
    kind: 'shares',
    ...whom,
    corner: corner.id,
    withAll: values[values.length - 1]!,
    withNone,
    shares: things.map((thing, i) => ({ thing, share: shares[i]! })),
    undivided,
  }
}

/** Whole leads, not each clamp. */
export function protectiveThings({ site }: LiveMoment): readonly FittedThing[] {
  return fittedThings(site).filter((it) => it.kind !== 'clamp')
}

type Judged = (fitted: ReadonlySet<FittedThing>) => number | Unsolvable

/** The value that the person is judged by with only those of all things; 0 where nothing worth a number flows. */
function judgedWith(
  moment: LiveMoment,
  all: readonly FittedThing[],
  whom: JudgedPerson,
  corner: Corner,
  cache: SweepCache,
): Judged {
  // equal sites and bodies are the same objects, so that what is known of them is found again
  const isWorn = (it: FittedThing): boolean => isLayer(it)
  const sites = new Map<string, LiveMoment['site']>()
  const bodies = new Map<string, LiveMoment['bodies']>()
  return (fitted) => {
    const away = all.filter((it) => !fitted.has(it))
    const site = made(
      sites,
      away.filter((it) => !isWorn(it)),
      (gone) => gone.reduce(withoutThing, moment).site,
    )
    const worn = made(bodies, away.filter(isWorn), (gone) => gone.reduce(withoutThing, moment).bodies)
    return judgedOf({ site, bodies: worn }, whom, corner, cache)
  }
}

function made<T>(known: Map<string, T>, away: readonly FittedThing[], make: (away: readonly FittedThing[]) => T): T {
  const name = away.map((it) => `${it.kind} ${it.item}`).join(',')
  const found = known.get(name) ?? make(away)
  known.set(name, found)
  return found
}

function isLayer({ kind }: FittedThing): boolean {
  return ['cover', 'guard', 'boots', 'overshoes', 'gloves', 'platform'].includes(kind)
}

/** The same as `liven` gives for that person. */
export function judgedOf(
  moment: LiveMoment,
  whom: JudgedPerson,
  corner: Corner,
  cache: SweepCache,
): number | Unsolvable {
  const exposure = exposureOf(moment, whom, corner, cache)
  if (exposure === null || isUnsolvable(exposure)) return exposure ?? 0
  return (whom.layers === 'fail' ? (exposure.ifItFails ?? exposure) : exposure).judged
}

export function exposureOf(
  moment: LiveMoment,
  { person, path, livening }: Omit<JudgedPerson, 'layers'>,
  corner: Corner,
  cache: SweepCache,
): Exposure | null | Unsolvable {
  const line = lineOf(moment.site, livening, corner, cache)
  if (isUnsolvable(line)) return line
  const isPublic = person === 'bystander'
  const answers = isPublic
    ? publicAnswers(moment.site, line, corner, cache)
    : crewAnswers(moment, line, corner, cache).filter((it) => it.person === person)
  for (const { answer } of answers) {
    if (isUnsolvable(answer)) return answer
    if (answer.exposure !== null && (!isPublic || answer.exposure.path === path)) return answer.exposure
  }
  return null
}

function mostEffective(all: readonly FittedThing[], judged: Judged): readonly FittedThing[] | Unsolvable {
  const whole = judged(new Set(all))
  const bare = judged(new Set())
  if (isUnsolvable(whole)) return whole
  if (isUnsolvable(bare)) return bare
  const effects: { readonly thing: FittedThing; readonly effect: number }[] = []
  for (const thing of all) {
    const taken = judged(new Set(all.filter((it) => it !== thing)))
    const alone = judged(new Set([thing]))
    if (isUnsolvable(taken)) return taken
    if (isUnsolvable(alone)) return alone
    effects.push({ thing, effect: Math.max(Math.abs(taken - whole), Math.abs(bare - alone)) })
  }
  // a stable order: of equals the first fitted
  const ranked = [...effects].sort((a, b) => b.effect - a.effect)
  const kept = new Set(ranked.slice(0, mostDivided).map((it) => it.thing))
  return all.filter((it) => kept.has(it))
}
