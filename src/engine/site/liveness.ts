/**
 * Whether a thing is alive by the way the network stands: a closed path of blades to a circuit in service. Structural:
 * no circuit is solved. What an earthed but fed conductor carries is the hazard engine's answer.
 */
import { traitsOf } from './liveningTraits'
import type { Phase, ThingId } from './scenario'
import type { Site } from './site'

/** Volts to earth, rms, of a conductor or low-voltage wire as it stands fed; 0 when no closed path feeds it. */
export function liveVoltage(site: Site, thing: ThingId): number {
  const { conductors, lv } = site.scenario
  const wire = lv.wires.find((it) => it.id === thing)
  if (wire) return wire.phase === 'N' ? 0 : lv.voltage
  const conductor = conductors.find((it) => it.id === thing)
  return conductor ? phaseVoltage(site, conductor.phase) : 0
}

function phaseVoltage(site: Site, phase: Phase): number {
  const fed = site.scenario.switches
    .filter((it) => site.switches[it.id]?.blades[phase] === 'closed' && !site.feedersOut.includes(it.feeder))
    .map((it) => site.scenario.feeders.find((feeder) => feeder.id === it.feeder)?.voltage ?? 0)
  const still = livenedVoltage(site, phase)
  return Math.max(0, still, ...fed) / Math.sqrt(3)
}

/** Phase to phase volts of a clash that no protection has cleared and no control room has proved off. */
function livenedVoltage(site: Site, phase: Phase): number {
  const { livening, scenario } = site
  if (!livening || livening.provedOff || livening.cleared) return 0
  const what = scenario.livenings.find((it) => it.id === livening.id)
  if (!what) return 0
  const { by, phases, feeders } = traitsOf(what)
  if (by === 'switch' || !phases(scenario, what).includes(phase)) return 0
  const sources = feeders(scenario, what)
  return Math.max(0, ...scenario.feeders.filter((it) => sources.includes(it.id)).map((it) => it.voltage))
}
