/** What a solution says of each element, read back by the element's own law: for checks that trust no branch current. */
import type { Complex } from '../../../../src/engine/math/complex'
import { add, conjugate, magnitude, multiply, scale, subtract, ZERO } from '../../../../src/engine/math/complex'
import type { Element, Solution } from '../../../../src/engine/physics/network'

/** A way through an element, a shunt's and an electrode's ending in the earth. */
export interface Flow {
  readonly from: string
  readonly to: string
  readonly current: Complex
  /** Ampere that the parts of this flow could be off by for one rounding of each. */
  readonly reach: number
}

export function flowsOf(element: Element, solution: Solution): readonly Flow[] {
  const { voltage, current } = solution
  const sizeOf = (node: string): number => magnitude(voltage(node))
  switch (element.kind) {
    case 'coupled':
      return element.branches.map(({ id, from, to }) => {
        return { from, to, current: current(id), reach: magnitude(current(id)) }
      })
    case 'electrodes':
      return solution.electrodeCurrents(element.id).map((it, k) => {
        return { from: element.nodes[k]!, to: '0', current: it, reach: magnitude(it) }
      })
    case 'shunt':
      return element.nodes.map((from, i) => ({
        from,
        to: '0',
        current: element.admittance[i]!.reduce((sum, y, j) => add(sum, multiply(y, voltage(element.nodes[j]!))), ZERO),
        reach: element.admittance[i]!.reduce((sum, y, j) => sum + magnitude(y) * sizeOf(element.nodes[j]!), 0),
      }))
    default: {
      const { from, to } = element
      const through = current(element.id)
      const siemens = ownSiemens(element)
      return [{ from, to, current: through, reach: magnitude(through) + siemens * (sizeOf(from) + sizeOf(to)) }]
    }
  }
}

/** Of elements whose current is read off two voltages. */
function ownSiemens(element: Element): number {
  if (element.kind === 'admittance') return magnitude(element.admittance)
  return element.kind === 'impedance' ? 1 / magnitude(element.impedance) : 0
}

/** Complex power that an element takes in, by its law and its current; a source's is what it takes, not gives. */
export function powerOf(element: Element, solution: Solution): Complex {
  const { voltage, current } = solution
  const square = (z: Complex, i: Complex): Complex => multiply(z, multiply(i, conjugate(i)))
  const drop = (from: string, to: string): Complex => subtract(voltage(from), voltage(to))
  switch (element.kind) {
    case 'impedance':
      return square(element.impedance, current(element.id))
    case 'admittance': {
      const across = drop(element.from, element.to)
      return multiply(conjugate(element.admittance), multiply(across, conjugate(across)))
    }
    case 'voltage':
      return multiply(element.voltage, conjugate(current(element.id)))
    case 'current':
      return multiply(drop(element.from, element.to), conjugate(element.current))
    case 'coupled': {
      const currents = element.branches.map((branch) => current(branch.id))
      return quadratic(element.impedance, currents)
    }
    case 'electrodes': {
      const ohm = element.resistance.map((row) => row.map((re) => ({ re, im: 0 })))
      return quadratic(ohm, solution.electrodeCurrents(element.id))
    }
    case 'shunt': {
      const volts = element.nodes.map(voltage)
      return conjugate(quadratic(element.admittance, volts))
    }
  }
}

/** Σ conj(x_i) M_ij x_j. */
function quadratic(matrix: readonly (readonly Complex[])[], x: readonly Complex[]): Complex {
  return matrix.reduce((sum, row, i) => {
    const product = row.reduce((inner, entry, j) => add(inner, multiply(entry, x[j]!)), ZERO)
    return add(sum, multiply(conjugate(x[i]!), product))
  }, ZERO)
}

export function outOf(node: string, flows: readonly Flow[]): readonly Flow[] {
  return flows.flatMap((flow) => [
    ...(flow.from === node ? [flow] : []),
    ...(flow.to === node ? [{ ...flow, current: scale(flow.current, -1) }] : []),
  ])
}
