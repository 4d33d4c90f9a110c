/** Which phases a set of conductors has: three on a main line, two on a spur, one on a single-wire line. */
import { phases, type Phase } from './scenario'

/** In the order A, B, C. */
export function phasesOf(conductors: readonly { readonly phase: Phase }[]): readonly Phase[] {
  return phases.filter((phase) => conductors.some((it) => it.phase === phase))
}

/** Volts of a phase to earth: a single wire's voltage is stated to earth, all others' phase to phase. */
export function voltageToEarth({
  voltage,
  conductors,
}: {
  readonly voltage: number
  readonly conductors: readonly unknown[]
}): number {
  return conductors.length === 1 ? voltage : voltage / Math.sqrt(3)
}
