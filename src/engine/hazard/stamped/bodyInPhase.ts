/**
 * One person in one stretch of a story: the solved body and its layers as they stand then. What failed in an earlier
 * stretch stays failed; one layer fails at a time, the one with the largest voltage over its proof, ties by id. A layer
 * between use and proof voltage holds here.
 */
import { magnitude } from '../../math/complex'
import { withstand } from '../../physics/insulation'
import { isUnsolvable, type Unsolvable } from '../../physics/network'
import type { Scenario } from '../../site/scenario'
import { bodyPorts, type PortedBody } from '../bodies/bodyPorts'
import { layerVoltage, type Layer } from '../bodies/layer'
import { solveBody, type BodySolution } from '../bodies/solveBody'
import type { TouchingBody } from '../bodies/touch'
import type { LinePhase, LineStory } from '../lineStory'

export interface BodyInPhase {
  readonly person: string
  readonly ports: PortedBody
  readonly solution: BodySolution
  /** By contact, failed ones as resistances. */
  readonly layers: readonly (readonly Layer[])[]
  /** `item limb` of layers that have failed. */
  readonly failed: ReadonlySet<string>
}

/** Undefined when the person closes no circuit. */
export function bodyInPhase(
  scenario: Scenario,
  line: LineStory,
  last: LinePhase,
  body: TouchingBody,
): BodyInPhase | Unsolvable | undefined {
  const failed = new Set<string>()
  let found: BodyInPhase | undefined
  for (const phase of line.phases) {
    found = undefined
    const ports = bodyPorts(scenario, phase.view, body.touches)
    if (isUnsolvable(ports)) return ports
    if (ports.ported.length >= 2) {
      const settled = settle(scenario, body.person, ports, failed)
      if (isUnsolvable(settled)) return settled
      found = settled
    }
    if (phase === last) return found
  }
  return found
}

/** Adds to `failed` until nothing more fails. */
function settle(scenario: Scenario, person: string, ports: PortedBody, failed: Set<string>): BodyInPhase | Unsolvable {
  for (;;) {
    const layers = ports.ported.map(({ touch }) =>
      touch.layers.map((layer): Layer => {
        if (layer.kind === 'resistance' || !failed.has(`${layer.item} ${touch.limb}`)) return layer
        return { kind: 'resistance', item: layer.item, ohm: layer.failed }
      }),
    )
    const solution = solveBody(ports, layers, scenario.body, person)
    if (isUnsolvable(solution)) return solution
    const next = weakest(ports, layers, solution)
    if (next === undefined) return { person, ports, solution, layers, failed: new Set(failed) }
    failed.add(next)
  }
}

/** `item limb` of the layer furthest above its proof voltage. */
function weakest(
  ports: PortedBody,
  layers: readonly (readonly Layer[])[],
  { currents }: BodySolution,
): string | undefined {
  const over = ports.ported.flatMap(({ touch }, i) =>
    layers[i]!.flatMap((layer) => {
      if (layer.kind !== 'insulation') return []
      const voltage = layerVoltage(layer, magnitude(currents[i]!))
      const name = `${layer.item} ${touch.limb}`
      return withstand(layer, voltage) === 'fails' ? [{ name, ratio: voltage / layer.proofTest }] : []
    }),
  )
  return over.sort((a, b) => b.ratio - a.ratio || (a.name < b.name ? -1 : 1))[0]?.name
}
