/**
 * A distribution transformer of the section, whichever way the power goes: fuse carriers on the high side, its windings
 * (transformerWindings.ts), its low-voltage switch, its customers' load, the earth of its neutral. It stays in the circuit
 * with its carriers out: what feeds its low-voltage side then meets only windings that lead nowhere. Load matters with one
 * phase open: through the windings of the others it feeds that phase with amperes, the core alone with milliamperes.
 */
import { complex } from '../../math/complex'
import { REMOTE_EARTH, type Element } from '../../physics/network'
import type { Phase, Scenario, ThingId, Transformer } from '../../site/scenario'
import { invariant } from '../../units/invariant'
import type { FittedTransformer } from './fitted'
import { lowNeutralNode } from './lowNeutral'
import { boardNode, carrierId, conductorNode, transformerNode } from './nodes'
import { angularFrequency, jointResistance, resistor } from './parts'
import { conductorOfPhase } from './supply'
import { isThreePhase, lowPhases, windingsElement } from './transformerWindings'

/** A high-voltage terminal to the tank, farad (own choice: some nF are usual); it alone holds a side that is cut off. */
const terminalCapacitance = 1e-9

export function requireTransformer(scenario: Scenario, id: ThingId): Transformer {
  const transformer = scenario.transformers?.find((it) => it.id === id)
  invariant(transformer, 'a transformer of the section', id)
  return transformer
}

export function transformers(scenario: Scenario, fitted: readonly FittedTransformer[]): readonly Element[] {
  return (scenario.transformers ?? []).flatMap((it): readonly Element[] => {
    const state = fitted.find(({ id }) => id === it.id)
    invariant(state, 'a state of each transformer', it.id)
    return [
      windingsElement(it, lowNeutralNode(scenario, it.id)),
      ...strays(scenario.frequency, it),
      ...(state.carriers ? carriers(scenario, it) : []),
      ...(state.isClosed ? lowSwitch(it) : []),
      ...loads(scenario, it),
      ...earths(scenario, it),
    ]
  })
}

/** From each conductor of the section that it is on. */
export function carriers(scenario: Scenario, { id, phases }: Transformer): readonly Element[] {
  return phases.map((phase) => {
    const conductor = conductorOfPhase(scenario.conductors, phase)
    const from = conductorNode(conductor.id, id)
    return resistor(carrierId(id, phase), from, transformerNode(id, 'high', phase), jointResistance)
  })
}

function lowSwitch(transformer: Transformer): readonly Element[] {
  const { id } = transformer
  return lowPhases(transformer).map((phase) =>
    resistor(`${id}/switch-${phase}`, transformerNode(id, 'low', phase), boardNode(id, phase), jointResistance),
  )
}

/** A resistance a phase, even over the phases, that takes the load at full voltage. */
function loads(scenario: Scenario, transformer: Transformer): readonly Element[] {
  const { id, load, lowVoltage } = transformer
  const on = lowPhases(transformer)
  if (load === undefined) return []
  const ohm = (lowVoltage * lowVoltage * on.length) / load
  return on.map((phase) => resistor(`${id}/load-${phase}`, boardNode(id, phase), lowNeutralNode(scenario, id), ohm))
}

function strays(frequency: number, { id, phases }: Transformer): readonly Element[] {
  const admittance = complex(0, angularFrequency(frequency) * terminalCapacitance)
  return phases.map((phase: Phase): Element => {
    const from = transformerNode(id, 'high', phase)
    return { id: `${id}/stray-${phase}`, kind: 'admittance', from, to: REMOTE_EARTH, admittance }
  })
}

/** Those that are not among the electrodes near the pole (nearEarths.ts, electrodes.ts). */
function earths(scenario: Scenario, transformer: Transformer): readonly Element[] {
  const { id, neutralEarth, highEarth } = transformer
  const isOwn = scenario.lv.fedBy !== id && neutralEarth.at === undefined
  return [
    ...(isOwn
      ? [resistor(`${id}/neutral-earth`, lowNeutralNode(scenario, id), REMOTE_EARTH, neutralEarth.resistance)]
      : []),
    ...(!isThreePhase(transformer) && highEarth !== undefined
      ? [resistor(`${id}/high-earth`, transformerNode(id, 'high', 'earth'), REMOTE_EARTH, highEarth.resistance)]
      : []),
  ]
}
