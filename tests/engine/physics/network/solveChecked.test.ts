// One step of improvement and the error it is judged by, with a factored matrix that answers as it is told, right or wrong.
// Source: Oettli and Prager 1964, max |b - Ax| / (|A||x| + |b|), with |re| + |im| for the size of a complex number; a row
// of noise below 1000 roundings an unknown after Arioli, Demmel and Duff 1989. All figures worked by hand.

import { describe, expect, it } from 'vitest'
import type { Complex } from '../../../../src/engine/math/complex'
import type { Lu } from '../../../../src/engine/math/lu'
import type { SplitVector } from '../../../../src/engine/math/splitMatrix'
import type { Checked } from '../../../../src/engine/physics/network/solveChecked'
import { solveChecked } from '../../../../src/engine/physics/network/solveChecked'
import { square, type Entry } from './square'

const numbers = (...parts: readonly Complex[]): SplitVector => ({
  re: Float64Array.from(parts, ({ re }) => re),
  im: Float64Array.from(parts, ({ im }) => im),
})
const at = (re: number, im = 0): Complex => ({ re, im })
const listed = ({ re, im }: SplitVector): readonly Complex[] => [...re].map((part, i) => at(part, im[i]))

interface Told {
  readonly entries: readonly Entry[]
  readonly right: SplitVector
  /** What the factored matrix answers, call by call. */
  readonly answers: readonly SplitVector[]
  readonly rowFactor?: readonly number[]
  readonly columnFactor?: readonly number[]
}

function solveAsTold({ entries, right, answers, rowFactor = [1, 1], columnFactor = [1, 1] }: Told) {
  const asked: (readonly Complex[])[] = []
  const lu: Lu = {
    size: 2,
    singularColumn: -1,
    weakestColumn: 0,
    reciprocalCondition: 1,
    solve: (b) => {
      asked.push(listed(b))
      return answers[asked.length - 1]!
    },
  }
  const scaled = {
    matrix: square(2, entries),
    rowFactor: Float64Array.from(rowFactor),
    columnFactor: Float64Array.from(columnFactor),
  }
  const checked: Checked = solveChecked(scaled, lu, right)
  return { ...checked, x: listed(checked.x), asked }
}

/** (1 + 2j)x - 3jy = 4 + 5j and 2x + (1 - j)y = 3 - 2j. */
const entries: readonly Entry[] = [
  [0, 0, 1, 2],
  [0, 1, 0, -3],
  [1, 0, 2, 0],
  [1, 1, 1, -1],
]
const right = numbers(at(4, 5), at(3, -2))
const first = (): SplitVector => numbers(at(1, 1), at(2, -1))

describe('the error of an answer', () => {
  it('by hand: 8 + 8j are left of 9 + 6 + 9 in row 0, -j of 5 + 4 + 6 in row 1', () => {
    const { residual, worstRow, asked, x } = solveAsTold({ entries, right, answers: [first(), numbers(at(0), at(0))] })
    expect(asked).toEqual([
      [at(4, 5), at(3, -2)],
      [at(8, 8), at(0, -1)],
    ])
    expect(residual).toBe(16 / 24)
    expect(worstRow).toBe(0)
    expect(x).toEqual([at(1, 1), at(2, -1)])
  })

  it('the row is named in which it is worst', () => {
    const turned = entries.map(([row, ...rest]): Entry => [1 - row, ...rest])
    const answers = [first(), numbers(at(0), at(0))]
    const { residual, worstRow } = solveAsTold({ entries: turned, right: numbers(at(3, -2), at(4, 5)), answers })
    expect([residual, worstRow]).toEqual([16 / 24, 1])
  })

  it('of two rows that are as bad the first is named', () => {
    const diagonal: readonly Entry[] = [
      [0, 0, 1, 0],
      [1, 1, 1, 0],
    ]
    const told = {
      entries: diagonal,
      right: numbers(at(3), at(3)),
      answers: [numbers(at(1), at(1)), numbers(at(0), at(0))],
    }
    // 2 of 3 + 1
    expect(solveAsTold(told)).toMatchObject({ residual: 0.5, worstRow: 0 })
  })

  it('nothing asked and nothing answered is no error', () => {
    const nothing = numbers(at(0), at(0))
    expect(solveAsTold({ entries, right: nothing, answers: [nothing] })).toMatchObject({
      residual: 0,
      x: listed(nothing),
    })
  })
})

