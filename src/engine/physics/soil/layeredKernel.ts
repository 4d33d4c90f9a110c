/**
 * Potential at one segment per ampere leaked by another, ohm, in even or two-layer soil by images (Tagg; Sunde 1949):
 * both in the upper layer   ρ1/4π Σ K^|n| [1/|z-z'+2nh| + 1/|z+z'+2nh|], n from -∞ to ∞
 * one in each               ρ1(1+K)/4π Σ Kⁿ [1/(z'-z+2nh) + 1/(z'+z+2nh)], n from 0, z' the lower
 * both in the lower layer   ρ2/4π {1/|z-z'| - K/|z+z'-2h| + (1-K²) Σ Kⁿ/(z+z'+2nh)}, n from 0
 * Distances stand for means over both segments, so the matrix is symmetric (Galerkin).
 */
import { PI } from '../../math/portable'
import { GAUSS } from './gauss'
import { meanBetweenLines, meanToDisc } from './meanInverse'
import type { Segment } from './segments'
import type { LayeredSoil } from './soil'

/** Mean of 1/distance between two sources for a difference in depth. */
type Mean = (offset: number) => number

export function mutualOhm(soil: LayeredSoil, a: Segment, b: Segment): number {
  const mean = meanBetween(a, b)
  if (!a.isLower && !b.isLower) return bothUpper(soil, mean, a.depth, b.depth)
  if (a.isLower && b.isLower) return bothLower(soil, mean, a.depth, b.depth)
  return a.isLower ? oneEach(soil, mean, b.depth, a.depth) : oneEach(soil, mean, a.depth, b.depth)
}

function bothUpper(soil: LayeredSoil, mean: Mean, z1: number, z2: number): number {
  const { shift, strength } = soil.images
  let sum = mean(z1 - z2) + mean(z1 + z2)
  for (let k = 0; k < shift.length; k++) {
    const far = shift[k]!
    sum += strength[k]! * (mean(far + z1 - z2) + mean(far - z1 + z2) + mean(far + z1 + z2) + mean(far - z1 - z2))
  }
  return (soil.upper / (4 * PI)) * sum
}

function oneEach(soil: LayeredSoil, mean: Mean, high: number, low: number): number {
  const { shift, strength } = soil.images
  let sum = mean(low - high) + mean(low + high)
  for (let k = 0; k < shift.length; k++) {
    sum += strength[k]! * (mean(low - high + shift[k]!) + mean(low + high + shift[k]!))
  }
  return ((soil.upper * (1 + soil.reflection)) / (4 * PI)) * sum
}

function bothLower(soil: LayeredSoil, mean: Mean, z1: number, z2: number): number {
  const { lower, boundary, reflection } = soil
  const { shift, strength } = soil.images
  let series = mean(z1 + z2)
  for (let k = 0; k < shift.length; k++) series += strength[k]! * mean(z1 + z2 + shift[k]!)
  const direct = mean(z1 - z2) - reflection * mean(z1 + z2 - 2 * boundary)
  return (lower / (4 * PI)) * (direct + (1 - reflection * reflection) * series)
}

function meanBetween(a: Segment, b: Segment): Mean {
  const dx = a.x - b.x
  const dy = a.y - b.y
  const apart = a.electrode === b.electrode ? a.radius : Math.sqrt(dx * dx + dy * dy)
  if (a.isDisc && b.isDisc) return a.electrode === b.electrode ? discToItself(a.radius) : discToDisc(a, b, apart)
  if (a.isDisc) return lineToDisc(a.radius, apart, b.length)
  if (b.isDisc) return lineToDisc(b.radius, apart, a.length)
  return (offset) => meanBetweenLines(apart, offset, a.length, b.length)
}

function lineToDisc(radius: number, apart: number, length: number): Mean {
  return (offset) =>
    GAUSS.reduce((sum, [at, weight]) => sum + weight * meanToDisc(radius, apart, offset + (at - 0.5) * length), 0)
}

/**
 * The field of one disc averaged over the current of another, right to second order in size over distance: the field of
 * a single disc of radius √(a² + b²).
 */
function discToDisc(a: Segment, b: Segment, apart: number): Mean {
  const radius = Math.sqrt(a.radius * a.radius + b.radius * b.radius)
  return (offset) => meanToDisc(radius, apart, offset)
}

/** A disc against its own image: with r = b√(1-t²) the disc's current is even in t. */
function discToItself(radius: number): Mean {
  return (offset) =>
    GAUSS.reduce((sum, [t, weight]) => sum + weight * meanToDisc(radius, radius * Math.sqrt(1 - t * t), offset), 0)
}
