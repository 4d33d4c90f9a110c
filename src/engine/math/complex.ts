/** Complex numbers as plain frozen-in-spirit pairs. A phasor's magnitude is rms; a positive angle leads. */
import { atan2, cos, sin } from './portable'

export interface Complex {
  readonly re: number
  readonly im: number
}

export const ZERO: Complex = { re: 0, im: 0 }
export const ONE: Complex = { re: 1, im: 0 }

export function complex(re: number, im = 0): Complex {
  return { re, im }
}

/** @param angleRad radians */
export function polar(size: number, angleRad: number): Complex {
  return { re: size * cos(angleRad), im: size * sin(angleRad) }
}

export function add(a: Complex, b: Complex): Complex {
  return { re: a.re + b.re, im: a.im + b.im }
}

export function subtract(a: Complex, b: Complex): Complex {
  return { re: a.re - b.re, im: a.im - b.im }
}

export function multiply(a: Complex, b: Complex): Complex {
  return { re: a.re * b.re - a.im * b.im, im: a.re * b.im + a.im * b.re }
}

/** Smith's division: no overflow where the quotient itself is in range. Division by zero gives NaN or Infinity. */
export function divide(a: Complex, b: Complex): Complex {
  if (Math.abs(b.re) >= Math.abs(b.im)) {
    const ratio = b.im / b.re
    const size = b.re + b.im * ratio
    return { re: (a.re + a.im * ratio) / size, im: (a.im - a.re * ratio) / size }
  }
  const ratio = b.re / b.im
  const size = b.re * ratio + b.im
  return { re: (a.re * ratio + a.im) / size, im: (a.im * ratio - a.re) / size }
}

export function scale(a: Complex, factor: number): Complex {
  return { re: a.re * factor, im: a.im * factor }
}

export function negate(a: Complex): Complex {
  return { re: -a.re, im: -a.im }
}

export function conjugate(a: Complex): Complex {
  return { re: a.re, im: -a.im }
}

export function magnitude(a: Complex): number {
  const re = Math.abs(a.re)
  const im = Math.abs(a.im)
  const larger = Math.max(re, im)
  if (larger === 0 || larger === Infinity) return larger
  const ratio = Math.min(re, im) / larger
  return larger * Math.sqrt(1 + ratio * ratio)
}

/** Radians in (-π, π]. */
export function angle(a: Complex): number {
  return atan2(a.im, a.re)
}
