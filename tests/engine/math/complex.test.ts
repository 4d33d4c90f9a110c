import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Complex } from '../../../src/engine/math/complex'
import {
  add,
  angle,
  complex,
  conjugate,
  divide,
  magnitude,
  multiply,
  negate,
  polar,
  scale,
  subtract,
} from '../../../src/engine/math/complex'

const numbers = fc.record({
  re: fc.double({ min: -1e6, max: 1e6, noNaN: true }),
  im: fc.double({ min: -1e6, max: 1e6, noNaN: true }),
})

function expectClose(got: Complex, wanted: Complex, relative = 1e-12): void {
  const allowed = relative * Math.max(magnitude(wanted), 1e-290)
  expect(magnitude(subtract(got, wanted))).toBeLessThanOrEqual(allowed)
}

describe('complex numbers', () => {
  it('hand calculation: (3 + 4j)(1 - 2j) = 11 - 2j, (3 + 4j)/(1 - 2j) = -1 + 2j, |3 + 4j| = 5', () => {
    expect(multiply(complex(3, 4), complex(1, -2))).toEqual({ re: 11, im: -2 })
    expectClose(divide(complex(3, 4), complex(1, -2)), { re: -1, im: 2 })
    expect(magnitude(complex(3, 4))).toBe(5)
    expect(angle(complex(0, 2))).toBeCloseTo(Math.PI / 2, 15)
    expect(subtract(complex(3, 4), complex(1))).toEqual({ re: 2, im: 4 })
    expect(negate(complex(3, 4))).toEqual({ re: -3, im: -4 })
    expect(scale(complex(3, 4), 2)).toEqual({ re: 6, im: 8 })
  })

  it('three phases of one size sum to zero', () => {
    const third = (2 * Math.PI) / 3
    const sum = [0, -third, third].map((at) => polar(6351, at)).reduce(add)
    expect(magnitude(sum)).toBeLessThan(1e-11)
  })

  it('dividing undoes multiplying, z z* is |z|²', () => {
    fc.assert(
      fc.property(numbers, numbers, (a, b) => {
        fc.pre(magnitude(b) > 1e-6)
        expectClose(divide(multiply(a, b), b), a, 1e-9)
        const square = multiply(b, conjugate(b))
        expectClose(square, complex(magnitude(b) * magnitude(b)), 1e-12)
      }),
    )
  })

  it('neither magnitude nor division overflows on the way', () => {
    expect(magnitude(complex(3e200, 4e200)) / 5e200).toBeCloseTo(1, 12)
    expectClose(divide(complex(1e200, 1e200), complex(1e200, 1e200)), complex(1))
  })
})
