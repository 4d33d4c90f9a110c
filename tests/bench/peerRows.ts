/** The same sixty complex unknowns through our solver and through two well-kept libraries. */
import { complex as mathComplex, lusolve, matrix, type Complex as MathComplex } from 'mathjs'
import { Matrix, solve } from 'ml-matrix'
import { complex, type Complex } from '../../src/engine/math/complex'
import { factorLu } from '../../src/engine/math/lu'
import { stream } from '../../src/engine/math/random'
import { addEntry, noEntries, splitMatrix, splitVector } from '../../src/engine/math/splitMatrix'
import { timed, timedMany, type Row, type Taken } from './measure'

const size = 60

interface System {
  readonly rows: readonly (readonly Complex[])[]
  readonly right: readonly Complex[]
}

/** Full, with a heavy diagonal: no solver gets away with a zero. */
function system(): System {
  const { next } = stream(1, 'bench')
  const entry = (): Complex => complex(next() - 0.5, next() - 0.5)
  const rows = Array.from({ length: size }, (_, i) =>
    Array.from({ length: size }, (__, j) => (i === j ? complex(size / 4, next()) : entry())),
  )
  return { rows, right: rows.map(entry) }
}

export function peerRows(): readonly Row[] {
  const { rows, right } = system()
  // what each library solves is put together first: only the solving counts
  const entries = noEntries()
  rows.forEach((row, i) => row.forEach(({ re, im }, j) => addEntry(entries, i, j, re, im)))
  const ownMatrix = splitMatrix(size, entries)
  const ownRight = splitVector(size)
  right.forEach(({ re, im }, i) => {
    ownRight.re[i] = re
    ownRight.im[i] = im
  })
  const ours = (): readonly Complex[] => {
    const x = factorLu(ownMatrix).solve(ownRight)
    return rows.map((_, i) => complex(x.re[i]!, x.im[i]!))
  }
  // as one real system of twice the size: this library has no complex numbers
  const realRows = [
    ...rows.map((row) => [...row.map((it) => it.re), ...row.map((it) => -it.im)]),
    ...rows.map((row) => [...row.map((it) => it.im), ...row.map((it) => it.re)]),
  ]
  const realMatrix = new Matrix(realRows)
  const realRight = Matrix.columnVector([...right.map((it) => it.re), ...right.map((it) => it.im)])
  const mlMatrix = (): readonly Complex[] => {
    const x = solve(realMatrix, realRight).to1DArray()
    return rows.map((_, i) => complex(x[i]!, x[i + size]!))
  }
  const mathMatrix = matrix(rows.map((row) => row.map((it) => mathComplex(it.re, it.im))))
  const mathRight = matrix(right.map((it) => [mathComplex(it.re, it.im)]))
  const mathJs = (): readonly Complex[] => {
    const x = lusolve(mathMatrix, mathRight).toArray() as unknown as MathComplex[][]
    return x.map(([it]) => complex(it!.re, it!.im))
  }
  expectAlike(ours(), mlMatrix())
  expectAlike(ours(), mathJs())
  const own = timedMany(ours, 20, { first: 10, counted: 21 })
  const ml = timedMany(mlMatrix, 5, { first: 5, counted: 11 })
  const math = timed(() => undefined, mathJs, { first: 3, counted: 7 })
  const times = (other: Taken): string => `${(other.best / own.best).toFixed(1)} times as long`
  const peer = { unit: 'ms', target: null } as const
  return [
    { name: '60 complex unknowns, full, ours', unit: 'ms', ...own, target: 0.32, note: 'condition estimated as well' },
    { ...peer, name: 'the same in ml-matrix (120 real)', ...ml, note: times(ml) },
    { ...peer, name: 'the same in mathjs', ...math, note: times(math) },
  ]
}

function expectAlike(a: readonly Complex[], b: readonly Complex[]): void {
  const isAlike = a.every((it, i) => Math.abs(it.re - b[i]!.re) + Math.abs(it.im - b[i]!.im) < 1e-9)
  if (!isAlike) throw new Error('two solvers, two answers')
}
