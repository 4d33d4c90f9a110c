/**
 * What the owner's diagram shows of the network around the section: what hangs on it, what can feed it from below, what
 * runs beside it. As it was put on paper; how a switch stands, and whether anything runs, the paper does not know.
 */
import type { Phase, ThingId } from './ids'
import type { EmbeddedSource, ExpulsionFuses, Scenario, Transformer } from './scenario'

export interface NetworkSheet {
  /** In order of place along the section. */
  readonly transformers: readonly (Pick<
    Transformer,
    'id' | 'connection' | 'phases' | 'highVoltage' | 'lowVoltage' | 'rating' | 'along'
  > & { readonly fuses: ExpulsionFuses | null })[]
  /** Of other owners, behind a transformer. */
  readonly sources: readonly Pick<EmbeddedSource, 'id' | 'kind' | 'transformer' | 'phases' | 'rating'>[]
  readonly parallels: readonly {
    readonly id: ThingId
    /** Whose line goes on past the section on the same poles; null: a network of its own. */
    readonly feeder: ThingId | null
    readonly voltage: number
    readonly phases: readonly Phase[]
    readonly from: number
    readonly to: number
  }[]
  /** The transformer of the section that feeds the low voltage; null: another circuit's. */
  readonly lowVoltageFedBy: ThingId | null
  /** Of the switches whose blades are fuse carriers. */
  readonly switchFuses: readonly { readonly switch: ThingId; readonly fuses: ExpulsionFuses }[]
}

export function networkSheet(scenario: Scenario): NetworkSheet {
  const { transformers = [], embedded = [], parallels = [], switches, lv } = scenario
  return {
    transformers: [...transformers]
      .sort((a, b) => a.along - b.along)
      .map(({ id, connection, phases, highVoltage, lowVoltage, rating, along, fuses }) => ({
        id,
        connection,
        phases,
        highVoltage,
        lowVoltage,
        rating,
        along,
        fuses: fuses ?? null,
      })),
    sources: embedded
      .filter((it) => it.onDiagram !== false)
      .map(({ id, kind, transformer, phases, rating }) => ({ id, kind, transformer, phases, rating })),
    parallels: parallels.map(({ id, feeder, voltage, conductors, from, to }) => ({
      id,
      feeder: feeder ?? null,
      voltage,
      phases: conductors.map(({ phase }) => phase),
      from,
      to,
    })),
    lowVoltageFedBy: lv.fedBy ?? null,
    switchFuses: switches.flatMap(({ id, fuses }) => (fuses ? [{ switch: id, fuses }] : [])),
  }
}
