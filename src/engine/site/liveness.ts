/**
 * Whether a thing is alive by the way the network stands: a closed path of blades to a circuit in service. Structural:
 * no circuit is solved. What an earthed but fed conductor carries is the hazard engine's answer.
 */
import { isCutOff } from './mains'
import { findRemovedCause, traitsOf } from './liveningTraits'
import { isApart } from './jumpersOut'
import type { Livening, Phase, ThingId } from './scenario'
import type { Site } from './site'
import { feederVoltage, hasOwnSupply, isLowVoltageFed, suppliedVoltage } from './supplied'

/** Volts to earth, rms, of a conductor or low-voltage wire as it stands fed; 0 when no closed path feeds it. */
export function liveVoltage(site: Site, thing: ThingId): number {
  const { conductors, lv } = site.scenario
  const wire = lv.wires.find((it) => it.id === thing)
  if (wire) return wire.phase === 'N' ? 0 : wireVoltage(site, wire)
  const conductor = conductors.find((it) => it.id === thing)
  return conductor ? phaseVoltage(site, conductor.phase) : 0
}

function phaseVoltage(site: Site, phase: Phase): number {
  return Math.max(suppliedVoltage(site, phase), livenedVoltage(site, phase))
}

/** A switch wire is dead until its lamps are on; a wire of a dead transformer until somebody feeds its low side. */
function wireVoltage(site: Site, wire: Site['scenario']['lv']['wires'][number]): number {
  const { lv, embedded = [] } = site.scenario
  const struck = findStanding(site)
  const isDark = wire.lamps !== undefined && !(struck?.kind === 'street-lamps-on' && struck.wire === wire.id)
  const isSwitchedOff = isDark || isCutOff(site, wire.id) || isBondedToNeutral(site, wire.id)
  const source =
    struck?.kind === 'back-feed' || struck?.kind === 'low-voltage-fed'
      ? embedded.find((it) => it.id === struck.source)
      : undefined
  const isBackFed = source !== undefined && source.transformer === lv.fedBy
  const isFed =
    isBackFed || hasOwnSupply(site, wire.id) || isLowVoltageFed(site, (phase) => phaseVoltage(site, phase) > 0)
  return isFed && !isSwitchedOff ? lv.voltage : 0
}

/** Bonds hold it at the neutral, whatever feeds it (the circuit has the volts that are left). */
function isBondedToNeutral({ clamps, scenario }: Site, wire: ThingId): boolean {
  const neutrals = scenario.lv.wires.filter((it) => it.phase === 'N').map((it) => it.id)
  const leads = clamps.filter((it) => it.on === wire).map((it) => it.lead)
  return clamps.some((it) => leads.includes(it.lead) && neutrals.includes(it.on))
}

/** Volts to earth of a livening that no protection has cleared and no control room has proved off. */
function livenedVoltage(site: Site, phase: Phase): number {
  const what = findStanding(site)
  if (!what) return 0
  const { by, phases, feeders, voltage } = traitsOf(what)
  if (by === 'switch' || !phases(site.scenario, what).includes(phase)) return 0
  const isAtPole = 'at' in what && what.at === 'pole'
  if (by === 'crossing' && !isAtPole && isApart(site, site.scenario.section.crossingAlong)) return 0
  return voltage?.(site.scenario, what) ?? feederVoltage(site, feeders(site.scenario, what))
}

/** The livening that has struck and lasts: of a source elsewhere, while nothing has taken its way to here. */
export function findStanding(site: Site): Livening | undefined {
  const { livening, scenario } = site
  if (!livening || livening.provedOff || livening.cleared) return undefined
  const what = scenario.livenings.find((it) => it.id === livening.id)
  if (!what) return undefined
  const isGone = traitsOf(what).by === 'elsewhere' && findRemovedCause(site, what) !== undefined
  return isGone ? undefined : what
}
