/**
 * What the crew has on paper and before their eyes from the start: the work order, the network diagram, the protection
 * settings, the place. No hidden field: no defect, no blade position, nothing that the seed draws.
 */
import type { Soil } from '../physics/soil'
import type { GroundPoint, PoleStation } from './place'
import { faultDuties, type FaultDuty } from './faultDuty'
import { networkSheet, type NetworkSheet } from './networkSheet'
import { hasSteps, type Pole } from './pole'
import { placeSheet, type PlaceSheet } from './placeSheet'
import { feetAt } from './stations'
import type { Conductor, Feeder, LowVoltage, Scenario, ScenarioPerson, SiteHazard, ThingId } from './scenario'

export interface JobSheet {
  readonly scenario: string
  readonly purpose: Scenario['purpose']
  readonly date: string
  /** Seconds after midnight at job second 0. */
  readonly startsAt: number
  readonly frequency: number
  readonly weather: Scenario['weather']
  readonly soil: Soil
  /** Step bolts up to 0: it has none. */
  readonly pole: Pick<
    Pole,
    'kind' | 'number' | 'height' | 'armHeight' | 'lvHeight' | 'buttLength' | 'diameter' | 'stepBoltsTo'
  > & { readonly feetAt: Readonly<Record<PoleStation, number>> }
  readonly conductors: readonly Pick<Conductor, 'id' | 'phase' | 'x' | 'height' | 'radius'>[]
  readonly section: Scenario['section']
  readonly feeders: readonly Omit<Feeder, 'conductors'>[]
  /** What of each feeder could run through a lead at the work, and for how long: in the order of the feeders. */
  readonly faults: readonly FaultDuty[]
  /** The feeder that no switch of the section belongs to crosses it there, its lowest conductor so high. */
  readonly crossing: { readonly feeder: ThingId; readonly along: number; readonly height: number } | null
  readonly lv: Pick<LowVoltage, 'voltage' | 'wires'>
  readonly stay?: { readonly anchor: GroundPoint }
  readonly switches: readonly {
    readonly id: ThingId
    readonly label: string
    readonly feeder: ThingId
    /** As the diagram has it. */
    readonly normally: 'open' | 'closed'
    readonly remote: boolean
    readonly along: number
  }[]
  readonly crew: readonly Pick<ScenarioPerson, 'id' | 'role' | 'bootSize'>[]
  /** Things that can be marked as a hazard, whether they are one or not. */
  readonly hazards: readonly Omit<SiteHazard, 'real'>[]
  readonly work: { readonly conductor: ThingId; readonly item: string }
  readonly place: PlaceSheet
  readonly network: NetworkSheet
}

export function jobSheet(scenario: Scenario): JobSheet {
  const { pole } = scenario
  return {
    scenario: scenario.id,
    purpose: scenario.purpose,
    date: scenario.date,
    startsAt: scenario.startsAt,
    frequency: scenario.frequency,
    weather: scenario.weather,
    soil: scenario.soil,
    pole: {
      kind: pole.kind,
      number: pole.number,
      height: pole.height,
      armHeight: pole.armHeight,
      lvHeight: pole.lvHeight,
      buttLength: pole.buttLength,
      diameter: pole.diameter,
      stepBoltsTo: hasSteps(pole) ? pole.stepBoltsTo : 0,
      feetAt: { foot: 0, 'below-lv': feetAt(pole, 'below-lv'), 'above-lv': feetAt(pole, 'above-lv') },
    },
    conductors: scenario.conductors.map(({ id, phase, x, height, radius }) => ({ id, phase, x, height, radius })),
    section: scenario.section,
    feeders: scenario.feeders.map(({ conductors: _drawnElsewhere, ...feeder }) => feeder),
    faults: faultDuties(scenario),
    crossing: crossingOf(scenario),
    lv: { voltage: scenario.lv.voltage, wires: scenario.lv.wires },
    ...(scenario.stay && { stay: { anchor: scenario.stay.anchor } }),
    switches: scenario.switches.map(({ id, label, feeder, closed, remote, along }) => ({
      id,
      label,
      feeder,
      normally: closed ? 'closed' : 'open',
      remote,
      along,
    })),
    crew: scenario.crew.map(({ id, role, bootSize }) => ({ id, role, bootSize })),
    hazards: scenario.hazards.map(({ id, at, looks }) => ({ id, at, ...(looks && { looks }) })),
    work: { conductor: scenario.work.conductor, item: scenario.work.item },
    place: placeSheet(scenario),
    network: networkSheet(scenario),
  }
}

function crossingOf({ feeders, switches, section }: Scenario): JobSheet['crossing'] {
  const feeder = feeders.find(({ id }) => !switches.some((it) => it.feeder === id))
  if (!feeder) return null
  const height = Math.min(...feeder.conductors.map((it) => it.height))
  return { feeder: feeder.id, along: section.crossingAlong, height }
}
