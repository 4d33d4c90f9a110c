/**
 * A scenario as the engine reads it: the world before anybody acts, its hidden truth included. SI units.
 * Made from a file by src/files; nothing here is a default.
 */
import type { CurveName, FuseLinkType, RelayReset } from '../physics/protection'
import type { ContactValues } from './contactValues'
import type { ControlRoom } from './controlRoom'
import type { LowVoltage } from './lowVoltage'
import type { Skin } from '../physics/body'
import type { Soil } from '../physics/soil'
import type { GroundThing, Metalwork, Truck } from './groundThings'
import type { ItemId, PersonId, Phase, ThingId } from './ids'
import type { Livening } from './livening'
import type { GroundPoint } from './place'
import type { NextPole } from './nextPole'
import type { Pole } from './pole'
import type { SectionJumpers } from './sectionJumpers'
import type { Weather, WeatherChange } from './weather'

export { phases, type ItemId, type PersonId, type Phase, type ThingId } from './ids'

export type Role = 'person-in-charge' | 'pole-worker' | 'ground-worker' | 'switching-operator'

export interface ScenarioPerson {
  readonly id: PersonId
  readonly role: Role
  readonly weight: 50 | 70
  /** Shoe size, so that boots fit or do not. */
  readonly bootSize: number
  readonly startsAt: GroundPoint | { readonly switch: ThingId }
  /** Job second at which somebody comes who is not here from the start. */
  readonly arrivesAt?: number
}

export interface ScenarioItem {
  readonly id: ItemId
  /** Catalogue entry, engine/gear. */
  readonly type: string
  /** What the label says: always readable, never proof of condition. */
  readonly label: Readonly<Record<string, string | number>>
  /** Hidden: what is wrong with it, by the catalogue's defect ids; empty when sound. */
  readonly defects: readonly string[]
}

export interface Conductor {
  readonly id: ThingId
  readonly phase: Phase
  /** Across the line from the pole axis, metres. */
  readonly x: number
  readonly height: number
  readonly radius: number
  readonly gmr: number
  /** Ohm per metre. */
  readonly resistance: number
}

export interface Feeder {
  readonly id: ThingId
  /** Phase to phase, volts; of a single wire with earth return, behind its isolating transformer, to earth. */
  readonly voltage: number
  readonly sourceImpedance: { readonly re: number; readonly im: number }
  readonly neutral: NeutralEarthing
  /** Capacitance to earth of the other lines on the same busbar, farad a phase. */
  readonly networkCapacitance?: number
  /** A neutral wire of its own, earthed again and again along the line. */
  readonly neutralWire?: NeutralWire
  readonly stationEarth: number
  /** From the station to where the feeder meets the section: metres. */
  readonly length: number
  readonly conductors: readonly Conductor[]
  readonly earthFault: Relay
  readonly overcurrent: Relay
  readonly sensitiveEarthFault?: Relay
  /** Fuses where the line begins: each opens its own phase and stays open. */
  readonly fuses?: ExpulsionFuses
  /** What a relay's travel does when the current is gone: lost at once (unsaid), kept, or falling back by its curve. */
  readonly relayReset?: RelayReset
  readonly breakerTime: number
  /** Dead times before each reclose shot, seconds; empty when there is no automatic reclose. */
  readonly recloseDeadTimes: readonly number[]
}

/** Between the star point of the source and the station's earth. Ohm. */
export type NeutralEarthing =
  | { readonly kind: 'resistor'; readonly resistance: number }
  | { readonly kind: 'solid' }
  | { readonly kind: 'unearthed' }
  | { readonly kind: 'reactor'; readonly impedance: { readonly re: number; readonly im: number } }
  /** Tuned to the capacitance of the network: `tuning` 1 is exact; the losses stand beside the coil as a resistance. */
  | { readonly kind: 'arc-suppression-coil'; readonly tuning: number; readonly lossResistance: number }

