/** Balanced set, phases turning A, B, C: rms volts to neutral at 0°, -120°, 120°. */
import { polar, type Complex } from '../../math/complex'
import { PI } from '../../math/portable'
import type { Phase } from '../../site/scenario'

const phaseAngle: Readonly<Record<Phase, number>> = { A: 0, B: (-2 * PI) / 3, C: (2 * PI) / 3 }

export function phasor(volts: number, phase: Phase): Complex {
  return polar(volts, phaseAngle[phase])
}
