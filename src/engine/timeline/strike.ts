/** The visible livening: when it strikes, what keeps it from striking, what it leaves behind. */
import { perceive } from '../actions/changes'
import { declaredCorner } from '../hazard/corner'
import { liven } from '../hazard/liven'
import { findRemovedCause, traitsOf, type Sign } from '../site/liveningTraits'
import type { ItemId, Livening, PersonId, ThingId } from '../site/scenario'
import type { LiveningRecord, Site } from '../site/site'
import { invariant } from '../units/invariant'
import { carriedCurrent } from './carried'
import type { Entry, Moment, Timeline } from './timeline'
import { triggers } from './triggers'

export interface Strike {
  readonly livening: string
  /** Second in which it strikes, and the moment that begins then. */
  readonly at: number
  readonly moment: number
}

export interface Events {
  /** Struck, its effects not yet applied: they are, one second later. */
  readonly striking: Strike | null
  readonly struck: Timeline['struck']
  readonly prevented: Timeline['prevented']
}

export const nothingYet: Events = { striking: null, struck: null, prevented: null }

/** Second of the fallback: so long after the first permit; undefined before one. */
export function findFallback(site: Site): number | undefined {
  const permit = site.marks['permit-taken']
  const { visible } = site.scenario
  return visible && permit !== undefined ? permit + visible.fallback : undefined
}

/** Whether it is due in this moment: its trigger is met or the fallback has come. */
export function isDue(events: Events, moment: Moment, acts: readonly Entry[]): boolean {
  const { visible } = moment.site.scenario
  if (!visible || events.struck || events.prevented) return false
  const fallback = findFallback(moment.site)
  if (fallback !== undefined && fallback <= moment.from) return true
  const trigger = triggers.get(visible.trigger)
  invariant(trigger, 'a trigger of engine/timeline/triggers', visible.trigger)
  return trigger(moment, acts)
}

/** It strikes in this moment, unless somebody has removed its cause. */
export function strikeNow(events: Events, moment: Moment, index: number): Events {
  const livening = requireLivening(moment.site, moment.site.scenario.visible?.livening ?? '')
  const why = findRemovedCause(moment.site, livening)
  if (why !== undefined) return { ...events, prevented: { livening: livening.id, why } }
  const strike = { livening: livening.id, at: moment.from, moment: index }
  return { ...events, striking: strike, struck: strike }
}

/** The site after it: gear that carried current and insulation that failed stay so, everybody has seen and heard. */
export function afterStrike(site: Site, moment: Moment, strike: Strike): Site {
  const livening = requireLivening(site, strike.livening)
  const left = leftBehind(moment, livening)
  const signs = traitsOf(livening).signs?.(site.scenario, livening) ?? flashAndCrack
  const items = Object.fromEntries(
    Object.entries(site.items).map(([id, item]) => [
      id,
      { ...item, faulted: item.faulted || left.faulted.includes(id), failed: item.failed || left.failed.includes(id) },
    ]),
  )
  const record = {
    ...{ id: strike.livening, at: strike.at, cleared: left.cleared, provedOff: false },
    ...(left.cleared && lockedOutBy(site, livening)),
  }
  const switches = shutBy(site, livening)
  const struck: Site = { ...site, items, switches, livening: record, paper: { ...site.paper, safeToWork: false } }
  const down = site.scenario.casualties === true ? Object.keys(site.persons).filter((id) => left.hurt.includes(id)) : []
  const fallen: Site = down.length === 0 ? struck : { ...struck, hurt: down }
  const seen = [...signs, ...down.map((of): Sign => ({ of, by: 'look', says: 'livening.somebody-down' }))]
  return Object.keys(site.persons).reduce(
    (next, who) => perceive(next, who, ...(down.includes(who) ? signs : seen)),
    fallen,
  )
}

/** The blades that it shut, whose feeder protection has taken off: shut, and dead behind them. */
function lockedOutBy({ scenario }: Site, livening: Livening): Pick<LiveningRecord, 'lockedOut'> {
  const { by, phases } = traitsOf(livening)
  if (by !== 'switch' || !('switch' in livening)) return {}
  return { lockedOut: { switch: livening.switch, phases: phases(scenario, livening) } }
}

/** The blades as it has left them: whoever closed them has not opened them again. */
function shutBy(site: Site, livening: Livening): Site['switches'] {
  const { by, phases } = traitsOf(livening)
  const state = 'switch' in livening ? site.switches[livening.switch] : undefined
  if (by !== 'switch' || state === undefined || !('switch' in livening)) return site.switches
  const shut = Object.fromEntries(phases(site.scenario, livening).map((phase) => [phase, 'closed'] as const))
  const handle = 'phase' in livening ? state.handle : 'closed'
  return { ...site.switches, [livening.switch]: { ...state, handle, blades: { ...state.blades, ...shut } } }
}

const flashAndCrack: readonly Sign[] = [
  { of: 'pole-top', by: 'look', says: 'livening.flash' },
  { of: 'pole-top', by: 'hear', says: 'livening.bang' },
]

interface LeftBehind {
  readonly faulted: readonly ItemId[]
  readonly failed: readonly ItemId[]
  readonly cleared: boolean
  readonly hurt: readonly PersonId[]
}

/** By the declared corner of the circuit; where that cannot be solved, whatever hangs on the livened wires counts as faulted. */
function leftBehind(moment: Moment, livening: Livening): LeftBehind {
  const story = liven(moment, livening.id, declaredCorner)
  if (story.kind === 'unsolvable') {
    return {
      faulted: carriedCurrent(moment.site, livenedThings(moment.site, livening)),
      failed: [],
      cleared: false,
      hurt: [],
    }
  }
  return {
    faulted: [...story.carriedBy, ...story.meltedItems],
    failed: story.failedItems,
    cleared: story.clearedBy !== 'nothing',
    hurt: story.exposures.filter(({ zone }) => zone.startsWith('AC-4')).map(({ person }) => person),
  }
}

/** Conductors of the section that it puts voltage on. */
function livenedThings(site: Site, livening: Livening): readonly ThingId[] {
  const phases = traitsOf(livening).phases(site.scenario, livening)
  return site.scenario.conductors.filter((it) => phases.includes(it.phase)).map((it) => it.id)
}

function requireLivening(site: Site, id: string): Livening {
  const livening = site.scenario.livenings.find((it) => it.id === id)
  invariant(livening, 'a livening of the scenario', id)
  return livening
}
