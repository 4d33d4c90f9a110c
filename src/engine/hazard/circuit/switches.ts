/** Switches of the section as they are really set, hung blades included, and the earths fitted at them. */
import type { Element } from '../../physics/network'
import { REMOTE_EARTH } from '../../physics/network'
import { phasesOf } from '../../site/phasesOf'
import type { Phase, Scenario, ScenarioSwitch, ThingId } from '../../site/scenario'
import { invariant } from '../../units/invariant'
import type { Fitted } from './fitted'
import { conductorNode, feederNode } from './nodes'
import { jointResistance, resistor } from './parts'
import { conductorOfPhase } from './supply'

export function requireSwitchOf(scenario: Scenario, id: ThingId): ScenarioSwitch {
  const at = scenario.switches.find((it) => it.id === id)
  invariant(at, 'a switch of the scenario', id)
  return at
}

/** One closed blade: from the feeder's end into the section. */
export function blade(scenario: Scenario, at: ScenarioSwitch, phase: Phase): Element {
  const conductor = conductorOfPhase(scenario.conductors, phase)
  return resistor(
    bladeId(at.id, phase),
    feederNode(at.feeder, 'end', phase),
    conductorNode(conductor.id, at.id),
    jointResistance,
  )
}

/** All the blades that it has. */
export function allBlades(scenario: Scenario, at: ScenarioSwitch): readonly Element[] {
  return phasesOf(scenario.conductors).map((phase) => blade(scenario, at, phase))
}

export function bladeId(at: ThingId, phase: Phase): string {
  return `${at}/blade-${phase}`
}

export function closedBlades(
  scenario: Scenario,
  fitted: Fitted,
  isLive: (feeder: string) => boolean,
): readonly Element[] {
  return scenario.switches.flatMap((at) => {
    if (!isLive(at.feeder)) return []
    const closed = fitted.switches.find((it) => it.id === at.id)?.closed ?? []
    return phasesOf(scenario.conductors)
      .filter((phase) => closed.includes(phase))
      .map((phase) => blade(scenario, at, phase))
  })
}

/** All conductors joined at the isolation point and led to an earth of their own, far from the pole: no shared soil. */
export function isolationEarths(scenario: Scenario, fitted: Fitted): readonly Element[] {
  return fitted.switches.flatMap(({ id, earth }) => {
    if (earth === null) return []
    const bar = `${id}/earth-bar`
    return [
      resistor(`${id}/earth`, bar, REMOTE_EARTH, earth.resistance),
      ...scenario.conductors
        .slice(0, earth.phases)
        .map((it) =>
          resistor(`${id}/earth-lead-${it.phase}`, conductorNode(it.id, id), bar, scenario.contact.clampGood),
        ),
    ]
  })
}
