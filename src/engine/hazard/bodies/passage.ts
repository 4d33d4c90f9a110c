/**
 * One or several bodies through a whole story. In every solved state one layer fails at a time, of all of theirs the one
 * with the largest voltage over its proof, ties by name; what has failed stays failed. A layer between use and proof
 * voltage is taken one way for all of it: as holding, or as failing.
 */
import { magnitude, ZERO, type Complex } from '../../math/complex'
import { withstand } from '../../physics/insulation'
import { isUnsolvable, type Unsolvable } from '../../physics/network'
import type { ItemId, Scenario } from '../../site/scenario'
import type { Exposure } from '../exposure'
import type { LinePhase } from '../lineStory'
import type { LayerFailure } from './bodyAnswer'
import { bodyPorts, joiningLeads, type PortedBody } from './bodyPorts'
import { layerVoltage, type Layer } from './layer'
import { solveBody, type BodySolution } from './solveBody'
import { solveTogether, type Group, type GroupSolution } from './solveTogether'
import type { TouchingBody } from './touch'

export interface SolvedBody {
  readonly phase: LinePhase
  readonly ports: PortedBody
  /** By contact, failed ones as resistances. */
  readonly layers: readonly (readonly Layer[])[]
  readonly solution: BodySolution
}

export interface Passage {
  readonly states: readonly SolvedBody[]
  /** `item limb` of layers that conducted. */
  readonly failed: ReadonlySet<string>
  readonly failures: readonly LayerFailure[]
  readonly mayFail: boolean
  readonly layer: Exposure['layer']
}

interface Passing {
  readonly body: TouchingBody
  readonly states: SolvedBody[]
  readonly failed: Set<string>
  readonly failures: LayerFailure[]
  mayFail: boolean
  layer: Exposure['layer']
}

/** By body, in their order. Who touches one thing only is in no state. */
export function throughStory(
  scenario: Scenario,
  phases: readonly LinePhase[],
  bodies: readonly TouchingBody[],
  doesMayFail: boolean,
): readonly Passage[] | Unsolvable {
  const all = bodies.map(
    (body): Passing => ({ body, states: [], failed: new Set(), failures: [], mayFail: false, layer: null }),
  )
  for (const phase of phases) {
    const ports = portsOfEach(scenario, phase, bodies)
    if (isUnsolvable(ports)) return ports
    const present = all.flatMap((it, b) => (ports.each[b]!.ported.length >= 2 ? [{ it, ports: ports.each[b]! }] : []))
    if (present.length === 0) continue
    const unsettled = settle(scenario, phase, present, ports.joining, doesMayFail)
    if (unsettled !== undefined) return unsettled
  }
  return all
}

interface Present {
  readonly it: Passing
  readonly ports: PortedBody
}

/** Closer than the body's voltage is settled to, two layers stand equally near their proof. */
const tie = 1e-8

/** Lets layers fail until none does, then notes the state. */
function settle(
  scenario: Scenario,
  phase: LinePhase,
  present: readonly Present[],
  joining: ReadonlySet<ItemId>,
  doesMayFail: boolean,
): Unsolvable | undefined {
  for (;;) {
    const layers = present.map(({ it, ports }) =>
      ports.ported.map(({ touch }) => touch.layers.map((one) => asItIs(one, touch.limb, it.failed))),
    )
    const solutions = solveEach(scenario, phase, present, layers, joining)
    if (isUnsolvable(solutions)) return solutions
    const stressed = present.map(({ ports }, b) => stressedLayers(ports, layers[b]!, solutions[b]!))
    stressed.forEach((some, b) => some.forEach((one) => note(present[b]!.it, one)))
    const failing = stressed
      .flatMap((some, b) => some.map((one) => ({ one, it: present[b]!.it })))
      .filter(({ one }) => one.does === 'fails' || (doesMayFail && one.does === 'may-fail'))
    const most = Math.max(0, ...failing.map(({ one }) => one.ratio))
    const next = failing
      .filter(({ one }) => one.ratio >= most * (1 - tie))
      .sort((a, b) => compare(nameIn(a), nameIn(b)))[0]
    if (next === undefined) {
      present.forEach(({ it, ports }, b) => {
        it.mayFail ||= stressed[b]!.some((one) => one.does === 'may-fail')
        it.states.push({ phase, ports, layers: layers[b]!, solution: solutions[b]! })
      })
      return openOfLoose(scenario, phase, present, layers, joining)
    }
    next.it.failed.add(next.one.name)
    next.it.failures.push({ at: phase.from, item: next.one.item })
  }
}

function nameIn({ one, it }: { readonly one: Stressed; readonly it: Passing }): string {
  return `${it.body.person} ${one.name}`
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}