/**
 * Multi-earthed neutral, from the station to the far end of the section: a ladder. Feeders at both ends of a section name
 * the same wire by the same id. Of a feeder that only crosses it ends at the crossing.
 */
export interface NeutralWire {
  readonly id: ThingId
  readonly x: number
  readonly height: number
  readonly radius: number
  readonly gmr: number
  readonly resistance: number
  /** Metres from one earth to the next, and ohm of each. */
  readonly earthEvery: number
  readonly earthResistance: number
  /** The earth at the worked pole, by its place and make: a rod in the site's own soil. */
  readonly poleEarth: { readonly at: GroundPoint; readonly length: number; readonly radius: number }
}

export interface ExpulsionFuses {
  readonly link: FuseLinkType
  /** Ampere, one of the standard's. */
  readonly rating: number
}

/** A distribution transformer between the section and a low-voltage network, seen from both sides. */
export interface Transformer {
  readonly id: ThingId
  /** `Dyn` and `Yyn` three-phase; `single-phase` between two conductors; `single-wire` between one conductor and earth. */
  readonly connection: 'Dyn' | 'Yyn' | 'single-phase' | 'single-wire'
  /** Hour of the vector group: 1, 5, 7, 11 of a Dyn (11 when not said), 0, 6 of a Yyn (0). */
  readonly clock?: 0 | 1 | 5 | 6 | 7 | 11
  /** Which conductors the high-voltage side is on: three, two or one. */
  readonly phases: readonly Phase[]
  /** Phase to phase (phase to earth on a single wire) and, low, phase to neutral. */
  readonly highVoltage: number
  readonly lowVoltage: number
  readonly rating: number
  /** Per unit on the rating. */
  readonly impedance: { readonly re: number; readonly im: number }
  /** Along the section from the worked pole, metres. */
  readonly along: number
  /** Carriers stand in their cut-outs. */
  readonly fuses?: ExpulsionFuses
  /** Ohm; the low-voltage neutral's earth, and where it is when it is near enough to matter. */
  readonly neutralEarth: { readonly resistance: number; readonly at?: GroundPoint }
  /** Of a single wire: the earth through which its current returns, ohm. */
  readonly highEarth?: { readonly resistance: number }
  /** The main switch of the low-voltage side is open unless somebody left it closed. */
  readonly lowVoltageClosed: boolean
  /** What customers draw behind that switch at full voltage, all phases together, power factor 1: volt-ampere. */
  readonly load?: number
}

/** A source that somebody else owns, on the low-voltage side of a transformer. */
export interface EmbeddedSource {
  readonly id: ThingId
  /** `tie`: the next transformer's low-voltage network, over a link that is normally open. */
  readonly kind: 'generator' | 'inverter' | 'tie'
  readonly transformer: ThingId
  /** Where its owner's main switch is. */
  readonly at: GroundPoint
  readonly phases: readonly Phase[]
  /** Volt-ampere. */
  readonly rating: number
  /** A generator and a tie: per unit on its rating. */
  readonly impedance?: { readonly re: number; readonly im: number }
  /** A generator stalls when it must give this share of its rating for so long. */
  readonly stall?: { readonly share: number; readonly after: number }
  /** An inverter gives at most this share of its rated current; it stops after `trips` seconds, or never. */
  readonly limit?: number
  readonly trips?: number | 'never'
  /** False: nobody has told the owner of the line; only who asks, looks and listens finds it. */
  readonly onDiagram?: boolean
}

/** A house or yard behind a transformer of the section. One with the id of an embedded source has that source. */
export interface Premises {
  readonly id: ThingId
  readonly at: GroundPoint
  /** What whoever opens the door says when asked for a source of their own. */
  readonly answers: 'has-own' | 'has-none' | 'does-not-know' | 'nobody-home'
  /** Lets the crew at the main switch. */
  readonly consents: boolean
}

