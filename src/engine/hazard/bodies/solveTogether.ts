/**
 * Several bodies in one circuit: each a star of its own (solveBody.ts), all on the ports of the same solved state, so
 * that each feels what the others draw. It is the full solve with everybody stamped, in the circuit's port form. A lead
 * that only their hands hold is one more unknown, tied to earth by its stray capacitance alone.
 */
import type { Complex } from '../../math/complex'
import { add, complex, magnitude, ONE, ZERO } from '../../math/complex'
import { handToHandImpedance } from '../../physics/body'
import { unsolvable, type Unsolvable } from '../../physics/network'
import type { Scenario } from '../../site/scenario'
import { angularFrequency } from '../circuit/parts'
import { looseCapacitance } from '../circuit/leads'
import type { PortedBody } from './bodyPorts'
import type { Layer } from './layer'
import { isAtTrunk, isSettled, largestDifference, layersImpedance, type BodySolution } from './solveBody'
import { eliminate } from './starSystem'

export interface Group {
  readonly persons: readonly string[]
  readonly ports: PortedBody
  /** Whose each port is, by place in `persons`. */
  readonly owner: readonly number[]
}

export interface GroupSolution {
  readonly bodies: readonly BodySolution[]
  /** Volt of each lead that hangs on nobody but these. */
  readonly loose: ReadonlyMap<string, Complex>
}

const mostIterations = 400
/** From here on only half a step is taken: two bodies that follow each other settle. */
const halvedFrom = 40

/** @param layers by port */
export function solveTogether(
  group: Group,
  layers: readonly (readonly Layer[])[],
  scenario: Pick<Scenario, 'body' | 'frequency'>,
): GroupSolution | Unsolvable {
  const outside = layers.map(layersImpedance)
  const most = largestDifference(group.ports.open)
  let voltages = group.persons.map(() => most)
  for (let i = 0; i < mostIterations; i++) {
    const solution = starsAt(group, outside, voltages, scenario)
    if (solution === undefined) return unsolvable(group.persons[0] ?? '', 'not-finite')
    const found = solution.bodies.map((it) => it.bodyVoltage)
    if (found.every((it, b) => isSettled(voltages[b]!, it))) return solution
    voltages = i < halvedFrom ? found : found.map((it, b) => (it + voltages[b]!) / 2)
  }
  return unsolvable(group.persons[0] ?? '', 'no-convergence')
}

/** Unknowns: current into each port, potential of each trunk, potential of each loose lead. */
function starsAt(
  { persons, ports, owner }: Group,
  outside: readonly Complex[],
  voltages: readonly number[],
  { body: skin, frequency }: Pick<Scenario, 'body' | 'frequency'>,
): GroupSolution | undefined {
  const limbs = voltages.map((it) => 0.5 * handToHandImpedance(it, skin.percentile, skin.skin))
  const own = ports.limbs.map((limb, k) => (isAtTrunk(limb) ? 0 : limbs[owner[k]!]!))
  const leadOf = ports.ported.map(({ terminal }) => (terminal.kind === 'loose' ? terminal.lead : null))
  const leads = [...new Set(leadOf.flatMap((it) => it ?? []))].sort()
  const count = owner.length
  const size = count + persons.length + leads.length
  const row = (entry: (j: number) => Complex, right: Complex): Complex[] => {
    return [...Array.from({ length: size }, (_, j) => entry(j)), right]
  }
  const isOf = (is: boolean): Complex => (is ? ONE : ZERO)
  const placeOfLead = (k: number): number => {
    const lead = leadOf[k] ?? null
    return lead === null ? -1 : count + persons.length + leads.indexOf(lead)
  }
  const stray = complex(0, angularFrequency(frequency) * looseCapacitance)
  const rows = [
    ...owner.map((who, k) =>
      row((j) => {
        if (j >= count) return j === placeOfLead(k) ? complex(-1) : isOf(j === count + who)
        const between = ports.transfer[k]![j]!
        return j === k ? add(between, add(outside[k]!, complex(own[k]!))) : between
      }, ports.open[k]!),
    ),
    ...persons.map((_, b) => row((j) => isOf(j < count && owner[j] === b), ZERO)),
    ...leads.map((_, l) => {
      const at = count + persons.length + l
      return row((j) => (j === at ? stray : isOf(j < count && placeOfLead(j) === at)), ZERO)
    }),
  ]
  const x = eliminate(rows, size, 1)?.[0]
  if (x === undefined || !x.every((it) => Number.isFinite(it.re) && Number.isFinite(it.im))) return undefined
  return {
    bodies: persons.map((_, b) => {
      const mine = owner.flatMap((who, k) => (who === b ? [k] : []))
      const inside = mine.map((k) => ({ re: x[k]!.re * own[k]!, im: x[k]!.im * own[k]! }))
      return { currents: mine.map((k) => x[k]!), bodyVoltage: largestDifference(inside) }
    }),
    loose: new Map(leads.map((lead, l) => [lead, x[count + persons.length + l]!])),
  }
}

/** The largest current at any contact, A. */
export function largestCurrent({ currents }: BodySolution): number {
  return Math.max(0, ...currents.map(magnitude))
}
