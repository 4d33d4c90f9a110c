/** What a source behind a transformer of the section is to the place: where it gets to, what keeps it away. */
import { gearOf, isLockedBy } from './questions'
import { invariant } from '../units/invariant'
import type { EmbeddedSource, Phase, Scenario, ThingId, Transformer } from './scenario'
import type { Evidence, Site } from './site'

function requireSource(scenario: Scenario, id: ThingId): EmbeddedSource {
  const source = scenario.embedded?.find((it) => it.id === id)
  invariant(source, 'a source behind a transformer', id)
  return source
}

function transformerOf(scenario: Scenario, source: ThingId): Transformer {
  const { transformer } = requireSource(scenario, source)
  const found = scenario.transformers?.find((it) => it.id === transformer)
  invariant(found, 'a transformer of the section', transformer)
  return found
}

/** Conductors that its transformer is on: it lifts them all, be it on one phase only. */
export function backFedPhases(scenario: Scenario, source: ThingId): readonly Phase[] {
  return transformerOf(scenario, source).phases
}

/** A small source makes no flash: the line hums, and a set is heard. */
export function backFeedSigns(scenario: Scenario, source: ThingId): readonly Pick<Evidence, 'of' | 'by' | 'says'>[] {
  const isSet = requireSource(scenario, source).kind === 'generator'
  return [
    ...(isSet ? [{ of: source, by: 'hear', says: 'livening.set-runs' } as const] : []),
    { of: 'pole-top', by: 'hear', says: 'livening.hum' },
  ]
}

/** Volts to earth of each conductor while nothing else ties the line; a single wire has all of it. */
export function backFedVoltage(scenario: Scenario, source: ThingId): number {
  const { connection, highVoltage } = transformerOf(scenario, source)
  return connection === 'single-wire' ? highVoltage : highVoltage / Math.sqrt(3)
}

/**
 * Why it cannot come onto the line, as a kebab fact. Carriers that hang in their cut-outs can be pushed home by anybody,
 * and a switch of the owner's without a lock can be closed by him.
 */
export function findBackFeedStop(site: Site, source: ThingId): string | undefined {
  const { id } = transformerOf(site.scenario, source)
  if (site.carriers[id] === 'out') return 'carriers-out'
  if (site.carriers[id] === 'hung' && isBagged(site, id)) return 'carriers-bagged'
  if (site.mains[id]?.position === 'open') return 'low-voltage-open'
  return isLockedBy(site, site.mains[source]?.lock) ? 'source-locked' : undefined
}

/** Nobody pushes a carrier home through a bag that closes. */
export function isBagged(site: Site, transformer: ThingId): boolean {
  const bag = site.carrierBags?.[transformer]
  return bag !== undefined && gearOf(site, bag.item).is.closes !== false
}
