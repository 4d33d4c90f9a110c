/**
 * `network`: voltages and currents of a circuit of simple elements at one frequency. Voltages are to node 0, remote earth.
 * An element's current is positive from its `from` to its `to` through the element itself, sources included: a voltage
 * source that feeds a load carries a current from `to` to `from`, so its angle stands opposite to the load's.
 * `currentA` is the magnitude; `currentAngleDeg` says the direction.
 */
import { angle, complex, factor, isUnsolvable, magnitude, PI, polar, type Complex, type Element } from '../../../engine'
import type { Inputs } from '../inputs'
import { model } from '../model'

const elementKinds = ['resistor', 'impedance', 'capacitor', 'inductor', 'voltage', 'current'] as const

export const networkModel = model(
  'network',
  (inputs) => {
    const frequency = inputs.number('frequencyHz', { atLeast: 0 })
    return inputs.list('elements', (element, index) => readElement(element, String(index), 2 * PI * frequency))
  },
  (elements) => {
    const factored = factor({ elements })
    if (isUnsolvable(factored)) return { noAnswer: `not solvable at node ${factored.node}: ${factored.reason}` }
    const solution = factored.solve()
    if (isUnsolvable(solution)) return { noAnswer: `not solvable at node ${solution.node}: ${solution.reason}` }
    const nodes = [...new Set(['0', ...elements.flatMap(({ from, to }) => [from, to])])]
    const voltages = nodes.map((node) => solution.voltage(node))
    const currents = elements.map(({ id }) => solution.current(id))
    return {
      voltageV: byNode(nodes, voltages.map(magnitude)),
      angleDeg: byNode(nodes, voltages.map(degrees)),
      currentA: currents.map(magnitude),
      currentAngleDeg: currents.map(degrees),
    }
  },
)

type SimpleElement = Extract<Element, { readonly from: string }>

export function readElement(inputs: Inputs, id: string, angularFrequency: number): SimpleElement {
  const kind = inputs.oneOf('kind', elementKinds)
  const ends = { id, from: inputs.text('from'), to: inputs.text('to') }
  switch (kind) {
    case 'resistor':
      return series(ends, complex(inputs.number('ohm', { atLeast: 0 })))
    case 'impedance':
      if (!inputs.has('ohm') && !inputs.has('reactanceOhm')) inputs.refuse('an impedance needs ohm or reactanceOhm')
      return series(ends, complex(inputs.number('ohm', {}, 0), inputs.number('reactanceOhm', {}, 0)))
    case 'inductor':
      return series(ends, complex(0, angularFrequency * inputs.number('henry', { atLeast: 0 })))
    case 'capacitor': {
      const admittance = complex(0, angularFrequency * inputs.number('farad', { atLeast: 0 }))
      return { ...ends, kind: 'admittance', admittance }
    }
    case 'voltage':
      return { ...ends, kind, voltage: phasor(inputs, 'volt') }
    case 'current':
      return { ...ends, kind, current: phasor(inputs, 'amp') }
  }
}

/** An impedance of exactly 0 is an ideal link, which the engine knows as a voltage of 0. */
function series(ends: { id: string; from: string; to: string }, impedance: Complex): SimpleElement {
  const isLink = impedance.re === 0 && impedance.im === 0
  return isLink ? { ...ends, kind: 'voltage', voltage: complex(0) } : { ...ends, kind: 'impedance', impedance }
}

function phasor(inputs: Inputs, key: 'volt' | 'amp'): Complex {
  return polar(inputs.number(key), (inputs.number('angleDeg', {}, 0) * PI) / 180)
}

function degrees(value: Complex): number {
  return (angle(value) * 180) / PI
}

function byNode(nodes: readonly string[], values: readonly number[]): Record<string, number> {
  return Object.fromEntries(nodes.map((node, index) => [node, values[index]!]))
}