/** A circuit beside the section that stays alive. */
export interface ParallelCircuit {
  readonly id: ThingId
  /** The feeder whose line goes on past the section on the same poles; unsaid: a network of its own, always alive. */
  readonly feeder?: ThingId
  /** Phase to phase, volts; of a single wire, to earth. */
  readonly voltage: number
  readonly conductors: readonly Conductor[]
  /** Metres along the section from the worked pole, where it runs beside it. */
  readonly from: number
  readonly to: number
  /** Balanced load, ampere; power factor 1 (own choice). */
  readonly loadCurrent: number
  /** Ampere to earth in one phase while it has a fault elsewhere. */
  readonly faultCurrent?: number
  /** Seconds until its own protection takes that fault off; without one it lasts. */
  readonly faultTime?: number
}

export interface Relay {
  readonly curve: CurveName
  readonly pickup: number
  readonly multiplier: number
}

export interface Stay {
  readonly anchor: GroundPoint
  readonly anchorDepth: number
  readonly anchorLength: number
  readonly anchorRadius: number
  /** Leakage of the stay insulator, ohm. */
  readonly insulatorLeakage: number
  /** Upper part to the pole's metalwork, ohm. */
  readonly fixing: number
}

export interface ScenarioSwitch {
  readonly id: ThingId
  readonly label: string
  /** `supply` feeds the section from its own feeder; `tie` is a normally open point to `feeder`. */
  readonly feeder: ThingId
  readonly closed: boolean
  /** Remote operation fitted: must be put to local. */
  readonly remote: boolean
  /** Along the section from the worked pole, metres; positive towards the crossing. */
  readonly along: number
  /** Hidden: blades that stay closed when the handle opens. */
  readonly hungBlades: readonly Phase[]
  /** Its blades are fuse carriers in cut-outs. */
  readonly fuses?: ExpulsionFuses
  /** Handle and down-lead are earthed there by a rod of their own, ohm; at remote earth when not said. */
  readonly handleEarth?: number
  /** Hidden: that lead is broken off; found by a look at it. */
  readonly handleEarthBroken?: boolean
  /** Its motor drive has a supply of its own that can be switched off in the box. */
  readonly motorSupply?: boolean
}

export type { ContactValues, SheetValues } from './contactValues'
export type { LowVoltage } from './lowVoltage'
export type { ControlRoom, Misheard } from './controlRoom'
export type { Livening }

/** A contact condition of the chain at which the visible livening strikes; engine/timeline/triggers names them. */
export interface TriggerChoice {
  readonly trigger: string
  readonly livening: string
}

export interface Range {
  /**
   * What is uncertain, as a factor on the declared values: `contact` on the area of every contact of a body, `moisture`
   * on what insulating layers and sticks leak through (below 1 is wetter).
   */
  readonly of: 'soil' | 'fixing' | 'concrete' | 'contact' | 'moisture'
  readonly low: number
  readonly high: number
}

export interface SiteHazard {
  readonly id: string
  /** False: a distractor that the trainee may mark without there being a hazard. */
  readonly real: boolean
  readonly at: GroundPoint
  /** What stands or lies there beside the things of the pole: drawn, nothing more. */
  readonly looks?: HazardLook
}

/** A road, a path and a fence run along the line; of a road `at` is the near edge; a service span leads past `at`. */
export type HazardLook =
  | 'road'
  | 'path'
  | 'fence'
  | 'gate'
  | 'building'
  | 'hut'
  | 'water'
  | 'trees'
  | 'animals'
  | 'sign'
  | 'post'
  | 'box'
  | 'stone'
  | 'heap'
  | 'bench'
  | 'block'
  | 'service-span'

