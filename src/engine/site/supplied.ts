/** Volts by the way the switches stand, whatever else may have come on: a closed path of blades to a feeder in service. */
import { voltageToEarth } from './phasesOf'
import { isApart } from './jumpersOut'
import type { Phase, ThingId } from './scenario'
import type { Site } from './site'

/** Volts to earth of that conductor of the section; 0 where no closed path feeds it. */
export function suppliedVoltage(site: Site, phase: Phase): number {
  const feeders = site.scenario.switches
    .filter(
      (it) => isFedThrough(site, it.id, phase) && !site.feedersOut.includes(it.feeder) && !isApart(site, it.along),
    )
    .map((it) => it.feeder)
  return feederVoltage(site, feeders)
}

/** The blade is closed, and protection has not locked out what came alive by it: that stays off until the permit is back. */
export function isFedThrough({ switches, livening, paper }: Site, at: ThingId, phase: Phase): boolean {
  const out = paper.permit === 'returned' ? undefined : livening?.lockedOut
  const isLockedOut = out?.switch === at && out.phases.includes(phase)
  return switches[at]?.blades[phase] === 'closed' && !isLockedOut
}

/** The largest of those feeders, phase to earth; 0 without one. */
export function feederVoltage({ scenario }: Site, ids: readonly ThingId[]): number {
  return Math.max(0, ...scenario.feeders.filter((it) => ids.includes(it.id)).map(voltageToEarth))
}

/**
 * The low voltage under the line has a source: always, unless a transformer of the section feeds it; then while that is
 * joined and alive on some conductor.
 * @param isAlive whether a conductor of that phase is
 */
export function isLowVoltageFed(site: Site, isAlive: (phase: Phase) => boolean): boolean {
  const { lv, transformers = [] } = site.scenario
  const by = transformers.find((it) => it.id === lv.fedBy)
  if (by === undefined) return true
  return isJoinedThrough(site, by.id) && by.phases.some(isAlive)
}

/** A switch wire of street lamps that the next street feeds. */
export function hasOwnSupply({ scenario }: Site, wire: ThingId): boolean {
  return scenario.lv.wires.some(({ id, lamps }) => id === wire && lamps?.ownSupply === true)
}

/** Carriers in, main switch closed. */
function isJoinedThrough(site: Site, transformer: ThingId): boolean {
  return site.carriers[transformer] === 'in' && site.mains[transformer]?.position === 'closed'
}
