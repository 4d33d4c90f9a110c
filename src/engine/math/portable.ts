/**
 * The only transcendental functions of the engine. Built-in Math.exp, sin, pow, log … give different last bits in
 * different browsers; these are computed in software from + - * / alone and give the same bits everywhere.
 * Angles in radians.
 */
import asin from '@stdlib/math-base-special-asin'
import asinh from '@stdlib/math-base-special-asinh'
import atan2 from '@stdlib/math-base-special-atan2'
import exp from '@stdlib/math-base-special-exp'
import ln from '@stdlib/math-base-special-ln'
import pow from '@stdlib/math-base-special-pow'
import sincos from '@stdlib/math-base-special-sincos'

export { asin, asinh, atan2, exp, ln, pow }

export const PI = 3.141592653589793

export function sin(angle: number): number {
  return sincos(angle)[0]!
}

export function cos(angle: number): number {
  return sincos(angle)[1]!
}
