/** Marrow-bend with a transformer on its section and somebody's own source behind it. */
import type { EmbeddedSource, Livening, LowVoltage, Scenario, Transformer } from '../../../src/engine/site/scenario'
import type { Site } from '../../../src/engine/site/site'
import { startSite } from '../../../src/engine/site/startSite'
import type { Change } from './sites'

/** 25 kVA, 11 kV to 230 V, 120 m from the worked pole towards the supply; a public size of the smallest make. */
export const smallTransformer: Transformer = {
  id: 't1',
  connection: 'Dyn',
  phases: ['A', 'B', 'C'],
  highVoltage: 11_000,
  lowVoltage: 230,
  rating: 25_000,
  impedance: { re: 0.02, im: 0.04 },
  along: -120,
  neutralEarth: { resistance: 10 },
  lowVoltageClosed: true,
}

/** 5 kVA; what it gives into a lasting short circuit is its rated current (usual of small sets; from memory). */
export const smallSet: EmbeddedSource = {
  id: 'set-1',
  kind: 'generator',
  transformer: 't1',
  at: { x: -120, y: 20 },
  phases: ['A', 'B', 'C'],
  rating: 5_000,
  impedance: { re: 0, im: 1 },
}

export const setComesOn: Livening = { id: 'set-on', kind: 'back-feed', source: 'set-1' }

export interface BackFed {
  readonly transformer?: Partial<Transformer>
  readonly source?: Partial<EmbeddedSource>
  readonly lv?: Partial<LowVoltage>
  readonly livenings?: readonly Livening[]
}

/** The rest of the site stays as it is; carriers and main switches stand as the scenario says. */
export function backFed({ transformer = {}, source = {}, lv = {}, livenings = [] }: BackFed = {}): Change {
  return (site) => {
    const scenario: Scenario = {
      ...site.scenario,
      transformers: [{ ...smallTransformer, ...transformer }],
      embedded: [{ ...smallSet, ...source }],
      lv: { ...site.scenario.lv, ...lv },
      livenings: [...site.scenario.livenings, setComesOn, ...livenings],
    }
    const { carriers, mains } = startSite(scenario)
    return { ...site, scenario, carriers, mains }
  }
}

/** The switching operator stands at the transformer's pole with that one item in the hands. */
export function besideTransformer(site: Site, item: string): Site {
  const so = site.persons['so']!
  return {
    ...site,
    persons: { ...site.persons, so: { ...so, holds: [item], place: { kind: 'ground', at: { x: -119, y: 2 } } } },
    items: { ...site.items, [item]: { ...site.items[item]!, where: { kind: 'person', person: 'so' } } },
  }
}
