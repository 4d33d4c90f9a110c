/**
 * Wires over one stretch of line of which one, the neutral, is earthed again and again: the others run unbroken, the
 * neutral is a branch from earth to earth. All are coupled: an unbroken wire with each span of the neutral over that
 * span's length, two spans of the neutral not with each other. Exact for wires that carry one current all along.
 */
import { scale, ZERO, type Complex } from '../../math/complex'

/**
 * @param perMetre of the wires, the neutral last where there is one
 * @param length of the unbroken wires, metre
 * @param spans of the neutral, metre; empty without one
 */
export function ladderImpedance(
  perMetre: readonly (readonly Complex[])[],
  length: number,
  spans: readonly number[],
): readonly (readonly Complex[])[] {
  const neutral = perMetre.length - 1
  const unbroken = spans.length === 0 ? perMetre.length : neutral
  const wires = [
    ...perMetre.slice(0, unbroken).map((_, wire) => ({ wire, length })),
    ...spans.map((span) => ({ wire: neutral, length: span })),
  ]
  return wires.map((a, i) =>
    wires.map((b, j) => {
      const areSpansApart = i !== j && i >= unbroken && j >= unbroken
      return areSpansApart ? ZERO : scale(perMetre[a.wire]![b.wire]!, Math.min(a.length, b.length))
    }),
  )
}

/** Metres from `from` to each earth and on to `to`. @param earths between the two, in order */
export function spansBetween(from: number, to: number, earths: readonly number[]): readonly number[] {
  const ends = [...earths, to]
  return ends.map((end, i) => end - (i === 0 ? from : earths[i - 1]!))
}