describe('one step of improvement', () => {
  it('by hand: 1 + 2j and 3 - j on top leave 14 + 13j of 45 and -4 - j of 29', () => {
    const { residual, worstRow, x } = solveAsTold({ entries, right, answers: [first(), numbers(at(1, 2), at(3, -1))] })
    expect(x).toEqual([at(2, 3), at(5, -2)])
    expect([residual, worstRow]).toEqual([27 / 45, 0])
  })

  it('one that makes it worse, 11 + 14j of 27, is not taken', () => {
    const { residual, worstRow, x } = solveAsTold({ entries, right, answers: [first(), numbers(at(-3), at(0))] })
    expect(x).toEqual([at(1, 1), at(2, -1)])
    expect([residual, worstRow]).toEqual([16 / 24, 0])
  })

  it('the right-hand side is scaled by rows, the answer by columns, improved or not', () => {
    const told = { entries, right: numbers(at(2, 2.5), at(6, -4)), rowFactor: [2, 0.5], columnFactor: [4, 0.25] }
    const improved = solveAsTold({ ...told, answers: [first(), numbers(at(1, 2), at(3, -1))] })
    expect(improved.asked[0]).toEqual([at(4, 5), at(3, -2)])
    expect(improved.x).toEqual([at(8, 12), at(1.25, -0.5)])
    const kept = solveAsTold({ ...told, answers: [first(), numbers(at(-3), at(0))] })
    expect(kept.x).toEqual([at(4, 4), at(0.5, -0.25)])
  })

  it('an answer without an error is not solved for again', () => {
    // (1 + 2j)(1 + j) - 3j(2 - j) = -4 - 3j and 2(1 + j) + (1 - j)(2 - j) = 3 - j
    const exact = { entries, right: numbers(at(-4, -3), at(3, -1)), answers: [first()], columnFactor: [4, 0.25] }
    const { asked, residual, x } = solveAsTold(exact)
    expect(asked).toHaveLength(1)
    expect(residual).toBe(0)
    expect(x).toEqual([at(4, 4), at(0.5, -0.25)])
  })
})

describe('a row in which everything is noise', () => {
  /** Row 0 is right, 2 + 3j; row 1 asks 3y = 0 and is answered y. The bound is 1000 × 2⁻⁵² × 2 × 3 × 5 = 6.66e-12. */
  const withNoise = (y: number) =>
    solveAsTold({
      entries: [
        [0, 0, 1, 0],
        [1, 1, 0, 3],
      ],
      right: numbers(at(2, 3), at(0)),
      answers: [numbers(at(2, 3), at(y)), numbers(at(0), at(0))],
    })

  it('below the bound it is measured against the largest unknown: 6.0e-12 of 15', () => {
    const { residual, worstRow } = withNoise(2e-12)
    expect(residual / (6e-12 / (6e-12 + 15))).toBeCloseTo(1, 12)
    expect(worstRow).toBe(1)
  })

  it('above the bound it stands for itself: 7.2e-12 of 7.2e-12', () => {
    expect(withNoise(2.4e-12)).toMatchObject({ residual: 1, worstRow: 1 })
  })
})

describe('no number', () => {
  const diagonal: readonly Entry[] = [
    [0, 0, 1, 0],
    [1, 1, 1, 0],
  ]
  it.each([0, 1])('in row %d it outweighs what another row has', (row) => {
    const answer = numbers(at(1), at(1))
    answer.im[row] = Number.NaN
    const told = { entries: diagonal, right: numbers(at(3), at(3)), answers: [answer, numbers(at(0), at(0))] }
    expect(solveAsTold(told)).toMatchObject({ residual: Number.NaN, worstRow: row })
  })
})