export interface ScenarioBase extends Omit<Scenario, 'seed' | 'purpose' | 'visible'> {
  /** What the seed draws from. */
  readonly draws: {
    readonly defects: readonly {
      readonly item: ItemId
      readonly defect: string
      readonly label?: Readonly<Record<string, string | number>>
    }[]
    readonly most: number
    readonly fallback: number
    /** One seed in this many shows no livening in `assess`. */
    readonly quietOneIn: number
    readonly fixed: readonly {
      readonly seed: number
      readonly purpose: 'practise' | 'assess'
      readonly defects: readonly { readonly item: ItemId; readonly defect: string }[]
      readonly visible: TriggerChoice | null
      readonly hungBlades?: readonly { readonly switch: ThingId; readonly phase: Phase }[]
    }[]
  }
}

export interface Scenario {
  readonly id: string
  readonly seed: number
  readonly purpose: 'practise' | 'assess'
  readonly frequency: number
  /** Job clock at the start, seconds after midnight, and the day as ISO date: due dates are compared with it. */
  readonly startsAt: number
  readonly date: string
  readonly weather: Weather
  /** How it changes later, in order of time. */
  readonly weatherChanges?: readonly WeatherChange[]
  /** From when to when it is too dark to see a blade without a lamp, seconds after midnight. */
  readonly dark?: { readonly from: number; readonly to: number }
  readonly soil: Soil
  readonly pole: Pole
  readonly conductors: readonly Conductor[]
  /** Where the work may be extended to. */
  readonly nextPole?: NextPole
  /** Conductors, or the line's neutral wire, that go past the worked pole in a jumper which can be undone there. */
  readonly jumpers?: readonly ThingId[]
  /** Other poles of the section whose jumpers another crew can take out. */
  readonly sectionJumpers?: readonly SectionJumpers[]
  readonly section: { readonly length: number; readonly crossingAlong: number }
  readonly feeders: readonly Feeder[]
  readonly lv: LowVoltage
  readonly stay?: Stay
  readonly switches: readonly ScenarioSwitch[]
  readonly crew: readonly ScenarioPerson[]
  readonly items: readonly ScenarioItem[]
  readonly hazards: readonly SiteHazard[]
  /** Nearest the public can come without a barrier: they follow the outline, or come to this distance of an electrode. */
  readonly publicApproach: number
  readonly livenings: readonly Livening[]
  /** Seconds after the first permit when the visible livening strikes if its trigger never came. */
  readonly triggers: readonly TriggerChoice[]
  /** Drawn by the seed; null: no visible livening in this run. */
  readonly visible: (TriggerChoice & { readonly fallback: number }) | null
  readonly transformers?: readonly Transformer[]
  readonly embedded?: readonly EmbeddedSource[]
  readonly premises?: readonly Premises[]
  readonly parallels?: readonly ParallelCircuit[]
  /** Metal on the pole beside arm and stay. */
  readonly metalwork?: readonly Metalwork[]
  /** Fences, pipes and other people's earths within reach of the site's currents. */
  readonly grounds?: readonly GroundThing[]
  /** What current does with the truck; without it nothing. */
  readonly truck?: Truck
  /** Livestock outside the barrier: the distance between its feet, and the volts that the scenario allows it. */
  readonly livestock?: { readonly pace: number; readonly limit: number }
  /** What happens in a break in which nobody is there: a clamp on this thing is turned loose, the barrier is taken. */
  readonly whileAway?: { readonly loosens?: ThingId; readonly takesBarrier?: boolean }
  /** Who is struck so that the heart may stop lies there and does nothing more; unsaid: everybody goes on. */
  readonly casualties?: boolean
  readonly horizon: number
  /** Share of people, %, whose impedance does not exceed it; a file gives one of the tables, a draw any from 1 to 99. */
  readonly body: { readonly percentile: number; readonly skin: Skin }
  readonly ranges: readonly Range[]
  /** What is changed: `old` stands fitted on the conductor, `item` takes its place. */
  readonly work: { readonly conductor: ThingId; readonly old: string; readonly item: string; readonly takes: number }
  readonly control: ControlRoom
  readonly contact: ContactValues
}
