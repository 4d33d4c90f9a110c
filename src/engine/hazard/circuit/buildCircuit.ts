/**
 * The whole circuit of a site at one instant: every part that is there, no part that is not, nobody in it. A feeder is
 * in it while something joins it to the section and its breaker is closed, its neutral wire always; so is what runs
 * beside the section.
 */
import type { Circuit, Element } from '../../physics/network'
import { feedersOf } from '../../site/liveningTraits'
import type { Livening, Scenario, ThingId } from '../../site/scenario'
import { electrodesElement } from './electrodes'
import type { Fitted } from './fitted'
import type { Ground } from './ground'
import { groundThings } from './groundThings'
import { handles } from './handles'
import { leads, type LeadWear } from './leads'
import { liveningChange, liveningLinks, liveningSource } from './livening'
import { feedId, lowVoltage } from './lowVoltage'
import { nearEarths } from './nearEarths'
import { idleNeutral } from './neutralWire'
import { drawnFrom, parallelSources } from './parallel'
import { metalwork } from './metalwork'
import { withOpened } from './opened'
import { pole } from './pole'
import { section } from './section'
import { feedersBeside } from './sources'
import { stay } from './stay'
import { truckParts } from './truck'
import { requireFeeder, supply } from './supply'
import { closedBlades, isolationEarths } from './switches'
import { transformers } from './transformer'

export interface SiteCircuit extends Circuit {
  /** Ids of the elements through which the section is live now. */
  readonly links: readonly string[]
}

export function buildCircuit(
  scenario: Scenario,
  fitted: Fitted,
  livening: Livening | 'none',
  ground: Ground,
  live: readonly ThingId[],
  wear: LeadWear,
): SiteCircuit {
  const links = linksOf(scenario, fitted, livening, live)
  const own = liveningSource(scenario, livening)
  const beside = feedersBeside(scenario, fitted, livening, live)
  const alive = [...new Set([...live.filter((id) => id !== own?.id), ...beside])]
  const elements = [
    ...alive.flatMap((feeder) => standing(scenario, feeder, () => supply(scenario, requireFeeder(scenario, feeder)))),
    ...(own !== undefined && live.includes(own.id) ? drawnFrom(scenario, alive, own.elements) : []),
    ...links,
    ...isolationEarths(scenario, fitted),
    ...leads(scenario.frequency, fitted, wear),
    ...standing(scenario, '', () => [
      ...section(scenario),
      ...pole(scenario),
      ...metalwork(scenario),
      ...(scenario.stay ? stay(scenario.stay) : []),
      ...lowVoltage(scenario),
    ]),
    ...truckParts(scenario, fitted),
    ...transformers(scenario, fitted.transformers).filter((it) => !links.some((link) => link.id === it.id)),
    ...nearEarths(scenario, ground),
    ...groundThings(scenario, ground),
    ...handles(scenario, ground),
    ...(scenario.parallels ?? [])
      .filter((it) => it.feeder === undefined || alive.includes(it.feeder))
      .flatMap((it) => standing(scenario, `${it.id} beside`, () => parallelSources(it))),
    ...scenario.feeders
      .filter((feeder) => !alive.includes(feeder.id))
      .flatMap((feeder) => standing(scenario, `${feeder.id} idle`, () => idleNeutral(scenario, feeder))),
    electrodesElement(ground),
  ]
  const off = new Set(fitted.wiresOff?.map(feedId))
  const fed = off.size === 0 ? elements : elements.filter((it) => !off.has(it.id))
  const whole = withOpened(fed, scenario, fitted)
  const changed = livening !== 'none' && isAlive(scenario, livening, live)
  return {
    links: links.map((link) => link.id),
    elements: changed ? liveningChange(whole, scenario, livening) : whole,
  }
}

/** Every source behind the livening is on. */
function isAlive(scenario: Scenario, livening: Livening, live: readonly ThingId[]): boolean {
  const own = liveningSource(scenario, livening)
  return [...feedersOf(scenario, livening), ...(own ? [own.id] : [])].every((id) => live.includes(id))
}

const standingByScenario = new WeakMap<Scenario, Map<string, readonly Element[]>>()

/** Parts that no act of the crew changes are made once for a scenario. */
function standing(scenario: Scenario, name: string, make: () => readonly Element[]): readonly Element[] {
  let known = standingByScenario.get(scenario)
  if (known === undefined) standingByScenario.set(scenario, (known = new Map()))
  const made = known.get(name) ?? make()
  known.set(name, made)
  return made
}

/** What joins live feeders to the section; one element each, though a livening closes a blade that is closed. */
function linksOf(
  scenario: Scenario,
  fitted: Fitted,
  livening: Livening | 'none',
  live: readonly ThingId[],
): readonly Element[] {
  const set = closedBlades(scenario, fitted, (feeder) => live.includes(feeder))
  if (livening === 'none' || !isAlive(scenario, livening, live)) return set
  const added = liveningLinks(scenario, livening, fitted).filter((link) => !set.some((it) => it.id === link.id))
  return [...set, ...added]
}
