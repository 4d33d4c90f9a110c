/** Small elements that every part of the circuit is put together from. */
import { complex } from '../../math/complex'
import type { Element } from '../../physics/network'
import { PI } from '../../math/portable'

/** Closed blade, splice or bolted joint, ohm: far below everything it stands in series with (own choice). */
export const jointResistance = 1e-4

export function resistor(id: string, from: string, to: string, ohm: number): Element {
  return { id, kind: 'impedance', from, to, impedance: complex(ohm) }
}

export function reactive(id: string, from: string, to: string, ohm: number, reactance: number): Element {
  return { id, kind: 'impedance', from, to, impedance: complex(ohm, reactance) }
}

/** rad/s */
export function angularFrequency(frequency: number): number {
  return 2 * PI * frequency
}
