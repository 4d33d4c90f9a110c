/**
 * Potential at one segment per ampere leaked by another, ohm, in even or two-layer soil by images (Tagg; Sunde 1949):
 * both in the upper layer   ρ1/4π Σ K^|n| [1/|z-z'+2nh| + 1/|z+z'+2nh|], n from -∞ to ∞
 * one in each               ρ1(1+K)/4π Σ Kⁿ [1/(z'-z+2nh) + 1/(z'+z+2nh)], n from 0, z' the lower
 * both in the lower layer   ρ2/4π {1/|z-z'| - K/|z+z'-2h| + (1-K²) Σ Kⁿ/(z+z'+2nh)}, n from 0
 * Distances stand for means over both segments, so the matrix is symmetric (Galerkin).
 */
import { PI } from '../../math/portable'
import { meanBetween, type Mean } from './meanBetween'
import type { Segment } from './segments'
import type { LayeredSoil } from './soil'

export function mutualOhm(soil: LayeredSoil, a: Segment, b: Segment): number {
  if (a.isLower && b.isLower) return bothLower(soil, meanBetween(a, b))
  if (!a.isLower && !b.isLower) return bothUpper(soil, meanBetween(a, b))
  return a.isLower ? oneEach(soil, meanBetween(b, a)) : oneEach(soil, meanBetween(a, b))
}

function bothUpper(soil: LayeredSoil, mean: Mean): number {
  const { shift, strength } = soil.images
  let sum = mean(false, 0) + mean(true, 0)
  for (let k = 0; k < shift.length; k++) {
    const far = shift[k]!
    sum += strength[k]! * (mean(false, far) + mean(false, -far) + mean(true, far) + mean(true, -far))
  }
  return (soil.upper / (4 * PI)) * sum
}

/** @param mean of the upper one and the lower one, in this order */
function oneEach(soil: LayeredSoil, mean: Mean): number {
  const { shift, strength } = soil.images
  let sum = mean(false, 0) + mean(true, 0)
  for (let k = 0; k < shift.length; k++) {
    const far = shift[k]!
    sum += strength[k]! * (mean(false, far) + mean(true, -far))
  }
  return ((soil.upper * (1 + soil.reflection)) / (4 * PI)) * sum
}

function bothLower(soil: LayeredSoil, mean: Mean): number {
  const { lower, boundary, reflection } = soil
  const { shift, strength } = soil.images
  let series = mean(true, 0)
  for (let k = 0; k < shift.length; k++) series += strength[k]! * mean(true, -shift[k]!)
  const direct = mean(false, 0) - reflection * mean(true, 2 * boundary)
  return (lower / (4 * PI)) * (direct + (1 - reflection * reflection) * series)
}
