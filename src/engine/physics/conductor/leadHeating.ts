/**
 * Temperature of a lead that carries a fault, no heat lost (adiabatic), its resistance rising with temperature.
 *   dθ/dt = I² ρ(θ)/(A² Qc)  ⇒  I² t = (K A)² ln((B + θ)/(B + θ0)),  I = k A/√t with k = K √ln((B + θ)/(B + θ0)).
 * Source: IEC 60364-5-54 Annex A (the k table); the same as Onderdonk's fusing formula, whose constant for copper is
 * 226.4 A·√s/mm². Valid for seconds; for minutes it overstates, because the air cools the lead.
 */
import { exp, ln } from '../../math/portable'
import { invariant } from '../../units/invariant'
import { thermalConstants, type ConductorMaterial } from './material'

/**
 * Seconds until `current` (A rms) has heated `area` (m²) from `initialC` to `limitC`; 0 if it is there already, 'never'
 * without current.
 */
export function adiabaticTime(
  material: ConductorMaterial,
  area: number,
  current: number,
  initialC: number,
  limitC: number,
): number | 'never' {
  const { heatingConstant, zeroResistanceOffset } = constantsFor(material, area, initialC)
  invariant(!Number.isNaN(current), 'a numeric current', current)
  invariant(!Number.isNaN(limitC), 'a numeric limit', limitC)
  if (limitC <= initialC) return 0
  const reach = heatingConstant * area
  const density = current / reach
  const time = ln((zeroResistanceOffset + limitC) / (zeroResistanceOffset + initialC)) / (density * density)
  return Number.isFinite(time) ? time : 'never'
}

/** Cross-section (m²) that `current` (A rms) heats from `initialC` to `limitC` in just `seconds`. */
export function adiabaticArea(
  material: ConductorMaterial,
  current: number,
  seconds: number,
  initialC: number,
  limitC: number,
): number {
  invariant(current >= 0 && seconds >= 0, 'a current and a time 0 or more', current, seconds)
  invariant(limitC > initialC, 'a limit above where it begins', initialC, limitC)
  const { heatingConstant, zeroResistanceOffset } = thermalConstants[material]
  const warmth = ln((zeroResistanceOffset + limitC) / (zeroResistanceOffset + initialC))
  return (current * Math.sqrt(seconds / warmth)) / heatingConstant
}

/**
 * Temperature (°C) after `seconds` at `current` (A rms), so that intervals can be strung together over all shots of a
 * reclose sequence. It stops at the melting point: there the lead opens.
 */
export function temperatureAfter(
  material: ConductorMaterial,
  area: number,
  current: number,
  initialC: number,
  seconds: number,
): number {
  const { heatingConstant, zeroResistanceOffset, meltingPoint } = constantsFor(material, area, initialC)
  invariant(seconds >= 0, 'seconds 0 or more', seconds)
  invariant(Number.isFinite(current), 'a finite current', current)
  const density = current / (heatingConstant * area)
  const heated = (zeroResistanceOffset + initialC) * exp(density * density * seconds) - zeroResistanceOffset
  return Math.max(initialC, Math.min(heated, meltingPoint))
}

/** °C at which a lead of this material opens. */
export function meltingTemperature(material: ConductorMaterial): number {
  return thermalConstants[material].meltingPoint
}

/** Resistance in ohm of `length` m of `area` m² at `temperatureC`, alternating-current effects neglected. */
export function leadResistance(
  material: ConductorMaterial,
  area: number,
  length: number,
  temperatureC: number,
): number {
  const { zeroResistanceOffset, resistivity20 } = constantsFor(material, area, temperatureC)
  invariant(length >= 0, 'length 0 m or more', length)
  const warmth = (zeroResistanceOffset + temperatureC) / (zeroResistanceOffset + 20)
  return (resistivity20 * warmth * length) / area
}

function constantsFor(material: ConductorMaterial, area: number, temperatureC: number) {
  const constants = thermalConstants[material]
  invariant(area > 0, 'cross-section above 0 m²', area)
  invariant(
    temperatureC > -constants.zeroResistanceOffset,
    `temperature above ${-constants.zeroResistanceOffset} °C`,
    temperatureC,
  )
  return constants
}
