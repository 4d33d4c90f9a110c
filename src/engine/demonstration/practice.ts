/**
 * What an employer's pack asks of the way the job is done, read out of its rules: a rule that cannot be kept otherwise is
 * a demand. Nothing here names a rule or a pack; where a pack asks nothing, the usual way of the trade stands (common
 * practice, no source).
 */
import type { Pack, PackRule } from '../rules/finding'
import type { Pole } from '../site/pole'
import { thighAt } from '../site/stations'

export interface Practice {
  /** Earths at the switches that were closed, before the permit. */
  readonly hasMainEarths: boolean
  /** A cover on a pole that conducts. */
  readonly isCoverAsked: boolean
  /** The neutral wire of the line takes the first clamp, where there is one. */
  readonly isNeutralFirst: boolean
  /** A step is listened to before it is repeated, and reported when it is done. */
  readonly hearsSteps: boolean
  readonly reportsSteps: boolean
  /** The pack has rules for a bucket; without them the pole is climbed. */
  readonly knowsBucket: boolean
  /** The pack knows of work that goes on at the next pole; without rules for it, it is left for another day. */
  readonly goesToNextPole: boolean
  readonly guards: Pack['lvGuard']
  /** Metres from every electrode to the barrier, and to the parked truck. */
  readonly barrier: number
  readonly truckAway: number
  /** The same of a truck that is worked from: what the pack asks and no more. */
  readonly boomTruckAway: number
  /** Metres from the pole to the rod, and into the ground. */
  readonly rodAway: number
  readonly rodDepth: number
  /** Edges of the cover above ground: the lower not above, the upper not below; metres. */
  readonly coverFrom: number
  readonly coverTo: number
  /** Least classes of insulation and least copper sections, mm². */
  readonly bootClass: number
  readonly coverClass: number
  readonly guardClass: number
  readonly leadArea: number
  readonly bondArea: number
  /** What is on the hands at the stick, at the bond and at the work; undefined: the pack does not say. */
  readonly stickGloves: string | undefined
  readonly bondGloves: string
  readonly workGloves: string
}

/** What is done where a pack is silent: metres and mm². */
const usual = { barrier: 6, truckAway: 12, rodAway: 3, rodDepth: 1.8, coverMargin: 0.5, area: 25 } as const

/** @param pole that is worked on */
export function practiceOf(pack: Pack, pole: Pole): Practice {
  const thigh = thighAt(pole, 'above-lv')
  const least = (measure: string, act: string, otherwise: number): number =>
    Math.max(otherwise, ...limitsOf(pack, measure, act))
  return {
    hasMainEarths: pack.permitAfter === 'earthsAtIsolationPoints',
    isCoverAsked: asksThat(pack, 'any-cover'),
    isNeutralFirst: asksThat(pack, 'lead-on-neutral'),
    hearsSteps: needs(pack, 'hear-step'),
    reportsSteps: needs(pack, 'report-step'),
    knowsBucket: asksThat(pack, 'move-bucket'),
    goesToNextPole: asksThat(pack, 'assess-next-pole'),
    guards: pack.lvGuard,
    barrier: least('barrier-clearance', 'clamp-earth-end', usual.barrier),
    truckAway: least('place-to-electrodes', 'park-truck', usual.truckAway),
    boomTruckAway: least('place-to-electrodes', 'park-truck', 3),
    rodAway: least('rod-to-pole', 'drive-rod', usual.rodAway),
    rodDepth: least('rod-depth', 'drive-rod', usual.rodDepth),
    coverFrom: thigh - least('cover-below-thigh', 'fit-cover', usual.coverMargin),
    coverTo: thigh + least('cover-above-thigh', 'fit-cover', usual.coverMargin),
    bootClass: least('item-class', 'wear', 1),
    coverClass: least('item-class', 'fit-cover', 1),
    guardClass: least('item-class', 'fit-guard', 1),
    leadArea: least('item-area', 'clamp-earth-end', usual.area),
    bondArea: least('item-area', 'bond-metal', usual.area),
    stickGloves: findWorn(pack, 'clamp'),
    bondGloves: findWorn(pack, 'bond-metal') ?? 'work-gloves',
    workGloves: findWorn(pack, 'untie') ?? 'work-gloves',
  }
}

/** Parts of a rule that say when it does not speak, or the contrary of what it asks. */
const notAsked: readonly string[] = ['not', 'unless', 'appliesIf']

/** Some rule wants this state. */
function asksThat(pack: Pack, predicate: string): boolean {
  return pack.rules.some((rule) => mentions(rule.parameters, predicate))
}

/** Some rule misses this act where it was left out; one that only looks at how it was done does not ask for it. */
function needs(pack: Pack, act: string): boolean {
  return pack.rules.some(({ parameters }) => mentions(parameters['need'], act))
}

function mentions(value: unknown, name: string): boolean {
  if (typeof value === 'string') return value === name
  if (Array.isArray(value)) return value.some((part) => mentions(part, name))
  if (typeof value !== 'object' || value === null) return false
  return Object.entries(value).some(([key, part]) => !notAsked.includes(key) && mentions(part, name))
}

function limitsOf(pack: Pack, measure: string, act: string): readonly number[] {
  return pack.rules.flatMap(({ parameters }) => {
    const limit = parameters['least']
    const isMeant = parameters['measure'] === measure && isAbout(parameters['when'], act)
    return isMeant && typeof limit === 'number' ? [limit] : []
  })
}

/** The gear that a rule wants on whoever does the act. */
function findWorn(pack: Pack, act: string): string | undefined {
  return pack.rules
    .filter((rule) => isAbout(rule.parameters['when'], act))
    .map(wornBy)
    .find((it) => it !== undefined)
}

function wornBy({ parameters: { holds } }: PackRule): string | undefined {
  const isWears = typeof holds === 'object' && holds !== null && 'is' in holds && holds.is === 'wears'
  return isWears && 'type' in holds && typeof holds.type === 'string' ? holds.type : undefined
}

/** One of the patterns names the act. */
function isAbout(when: unknown, act: string): boolean {
  const patterns: readonly unknown[] = Array.isArray(when) ? when : [when]
  return patterns.some((it) => typeof it === 'object' && it !== null && 'do' in it && mentions(it.do, act))
}
