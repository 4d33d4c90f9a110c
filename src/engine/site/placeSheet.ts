/**
 * What stands about the place of work as anyone sees it who comes there: where it is and what it is, of every kind that
 * not each scenario has. No ohm, no state, nothing that the seed draws.
 */
import type { NextPole } from './nextPole'
import type { GroundThing, Metalwork } from './groundThings'
import type { Phase, ThingId } from './ids'
import type { GroundPoint } from './place'
import type { EmbeddedSource, Scenario } from './scenario'
import type { SectionJumpers } from './sectionJumpers'

export interface PlaceSheet {
  readonly secondLeg: GroundPoint | null
  readonly arm: 'wood' | 'steel'
  /** Height of the terminal of an earth conductor that is cast in. */
  readonly earthTerminal: number | null
  readonly transformers: readonly {
    readonly id: ThingId
    readonly along: number
    readonly phases: readonly Phase[]
    readonly hasFuses: boolean
  }[]
  /** Other people's, those that the diagram knows, and premises: whatever is in those. */
  readonly sources: readonly {
    readonly id: ThingId
    readonly kind: EmbeddedSource['kind'] | 'premises'
    readonly at: GroundPoint
  }[]
  readonly parallels: readonly {
    readonly id: ThingId
    readonly from: number
    readonly to: number
    readonly conductors: readonly { readonly x: number; readonly height: number }[]
  }[]
  readonly metalwork: readonly Pick<Metalwork, 'id' | 'kind' | 'height' | 'on'>[]
  readonly grounds: readonly {
    readonly id: ThingId
    readonly kind: GroundThing['kind']
    readonly points: readonly GroundPoint[]
  }[]
  /** Pads of the truck from where it stands; null: none of it is told. */
  readonly truck: {
    readonly outriggers: readonly { readonly x: number; readonly y: number; readonly radius: number }[]
    readonly hasBoom: boolean
  } | null
  /** Where the work may be extended to. */
  readonly nextPole: NextPole | null
  /** What a jumper carries past the pole. */
  readonly jumpers: readonly ThingId[]
  /** Other poles of the section whose jumpers can be taken out. */
  readonly sectionJumpers: readonly SectionJumpers[]
  /** The switches whose blades are fuse carriers. */
  readonly fuseSwitches: readonly ThingId[]
}

export function placeSheet(scenario: Scenario): PlaceSheet {
  const {
    pole,
    transformers = [],
    embedded = [],
    premises = [],
    parallels = [],
    metalwork = [],
    grounds = [],
    truck,
  } = scenario
  return {
    secondLeg: pole.secondLeg?.at ?? null,
    arm: pole.kind === 'wood' ? pole.arm : 'steel',
    earthTerminal: pole.kind === 'concrete' ? (pole.integralEarth?.height ?? null) : null,
    transformers: transformers.map(({ id, along, phases, fuses }) => ({
      id,
      along,
      phases,
      hasFuses: fuses !== undefined,
    })),
    sources: [
      ...embedded
        .filter((it) => it.onDiagram !== false && !premises.some(({ id }) => id === it.id))
        .map(({ id, kind, at }) => ({ id, kind, at })),
      ...premises.map(({ id, at }) => ({ id, kind: 'premises' as const, at })),
    ],
    parallels: parallels.map(({ id, from, to, conductors }) => ({
      id,
      from,
      to,
      conductors: conductors.map(({ x, height }) => ({ x, height })),
    })),
    metalwork: metalwork.map(({ id, kind, height, on }) => ({ id, kind, height, on })),
    grounds: grounds.map((it) => ({ id: it.id, kind: it.kind, points: pointsOf(it) })),
    truck: truck
      ? {
          outriggers: truck.outriggers.map(({ x, y, radius }) => ({ x, y, radius })),
          hasBoom: truck.boom !== undefined,
        }
      : null,
    nextPole: scenario.nextPole ?? null,
    jumpers: scenario.jumpers ?? [],
    sectionJumpers: scenario.sectionJumpers ?? [],
    fuseSwitches: scenario.switches.filter(({ fuses }) => fuses !== undefined).map(({ id }) => id),
  }
}

function pointsOf(it: GroundThing): readonly GroundPoint[] {
  if (it.kind === 'fence') return it.posts
  return it.kind === 'pipe' ? it.points : [it.at]
}
