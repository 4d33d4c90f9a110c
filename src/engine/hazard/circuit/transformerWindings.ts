/**
 * A distribution transformer's windings as one coupled element: on each limb a high and a low winding with half of the
 * leakage each, tied by the core's magnetising impedance. V(from) - V(to) of winding i = Σ Z(i,k) × current(k), so the
 * same numbers serve both ways. With n = high over low volts of a winding, and everything on the high side:
 *
 *   Z(high, high) = M + z/2, Z(high, low) = M / n, Z(low, low) = (M + z/2) / n²
 *
 * M of a three-limb core has the positive-sequence impedance M1 and, because the flux of a zero sequence finds no
 * return limb, a much smaller M0: own (M0 + 2 M1) / 3, mutual (M0 - M1) / 3 (symmetrical components, Fortescue 1918).
 * Linear: no saturation, no inrush, no ferroresonance.
 */
import { add, complex, divide, ONE, scale, subtract, type Complex } from '../../math/complex'
import type { Element } from '../../physics/network'
import { invariant } from '../../units/invariant'
import { phases, type Phase, type Transformer } from '../../site/scenario'
import { transformerNode, windingId } from './nodes'

/** Losses of the core and magnetising current, per unit of the rating (own choice: small three-phase units lie near it). */
const noLoadLoss = 0.002
const magnetisingCurrent = 0.01
/** Zero-sequence magnetising reactance of a three-limb core, per unit (own choice within the usual 0.3 to 1). */
const zeroSequenceReactance = 0.5

interface Winding {
  /** Of the low-voltage terminal that is on the same limb. */
  readonly phase: Phase
  readonly high: readonly [from: string, to: string]
  readonly low: readonly [from: string, to: string]
}

/** Low-voltage phases that the transformer gives. */
export function lowPhases(transformer: Pick<Transformer, 'connection' | 'phases'>): readonly Phase[] {
  return isThreePhase(transformer) ? phases : transformer.phases.slice(0, 1)
}

export function isThreePhase({ connection }: Pick<Transformer, 'connection'>): boolean {
  return connection === 'Dyn' || connection === 'Yyn'
}

/** @param lowNeutral node of the low-voltage star point */
export function windingsElement(transformer: Transformer, lowNeutral: string): Element {
  const windings = lowPhases(transformer).map((phase) => windingOf(transformer, phase, lowNeutral))
  const { id } = transformer
  return {
    id: `${id}/windings`,
    kind: 'coupled',
    branches: [
      ...windings.map(({ phase, high: [from, to] }) => ({ id: windingId(id, 'high', phase), from, to })),
      ...windings.map(({ phase, low: [from, to] }) => ({ id: windingId(id, 'low', phase), from, to })),
    ],
    impedance: windingMatrix(transformer, windings.length),
  }
}

/**
 * Which high winding shares a limb with a low one. Low over high phase to neutral, phases turning A, B, C: the clock hour
 * h gives -30° h. `Dyn11` A-B on the limb of a, `Dyn1` A-C; 5 and 7 are those reversed.
 */
function windingOf(transformer: Transformer, phase: Phase, lowNeutral: string): Winding {
  const { id, connection } = transformer
  const low = [transformerNode(id, 'low', phase), lowNeutral] as const
  const at = (of: Phase): string => transformerNode(id, 'high', of)
  const next = phases[(phases.indexOf(phase) + 1) % 3]!
  const before = phases[(phases.indexOf(phase) + 2) % 3]!
  const star = transformerNode(id, 'high', 'star')
  const high = ((): readonly [string, string] => {
    switch (connection) {
      case 'Dyn':
        return [at(phase), at(isLeading(transformer) ? next : before)]
      case 'Yyn':
        return [at(phase), star]
      case 'single-phase':
        return [at(phase), at(secondPhase(transformer))]
      case 'single-wire':
        return [at(phase), transformerNode(id, 'high', 'earth')]
    }
  })()
  return { phase, low, high: isReversed(transformer) ? [high[1], high[0]] : high }
}

function secondPhase({ id, phases: on }: Transformer): Phase {
  const second = on[1]
  invariant(second, 'two conductors of a single-phase transformer', id)
  return second
}

/** Hour of the vector group: 11 of a delta and 0 of a star when not said. */
function clockOf({ connection, clock }: Transformer): number {
  return clock ?? (connection === 'Dyn' ? 11 : 0)
}

/** Low voltage ahead of the high voltage on the same limb's pair of phases: hours 11 and 5. */
function isLeading(transformer: Transformer): boolean {
  const clock = clockOf(transformer)
  return clock === 11 || clock === 5
}

function isReversed(transformer: Transformer): boolean {
  const clock = clockOf(transformer)
  return clock === 5 || clock === 6 || clock === 7
}

/** Volts across one high winding: a delta has them between phases, a star to its point. */
function highWindingVoltage({ connection, highVoltage }: Transformer): number {
  return connection === 'Yyn' ? highVoltage / Math.sqrt(3) : highVoltage
}

function windingMatrix(transformer: Transformer, limbs: number): readonly (readonly Complex[])[] {
  const high = highWindingVoltage(transformer)
  const turns = high / transformer.lowVoltage
  const base = (high * high * limbs) / transformer.rating
  const leakage = scale(transformer.impedance, base / 2)
  const positive = scale(divide(ONE, complex(noLoadLoss, -magnetisingCurrent)), base)
  const zero = limbs === 3 ? complex(0, zeroSequenceReactance * base) : positive
  const own = scale(add(zero, scale(positive, 2)), 1 / 3)
  const mutual = scale(subtract(zero, positive), 1 / 3)
  const side = 2 * limbs
  const ratio = (i: number): number => (i < limbs ? 1 : 1 / turns)
  return Array.from({ length: side }, (_, i) =>
    Array.from({ length: side }, (_, k) => {
      const core = limbs === 1 ? positive : i % limbs === k % limbs ? own : mutual
      return scale(i === k ? add(core, leakage) : core, ratio(i) * ratio(k))
    }),
  )
}
