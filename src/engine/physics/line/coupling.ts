/**
 * What a live circuit does to wires beside it that are dead, by the matrices of all of them together.
 * Capacitive, per metre: no charge on a floating wire, 0 = C_dl V_l + C_dd V_d; earthed, jω C_dl V_l flows in from it.
 * Inductive: ΔV = Z I over all wires, so a dead wire earthed at its near end only stands at -Z_dl I_l per metre at its far
 * end; earthed at both ends the loop through wire and ground carries (Z_dd l + R) I_d = -Z_dl I_l l.
 * Good for lines that are electrically short (under some tens of kilometres at power frequency).
 */
import { invertSymmetric } from '../../math/cholesky'
import { add, complex, multiply, negate, scale, ZERO, type Complex } from '../../math/complex'
import { PI } from '../../math/portable'
import { invariant } from '../../units/invariant'
import { kronReduce } from './kronReduce'

/** Live conductors, by their place in the matrix, and what each carries: volt to earth, or ampere. */
export type Live = readonly { readonly conductor: number; readonly value: Complex }[]

/** Volt on dead wires that nothing earths; independent of how long they run together. */
export function floatingVoltages(
  capacitance: readonly (readonly number[])[],
  live: Live,
  dead: readonly number[],
): readonly Complex[] {
  checkPlaces(capacitance.length, live, dead)
  const own = invertSymmetric(dead.map((i) => dead.map((j) => capacitance[i]![j]!)))
  const charge = dead.map((i) => sumOver(live, ({ conductor, value }) => scale(value, capacitance[i]![conductor]!)))
  return own.map((row) => negate(row.reduce((sum, inverse, k) => add(sum, scale(charge[k]!, inverse)), ZERO)))
}

/** Ampere per metre that flows from each dead wire into its earth when all of them are earthed. */
export function earthedCurrents(
  frequency: number,
  capacitance: readonly (readonly number[])[],
  live: Live,
  dead: readonly number[],
): readonly Complex[] {
  checkPlaces(capacitance.length, live, dead)
  const omega = 2 * PI * frequency
  return dead.map((i) => {
    const charge = sumOver(live, ({ conductor, value }) => scale(value, capacitance[i]![conductor]!))
    return multiply(complex(0, -omega), charge)
  })
}

/** Volt per metre along each dead wire: at its far end when only the near one is earthed. */
export function inducedVoltages(
  series: readonly (readonly Complex[])[],
  live: Live,
  dead: readonly number[],
): readonly Complex[] {
  checkPlaces(series.length, live, dead)
  return dead.map((i) => negate(sumOver(live, ({ conductor, value }) => multiply(series[i]![conductor]!, value))))
}

/**
 * Ampere in each dead wire when all are joined and earthed at both ends, from the near end to the far one.
 * @param length metre; @param earths ohm of the two earths together
 */
export function loopCurrents(
  series: readonly (readonly Complex[])[],
  live: Live,
  dead: readonly number[],
  length: number,
  earths: number,
): readonly Complex[] {
  const induced = inducedVoltages(series, live, dead)
  invariant(length > 0 && earths >= 0, 'a length and the ohm of its earths', length, earths)
  const loop = dead.map((i) => dead.map((j) => add(scale(series[i]![j]!, length), complex(earths))))
  // ΔV along the wire is Z I; between the two earths it is what they drop: -(Z_dd l + R) I_d = -E l
  return dead.map((_, k) => {
    const first = [ZERO, ...dead.map((__, j) => complex(j === k ? 1 : 0))]
    const bordered = [first, ...loop.map((row, i) => [scale(induced[i]!, length), ...row])]
    return negate(kronReduce(bordered, 1)[0]![0]!)
  })
}

function sumOver(live: Live, term: (one: Live[number]) => Complex): Complex {
  return live.reduce((sum, one) => add(sum, term(one)), ZERO)
}

function checkPlaces(size: number, live: Live, dead: readonly number[]): void {
  const places = [...live.map(({ conductor }) => conductor), ...dead]
  invariant(dead.length > 0, 'a dead wire', dead.length)
  for (const place of places) {
    invariant(Number.isInteger(place) && place >= 0 && place < size, `a conductor of ${size}`, place)
  }
  invariant(new Set(places).size === places.length, 'each conductor once, live or dead', places.join(' '))
}
