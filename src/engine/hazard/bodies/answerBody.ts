/**
 * One person through a whole story. In every solved state one layer fails at a time, the one with the largest voltage
 * over its proof, ties by id; what has failed stays failed. A layer between use and proof voltage is taken both ways.
 * A current that changes within a shot is judged level by level: each for as long as at least that much flowed.
 */
import { magnitude } from '../../math/complex'
import { lineB, shockZone } from '../../physics/body'
import { withstand } from '../../physics/insulation'
import { isUnsolvable, type Unsolvable } from '../../physics/network'
import type { Scenario } from '../../site/scenario'
import type { Exposure } from '../exposure'
import { limitOf } from '../limits'
import type { LinePhase, LineStory } from '../lineStory'
import type { BodyAnswer } from './bodyAnswer'
import { bodyPorts, type PortedBody } from './bodyPorts'
import { layerVoltage, type Layer } from './layer'
import { shareCurrent, type SharedCurrent } from './shareCurrent'
import { largestDifference, solveBody, type BodySolution } from './solveBody'
import type { TouchingBody } from './touch'

/** Below this nothing is reported, ampere. */
const leastCurrent = 1e-6

export interface SolvedBody {
  readonly phase: LinePhase
  readonly ports: PortedBody
  readonly solution: BodySolution
}

export function answerBody(scenario: Scenario, line: LineStory, body: TouchingBody): BodyAnswer | Unsolvable {
  const held = throughStory(scenario, line, body, false)
  if (isUnsolvable(held)) return held
  const exposure = worstOf(scenario, line, body, held)
  if (exposure === undefined) return { kind: 'body', exposure: null, failedItems: itemsOf(held.failed) }
  if (!held.mayFail)
    return { kind: 'body', exposure: { ...exposure, layer: held.layer }, failedItems: itemsOf(held.failed) }
  const gone = throughStory(scenario, line, body, true)
  if (isUnsolvable(gone)) return gone
  const ifItFails = worstOf(scenario, line, body, gone) ?? exposure
  return { kind: 'body', exposure: { ...exposure, layer: held.layer, ifItFails }, failedItems: itemsOf(held.failed) }
}

interface Passage {
  readonly states: readonly SolvedBody[]
  /** `item limb` of layers that conducted. */
  readonly failed: ReadonlySet<string>
  readonly mayFail: boolean
  readonly layer: Exposure['layer']
}

function throughStory(
  scenario: Scenario,
  line: LineStory,
  body: TouchingBody,
  doesMayFail: boolean,
): Passage | Unsolvable {
  const states: SolvedBody[] = []
  const failed = new Set<string>()
  let mayFail = false
  let layer: Exposure['layer'] = null
  const note = (stressed: Stressed): void => {
    const found = layerNote(stressed)
    if (layer === null || gravity[found.did] > gravity[layer.did]) layer = found
    else if (found.did === layer.did && found.voltage > layer.voltage) layer = found
  }
  for (const phase of line.phases) {
    if (!phase.isLive && line.clearedBy !== 'not-live') continue
    const ports = bodyPorts(scenario, phase.view, body.touches)
    if (isUnsolvable(ports)) return ports
    if (ports.ported.length < 2) continue
    for (;;) {
      const layers = ports.ported.map((it) => it.touch.layers.map((one) => asItIs(one, it.touch.limb, failed)))
      const solution = solveBody(ports, layers, scenario.body, body.person)
      if (isUnsolvable(solution)) return solution
      const stressed = stressedLayers(ports, layers, solution)
      for (const it of stressed) note(it)
      const next = stressed.find((it) => it.does === 'fails' || (doesMayFail && it.does === 'may-fail'))
      if (next === undefined) {
        mayFail ||= stressed.some((it) => it.does === 'may-fail')
        states.push({ phase, ports, solution })
        break
      }
      failed.add(next.name)
    }
  }
  return { states, failed, mayFail, layer }
}

