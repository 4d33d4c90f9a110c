/** Main switches on low voltage and where one stands to work them: what can be isolated below the line. */
import type { GroundPoint } from './place'
import type { Scenario, ThingId } from './scenario'

/** Beside the transformer's pole, on the road side, metres off the line. */
const besideTransformer = 1.5

interface Main {
  readonly id: ThingId
  readonly at: GroundPoint
}

/** Of transformers, of other people's sources, of street lamps. In order of id. */
export function mainsOf(scenario: Scenario): readonly Main[] {
  const { transformers = [], embedded = [], lv } = scenario
  const found = [
    ...transformers.map(({ id, along }) => ({ id, at: { x: along, y: besideTransformer } })),
    ...embedded.map(({ id, at }) => ({ id, at })),
    ...lv.wires.flatMap(({ id, lamps }) => (lamps === undefined ? [] : [{ id, at: lamps.cabinet }])),
  ]
  return found.sort((a, b) => (a.id < b.id ? -1 : 1))
}

export function findMain(scenario: Scenario, id: ThingId): Main | undefined {
  return mainsOf(scenario).find((it) => it.id === id)
}
