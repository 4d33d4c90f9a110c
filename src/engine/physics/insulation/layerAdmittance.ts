/**
 * A sound insulating layer between a body and what it touches: a plate capacitor C = ε0 εr A/d beside a leakage
 * resistance. Fringing is left out, so the admittance is a little low where the contact is small against the thickness.
 * Source: plate capacitor, closed form.
 */
import { complex, type Complex } from '../../math/complex'
import { PI } from '../../math/portable'
import { EPS0 } from '../../units/constants'
import { invariant } from '../../units/invariant'

/**
 * Admittance in siemens.
 * @param frequency Hz
 * @param area contact area, m²
 * @param thickness m
 * @param relativePermittivity dimensionless
 * @param leakage ohm of this contact (not of a whole soaked item)
 * @throws unless frequency and area are 0 or more and the rest above 0.
 */
export function layerAdmittance(
  frequency: number,
  area: number,
  thickness: number,
  relativePermittivity: number,
  leakage: number,
): Complex {
  invariant(frequency >= 0, 'frequency 0 Hz or more', frequency)
  invariant(area >= 0, 'contact area 0 m² or more', area)
  invariant(thickness > 0, 'thickness above 0 m', thickness)
  invariant(relativePermittivity > 0, 'relative permittivity above 0', relativePermittivity)
  invariant(leakage > 0, 'leakage above 0 ohm', leakage)
  const capacitance = (EPS0 * relativePermittivity * area) / thickness
  return complex(1 / leakage, 2 * PI * frequency * capacitance)
}
