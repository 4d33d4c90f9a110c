/** What reached a person: the hazard engine's answer. Rms magnitudes, SI. */
import type { ShockPath, Zone } from '../physics/body'
import type { Unsolvable } from '../physics/network'
import type { GroundPoint } from '../site/place'
import type { ItemId, PersonId } from '../site/scenario'
import type { Happening } from './happening'
import type { ClearedBy, LinePhase, Shot } from './lineStory'

export type PathId = string
/** `below`: under the limit in every corner; `above`: over it in every corner; `marginal`: it depends. */
export type LimitVerdict = 'below' | 'marginal' | 'above'

/** Each shot is a shock of its own: how many, the longest of them, all together. Seconds. */
export interface ExposureShots {
  readonly count: number
  readonly longest: number
  readonly total: number
}

export interface Exposure {
  readonly person: PersonId | 'bystander'
  /** One of hazard/paths: `hand-hand`, `hand-thigh`, `hand-feet`, `pace`, … */
  readonly path: PathId
  readonly shockPath: ShockPath
  /** Between the two worst contact points with the person away, volts. */
  readonly prospectiveVoltage: number
  readonly bodyVoltage: number
  readonly bodyCurrent: number
  readonly heartEquivalent: number
  /** Seconds that at least this current flowed in one shot; to the horizon when nothing cleared it. */
  readonly duration: number
  readonly cleared: boolean
  /** All shots in which anything of it reached the person. */
  readonly shots: ExposureShots
  readonly zone: Zone
  /** The limit that this path is judged by, and the value judged (A for crew, V for a bystander). */
  readonly limit: number
  readonly judged: number
  /** The item whose insulation failed; else that may fail; else that stood the most. Its voltage then. */
  readonly layer: {
    readonly item: ItemId
    readonly voltage: number
    readonly did: 'held' | 'may-fail' | 'failed'
  } | null
  readonly beyondRange: boolean
  /** A layer stands more than its class promises and less than its proof: the same exposure with that layer gone. */
  readonly ifItFails?: Omit<Exposure, 'layer' | 'ifItFails'>
}

/** The worst of one person on one path over everything that was tried. */
export interface WorstExposure {
  readonly person: string
  readonly path: PathId
  readonly verdict: LimitVerdict
  /** Job second of the moment, livening id (`none` = the supply as set). */
  readonly at: number
  readonly livening: string
  /** In the declared corner, or in the first in which anything reached the person. */
  readonly exposure: Exposure
  /** The value judged over its limit by corner id; `<corner> fails` beside it where a layer may fail. */
  readonly ratios: Readonly<Record<string, number>>
}

/** Between the feet of livestock outside the barrier, volts, and what the scenario allows it. */
export interface LivestockPace {
  readonly path: PathId
  readonly voltage: number
  readonly limit: number
  readonly feet: readonly [GroundPoint, GroundPoint]
}

/** One livening at one moment in one corner. */
export interface Story {
  readonly kind: 'story'
  readonly livening: string
  readonly corner: string
  /** Rise of the lead's earth end (V), current in the livened link (A), longest shot until cleared (s) and by what. */
  readonly siteRise: number
  readonly liveCurrent: number
  readonly duration: number
  readonly clearedBy: ClearedBy
  /** In order; one where the section was live all the time, or not at all. */
  readonly shots: readonly Shot[]
  /** Second at which the last source was off for good, or the horizon. */
  readonly end: number
  readonly exposures: readonly Exposure[]
  readonly livestock?: LivestockPace
  /** Items whose insulation failed in this corner; where it only may fail, the item is not named. */
  readonly failedItems: readonly ItemId[]
  /** Leads of which a piece melted or a clamp burnt off, and all that carried the fault: to be quarantined. */
  readonly meltedItems: readonly ItemId[]
  readonly carriedBy: readonly ItemId[]
  /** Everything that happened in its course, in time. */
  readonly happenings: readonly Happening[]
}

export type StoryAnswer = Story | (Unsolvable & { readonly livening: string; readonly corner: string })

/** @param phases those in which something of it reached the person */
export function exposureShots(phases: readonly LinePhase[]): ExposureShots {
  const byShot = new Map<number, number>()
  for (const phase of new Set(phases)) {
    byShot.set(phase.shot, (byShot.get(phase.shot) ?? 0) + phase.to - phase.from)
  }
  const each = [...byShot.values()]
  return { count: each.length, longest: Math.max(0, ...each), total: each.reduce((sum, it) => sum + it, 0) }
}
