/** Main switches on low voltage and where one stands to work them: what can be isolated below the line. */
import type { GroundPoint } from './place'
import type { ItemId, Scenario, ThingId } from './scenario'
import type { Site } from './site'

/** Beside the transformer's pole, on the road side, metres off the line. */
const besideTransformer = 1.5

interface Main {
  readonly id: ThingId
  readonly at: GroundPoint
  /** Opens the cabinet that it is in. */
  readonly key?: ItemId
}

/** Of transformers, of other people's sources and premises, of street lamps and feeds. In order of id. */
export function mainsOf(scenario: Scenario): readonly Main[] {
  const { transformers = [], embedded = [], premises = [], lv } = scenario
  const found: Main[] = [
    ...transformers.map(({ id, along }) => ({ id, at: { x: along, y: besideTransformer } })),
    ...embedded.map(({ id, at }) => ({ id, at })),
    ...premises.flatMap(({ id, at }) => (embedded.some((it) => it.id === id) ? [] : [{ id, at }])),
    ...lv.wires.flatMap(({ id, lamps, isolator }) => {
      const at = lamps?.cabinet ?? isolator?.at
      const key = lamps?.key ?? isolator?.key
      return at === undefined ? [] : [{ id, at, ...(key === undefined ? {} : { key }) }]
    }),
  ]
  return found.sort((a, b) => (a.id < b.id ? -1 : 1))
}

export function findMain(scenario: Scenario, id: ThingId): Main | undefined {
  return mainsOf(scenario).find((it) => it.id === id)
}

/** A feed with a switch of its own, and that is open. */
export function isCutOff({ mains, scenario }: Site, wire: ThingId): boolean {
  const hasOwn = scenario.lv.wires.some((it) => it.id === wire && it.isolator !== undefined)
  return hasOwn && mains[wire]?.position === 'open'
}
