import { describe, expect, it } from 'vitest'
import { asin, asinh, atan2, cos, exp, ln, PI, pow, sin } from '../../../src/engine/math/portable'

// Values of Abramowitz and Stegun, Handbook of Mathematical Functions, tables 4.2 to 4.17 and 1.1.
describe('portable functions against handbook values', () => {
  it.each([
    ['e', exp(1), 2.718281828459045],
    ['e^-10', exp(-10), 4.539992976248485e-5],
    ['ln 2', ln(2), 0.6931471805599453],
    ['ln 10', ln(10), 2.302585092994046],
    ['2^0.5', pow(2, 0.5), 1.4142135623730951],
    ['10^0.02 (inverse-time curves)', pow(10, 0.02), 1.0471285480508996],
    ['sin 1', sin(1), 0.8414709848078965],
    ['cos 1', cos(1), 0.5403023058681398],
    ['asin ½ = π/6', asin(0.5), PI / 6],
    ['asinh 1 = ln(1 + √2)', asinh(1), 0.881373587019543],
    ['atan2(1, -1) = 3π/4', atan2(1, -1), 2.356194490192345],
  ])('%s', (_, got, wanted) => {
    expect(Math.abs(got - wanted)).toBeLessThanOrEqual(2.3e-16 * Math.max(1, Math.abs(wanted)))
  })
})