function portsOfEach(
  scenario: Scenario,
  { view }: LinePhase,
  bodies: readonly TouchingBody[],
): { readonly each: readonly PortedBody[]; readonly joining: ReadonlySet<ItemId> } | Unsolvable {
  const joining = joiningLeads(bodies)
  const each: PortedBody[] = []
  for (const { touches } of bodies) {
    const ports = bodyPorts(scenario, view, touches, joining)
    if (isUnsolvable(ports)) return ports
    each.push(ports)
  }
  return { each, joining }
}

type LayersOfEach = readonly (readonly (readonly Layer[])[])[]

function solveEach(
  scenario: Scenario,
  phase: LinePhase,
  present: readonly Present[],
  layers: LayersOfEach,
  joining: ReadonlySet<ItemId>,
): readonly BodySolution[] | Unsolvable {
  const [first] = present
  if (first !== undefined && present.length === 1 && !hasLoose(first)) {
    const alone = solveBody(first.ports, layers[0]!, scenario.body, first.it.body.person)
    return isUnsolvable(alone) ? alone : [alone]
  }
  const solved = solveGroup(scenario, phase, present, layers, joining)
  return isUnsolvable(solved) ? solved : solved.bodies
}

function hasLoose({ ports }: Present): boolean {
  return ports.ported.some((it) => it.terminal.kind === 'loose')
}

/** A loose lead's voltage with one person away is what the others on it bring; it goes into that person's state. */
function openOfLoose(
  scenario: Scenario,
  phase: LinePhase,
  present: readonly Present[],
  layers: LayersOfEach,
  joining: ReadonlySet<ItemId>,
): Unsolvable | undefined {
  for (const away of present.filter(hasLoose)) {
    const others = present.filter((one) => one !== away)
    const theirs = layers.filter((_, b) => present[b] !== away)
    const solved = others.length === 0 ? undefined : solveGroup(scenario, phase, others, theirs, joining)
    if (solved !== undefined && isUnsolvable(solved)) return solved
    const { states } = away.it
    const last = states[states.length - 1]!
    const open = away.ports.ported.map(({ terminal }, k) => {
      return terminal.kind === 'loose' ? (solved?.loose.get(terminal.lead) ?? ZERO) : away.ports.open[k]!
    })
    states[states.length - 1] = { ...last, ports: { ...last.ports, open } }
  }
  return undefined
}

function solveGroup(
  scenario: Scenario,
  { view }: LinePhase,
  present: readonly Present[],
  layers: LayersOfEach,
  joining: ReadonlySet<ItemId>,
): GroupSolution | Unsolvable {
  const touches = present.flatMap(({ ports }) => ports.ported.map((it) => it.touch))
  const ports = bodyPorts(scenario, view, touches, joining)
  if (isUnsolvable(ports)) return ports
  const group: Group = {
    persons: present.map(({ it }) => it.body.person),
    ports,
    owner: present.flatMap((one, b) => one.ports.ported.map(() => b)),
  }
  return solveTogether(group, layers.flat(), scenario)
}

interface Stressed {
  readonly name: string
  readonly item: string
  readonly voltage: number
  readonly ratio: number
  readonly does: ReturnType<typeof withstand>
}

/** Insulating layers with what they stand. */
function stressedLayers(
  ports: PortedBody,
  layers: readonly (readonly Layer[])[],
  solution: BodySolution,
): readonly Stressed[] {
  return ports.ported.flatMap(({ touch }, i) =>
    layers[i]!.flatMap((layer): Stressed[] => {
      if (layer.kind !== 'insulation') return []
      const voltage = layerVoltage(layer, sizeOf(solution.currents[i]!))
      const name = layerName(layer, touch.limb)
      return [{ name, item: layer.item, voltage, ratio: voltage / layer.proofTest, does: withstand(layer, voltage) }]
    }),
  )
}

function sizeOf(current: Complex): number {
  return magnitude(current)
}

/** What is told of the layers: one that failed, before one that may, before the one that stood the most. */
const gravity = { held: 0, 'may-fail': 1, failed: 2 } as const

function note(passing: Passing, { item, voltage, does }: Stressed): void {
  const did = does === 'holds' ? 'held' : does === 'fails' ? 'failed' : 'may-fail'
  if (did === 'held' && isConducting(passing.body, item)) return
  const { layer } = passing
  const isMore = layer === null || gravity[did] > gravity[layer.did] || (did === layer.did && voltage > layer.voltage)
  if (isMore) passing.layer = { item, voltage, did }
}

/** An item that conducts at one limb (one boot of the pair with a hole) is not told of as held at another. */
function isConducting({ touches }: TouchingBody, item: ItemId): boolean {
  return touches.some(({ layers }) => layers.some((it) => it.item === item && it.kind === 'resistance'))
}

function layerName(layer: Layer, limb: string): string {
  return `${layer.item} ${limb}`
}

function asItIs(layer: Layer, limb: string, failed: ReadonlySet<string>): Layer {
  if (layer.kind === 'resistance' || !failed.has(layerName(layer, limb))) return layer
  return { kind: 'resistance', item: layer.item, ohm: layer.failed }
}
