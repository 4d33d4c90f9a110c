/** Which devices stand in the way of the sources of a story, and of what they feed through. */
import { carrierId, feederFuseId, feederNode, outputId, ownEmfId } from '../circuit/nodes'
import { ratedCurrent } from '../circuit/embeddedSource'
import type { Fitted } from '../circuit/fitted'
import type { OwnSource } from '../circuit/livening/mechanism'
import { bladeId } from '../circuit/switches'
import { phasesOf } from '../../site/phasesOf'
import type { EmbeddedSource, Feeder, Scenario, ScenarioSwitch, ThingId, Transformer } from '../../site/scenario'
import { breakerDevice, freshBreaker } from './breaker'
import type { Device } from './device'
import { freshFuse, fusesDevice } from './fuses'
import { generatorDevice } from './generator'
import { stoppingDevice } from './stopping'

/** @param sources ids of the sources that reach the section; `own` among them where the livening brings one itself */
export function devicesOf(
  scenario: Scenario,
  fitted: Fitted,
  sources: readonly ThingId[],
  own: OwnSource | undefined,
): readonly Device[] {
  const { feeders, embedded = [], transformers = [], switches } = scenario
  const among = (it: { readonly id: ThingId }): boolean => sources.includes(it.id)
  return [
    ...feeders.filter(among).flatMap((it) => feederDevices(scenario, fitted, it)),
    ...embedded.filter(among).flatMap((it) => embeddedDevices(scenario, it)),
    ...(own === undefined ? [] : [stoppingDevice(own.id, own.stopsAfter)]),
    ...switches.flatMap((it) => switchDevices(scenario, it)),
    ...transformers.flatMap((it) => transformerDevices(scenario, it)),
  ]
}

function feederDevices(scenario: Scenario, fitted: Fitted, feeder: Feeder): readonly Device[] {
  const { id, fuses } = feeder
  const breaker = breakerDevice(freshBreaker(feeder, fitted.recloseBlocked.includes(id)))
  if (fuses === undefined) return [breaker]
  const { frequency } = scenario
  const each = phasesOf(feeder.conductors).map((phase) => {
    return freshFuse(feederFuseId(id, phase), feederNode(id, 'end', phase))
  })
  return [breaker, fusesDevice({ sources: [id], type: fuses, frequency, fuses: each })]
}

function embeddedDevices(scenario: Scenario, source: EmbeddedSource): readonly Device[] {
  const { id, kind, stall, limit } = source
  const rated = ratedCurrent(scenario, source)
  const measures = source.phases.map((phase) => outputId(id, phase))
  if (kind === 'inverter') {
    const emfs = source.phases.map((phase) => ownEmfId(id, phase))
    const limits = limit === undefined ? [] : [{ emfs, measures, most: limit * rated }]
    return [stoppingDevice(id, source.trips ?? 'never', limits)]
  }
  if (stall === undefined) return []
  const setting = { curve: 'definite-time', pickup: stall.share * rated, multiplier: stall.after } as const
  return [generatorDevice({ source: id, measures, stall: setting, travel: 0 })]
}

/** Cut-outs: whatever feeds through them, each opens its own phase. */
function switchDevices({ conductors, frequency }: Scenario, { id, fuses }: ScenarioSwitch): readonly Device[] {
  if (fuses === undefined) return []
  const each = phasesOf(conductors).map((phase) => freshFuse(bladeId(id, phase)))
  return [fusesDevice({ sources: [], type: fuses, frequency, fuses: each })]
}

/** Whoever feeds its low-voltage side is cut off from the section when all of its fuses have blown. */
function transformerDevices({ frequency, embedded = [] }: Scenario, transformer: Transformer): readonly Device[] {
  const { id, fuses } = transformer
  if (fuses === undefined) return []
  const behind = embedded.filter((it) => it.transformer === id).map((it) => it.id)
  const each = transformer.phases.map((phase) => freshFuse(carrierId(id, phase)))
  return [fusesDevice({ sources: [id, ...behind], type: fuses, frequency, fuses: each })]
}