interface Stressed {
  readonly name: string
  readonly item: string
  readonly voltage: number
  readonly ratio: number
  readonly does: ReturnType<typeof withstand>
}

/** Insulating layers by voltage over proof, largest first, ties by id. */
function stressedLayers(
  ports: PortedBody,
  layers: readonly (readonly Layer[])[],
  solution: BodySolution,
): readonly Stressed[] {
  const stressed = ports.ported.flatMap(({ touch }, i) =>
    layers[i]!.flatMap((layer): Stressed[] => {
      if (layer.kind !== 'insulation') return []
      const voltage = layerVoltage(layer, magnitude(solution.currents[i]!))
      const name = layerName(layer, touch.limb)
      return [{ name, item: layer.item, voltage, ratio: voltage / layer.proofTest, does: withstand(layer, voltage) }]
    }),
  )
  return stressed.sort((a, b) => b.ratio - a.ratio || (a.name < b.name ? -1 : 1))
}

/** What is told of the layers: one that failed, before one that may, before the one that stood the most. */
const gravity = { held: 0, 'may-fail': 1, failed: 2 } as const

function layerNote({ item, voltage, does }: Stressed): NonNullable<Exposure['layer']> {
  return { item, voltage, did: does === 'holds' ? 'held' : does === 'fails' ? 'failed' : 'may-fail' }
}

function layerName(layer: Layer, limb: string): string {
  return `${layer.item} ${limb}`
}

function asItIs(layer: Layer, limb: string, failed: ReadonlySet<string>): Layer {
  if (layer.kind === 'resistance' || !failed.has(layerName(layer, limb))) return layer
  return { kind: 'resistance', item: layer.item, ohm: layer.failed }
}

function itemsOf(failed: ReadonlySet<string>): readonly string[] {
  return [...new Set([...failed].map((name) => name.slice(0, name.lastIndexOf(' '))))].sort()
}

interface Level {
  readonly state: SolvedBody
  readonly shared: SharedCurrent
}

function worstOf(
  scenario: Scenario,
  line: LineStory,
  body: TouchingBody,
  passage: Passage,
): Omit<Exposure, 'layer' | 'ifItFails'> | undefined {
  const levels = passage.states.flatMap((state): Level[] => {
    const shared = shareCurrent(
      state.ports.ported.map((it) => it.touch),
      state.solution.currents,
    )
    return shared !== undefined && shared.bodyCurrent >= leastCurrent ? [{ state, shared }] : []
  })
  let worst: { level: Level; duration: number; ratio: number } | undefined
  for (const level of levels) {
    const duration = levels.reduce((sum, it) => {
      const isSame = it.state.phase.shot === level.state.phase.shot && it.shared.bodyCurrent >= level.shared.bodyCurrent
      return isSame ? sum + it.state.phase.to - it.state.phase.from : sum
    }, 0)
    const ratio = level.shared.bodyCurrent / lineB(duration)
    if (worst === undefined || ratio > worst.ratio) worst = { level, duration, ratio }
  }
  return worst && exposureAt(scenario, line, body, worst.level, worst.duration)
}

function exposureAt(
  scenario: Scenario,
  line: LineStory,
  body: TouchingBody,
  { state, shared }: Level,
  duration: number,
): Omit<Exposure, 'layer' | 'ifItFails'> {
  const { bodyCurrent, heartEquivalent, path, shockPath } = shared
  const { limit, beyondRange } = limitOf(path.limit, scenario, duration)
  return {
    person: body.person,
    path: path.id,
    shockPath,
    prospectiveVoltage: largestDifference(state.ports.open),
    bodyVoltage: state.solution.bodyVoltage,
    bodyCurrent,
    heartEquivalent,
    duration,
    cleared: line.cleared,
    zone: shockZone(bodyCurrent, heartEquivalent, duration),
    limit,
    judged: bodyCurrent,
    beyondRange,
  }
}
