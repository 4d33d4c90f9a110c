/**
 * The low-voltage wires under the line, four with a neutral that is earthed at its star point and, where the scenario
 * says so, again and again at houses beyond the worked pole: a ladder. They are fed from a transformer outside the
 * section (its high-voltage side belongs to another circuit and is left out: the star holds its neutral whatever happens
 * here), or from a transformer of the section itself: then they live and die with the line, or with whoever feeds that
 * transformer's low side. A switch wire of street lamps hangs on its lamps until it is switched on. Each wire leaks over
 * its insulator into the pole.
 */
import type { Element } from '../../physics/network'
import { REMOTE_EARTH } from '../../physics/network'
import type { LowVoltage, Phase, Scenario } from '../../site/scenario'
import { boardNode, lowVoltageStarNode, neutralEarthNode } from './nodes'
import { reactive, resistor } from './parts'
import { poleNode } from './pole'
import { phasor } from './phasor'

export function lowVoltage(scenario: Scenario): readonly Element[] {
  const { lv } = scenario
  if (lv.wires.length === 0) return []
  const behind = poleNode(scenario, scenario.pole.lvHeight)
  return [...lv.wires.flatMap((wire) => wireElements(lv, wire, behind)), ...emfs(lv), ...neutralEarths(lv)]
}

type LowVoltageWire = LowVoltage['wires'][number]

/** @param behind node of the pole that its insulator is fixed to */
function wireElements(lv: LowVoltage, wire: LowVoltageWire, behind: string): readonly Element[] {
  const { id, phase, lamps } = wire
  const leak = resistor(`${id}/insulator`, id, behind, lv.insulatorLeakage)
  if (phase !== 'N' && lamps !== undefined) {
    const hanging = [resistor(`${id}/lamps`, id, requireNeutral(lv).id, lamps.resistance), leak]
    return lamps.ownSupply ? [...hanging, ownEmf(lv, id, phase)] : hanging
  }
  return [feed(lv, wire), leak]
}

export const feedId = (wire: string): string => `${wire}/wire`

/** The wire from where it is fed to the worked pole; of a switch wire, once its switch is closed. */
export function feed(lv: LowVoltage, { id, phase, lamps }: LowVoltageWire): Element {
  const own = phase === 'N' ? lowVoltageStarNode : phaseSource(lv, phase)
  const from = lamps?.ownSupply ? ownEmfNode(id) : own
  return { id: feedId(id), kind: 'impedance', from, to: id, impedance: lv.sourceImpedance }
}

const ownEmfNode = (wire: string): string => `${wire}/emf`

/** The next street's transformer shares the neutral of this one. */
function ownEmf({ voltage }: LowVoltage, wire: string, phase: Phase): Element {
  const from = ownEmfNode(wire)
  return { id: from, kind: 'voltage', from, to: lowVoltageStarNode, voltage: phasor(voltage, phase) }
}

function phaseSource({ fedBy }: LowVoltage, phase: Phase): string {
  return fedBy === undefined ? `lv/emf-${phase}` : boardNode(fedBy, phase)
}

/** One a phase that some wire has. */
function emfs({ fedBy, voltage, wires }: LowVoltage): readonly Element[] {
  if (fedBy !== undefined) return []
  const used = [...new Set(wires.map((it) => it.phase))]
  return used.flatMap((phase): readonly Element[] => {
    const id = `lv/emf-${phase}`
    if (phase === 'N') return []
    return [{ id, kind: 'voltage', from: id, to: lowVoltageStarNode, voltage: phasor(voltage, phase) }]
  })
}

function requireNeutral(lv: LowVoltage): LowVoltageWire {
  return lv.wires.find((it) => it.phase === 'N')!
}

/** From the pole outward: so much neutral, an earth, so much neutral, an earth. A near one is in nearEarths.ts. */
function neutralEarths(lv: LowVoltage): readonly Element[] {
  let [before, from] = [0, requireNeutral(lv).id]
  return (lv.houseEarths ?? []).flatMap(({ distance, resistance, at, wire }, place) => {
    const node = neutralEarthNode(place)
    const length = distance - before
    const span = reactive(`${node}/wire`, from, node, wire.re * length, wire.im * length)
    ;[before, from] = [distance, node]
    return at === undefined ? [span, resistor(`${node}/earth`, node, REMOTE_EARTH, resistance)] : [span]
  })
}
