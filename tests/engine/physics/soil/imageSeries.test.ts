import { describe, expect, it } from 'vitest'
import { imageSeries } from '../../../../src/engine/physics/soil/imageSeries'

/** Surface potential of a point source at a depth, in units of ρ1/2π: plain sum of every image. */
function plainSum(reflection: number, apart: number, depth: number): number {
  const at = (z: number) => 1 / Math.sqrt(apart * apart + z * z)
  let sum = at(depth)
  let strength = 1
  for (let n = 1; n < 400000; n++) {
    strength *= reflection
    if (Math.abs(strength) < 1e-13) break
    sum += strength * (at(2 * n + depth) + at(2 * n - depth))
  }
  return sum
}

describe('image series', () => {
  it.each([0.5, 0.9, 0.98, 0.998, -0.5, -0.9, -0.98, -0.998])('K = %d: blocks against every single image', (k) => {
    const { shift, strength } = imageSeries(k, 1)
    expect(shift.length).toBeLessThan(160)
    for (const [apart, depth] of [
      [0.01, 0.99],
      [0.3, 0.5],
      [1, 0.2],
      [5, 0.9],
      [30, 0.5],
      [300, 0.5],
    ] as const) {
      const at = (z: number) => 1 / Math.sqrt(apart * apart + z * z)
      let sum = at(depth)
      for (let i = 0; i < shift.length; i++) sum += strength[i]! * (at(shift[i]! + depth) + at(shift[i]! - depth))
      expect(Math.abs(sum / plainSum(k, apart, depth) - 1)).toBeLessThan(2e-4)
    }
  })
})
