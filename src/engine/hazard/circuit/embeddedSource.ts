/**
 * A source that somebody else owns, behind a transformer of the section: an EMF behind an impedance on each of its
 * phases, from the board's neutral. A generator has its own impedance; a tie is the next transformer's low-voltage
 * network behind its impedance; an inverter holds its voltage behind a filter up to its current limit
 * (protection/limited.ts). A grid-following one that finds itself alone does the same until it notices and stops (own
 * choice: the careful side).
 */
import { scale, type Complex } from '../../math/complex'
import type { Element } from '../../physics/network'
import type { EmbeddedSource, Scenario, ThingId } from '../../site/scenario'
import { invariant } from '../../units/invariant'
import { lowNeutralNode } from './lowNeutral'
import { boardNode, outputId, ownEmfId } from './nodes'
import { phasor } from './phasor'
import { requireTransformer } from './transformer'

/** Per unit of an inverter's rating: what its filter lets sag (own choice). */
const filterImpedance: Complex = { re: 0.01, im: 0.1 }

export function requireEmbedded(scenario: Scenario, id: ThingId): EmbeddedSource {
  const source = scenario.embedded?.find((it) => it.id === id)
  invariant(source, 'a source behind a transformer', id)
  return source
}

/** Ampere of a phase at the rating. */
export function ratedCurrent(scenario: Scenario, { rating, phases, transformer }: EmbeddedSource): number {
  return rating / (phases.length * requireTransformer(scenario, transformer).lowVoltage)
}

export function embeddedSource(scenario: Scenario, source: EmbeddedSource): readonly Element[] {
  const { id, phases, rating, transformer } = source
  const { lowVoltage } = requireTransformer(scenario, transformer)
  const base = (lowVoltage * lowVoltage * phases.length) / rating
  const impedance = scale(source.impedance ?? filterImpedance, base)
  return phases.flatMap((phase): Element[] => {
    const emf = ownEmfId(id, phase)
    return [
      {
        id: emf,
        kind: 'voltage',
        from: emf,
        to: lowNeutralNode(scenario, transformer),
        voltage: phasor(lowVoltage, phase),
      },
      { id: outputId(id, phase), kind: 'impedance', from: emf, to: boardNode(transformer, phase), impedance },
    ]
  })
}
