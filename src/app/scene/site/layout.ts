/**
 * Where everything that does not move stands, from the scenario. Scene metres: x north across the line, y up, z east
 * along it, the worked pole's ground line at the origin. What the scenario does not say (other poles, sags)
 * is the setting, common practice, no source.
 */
import { Vector3 } from 'three'
import type { Belief, GroundPoint, Phase, ThingId } from '../../../engine'
import { dropIn } from '../geometry/curves'

export interface Support {
  readonly id: ThingId
  readonly letter: string
  readonly across: number
  readonly height: number
  /** Where along the line its poles stand. */
  readonly poles: readonly number[]
}

export interface Layout {
  /** Along the line, the worked one at 0. */
  readonly poles: readonly number[]
  /** Height of its top, radius there and growth of the radius per metre downward. */
  readonly pole: {
    readonly kind: Sheet['pole']['kind']
    readonly top: number
    readonly topRadius: number
    readonly taper: number
    readonly number: string
    /** Heights of feet at its stations. */
    readonly feetAt: Sheet['pole']['feetAt']
  }
  /** The other leg of a double pole. */
  readonly secondLeg: Vector3 | null
  readonly arm: {
    readonly height: number
    readonly length: number
    readonly along: number
    /** Its middle from the pole's axis: not zero when the wires hang to one side or a second leg carries it too. */
    readonly across: number
  }
  readonly conductors: readonly Support[]
  readonly lv: readonly Support[]
  /** Multi-earthed neutral under the conductors, and its rod at the pole. */
  readonly neutral: (Support & { readonly earth: Vector3 }) | null
  readonly lvArm: { readonly height: number; readonly length: number }
  readonly stepBolts: readonly { readonly across: number; readonly height: number }[]
  readonly stay: { readonly top: Vector3; readonly anchor: Vector3 } | undefined
  /** Only where a circuit crosses the section. */
  readonly crossing: {
    readonly id: ThingId
    readonly along: number
    readonly height: number
    readonly phases: readonly { readonly phase: Phase; readonly along: number }[]
  } | null
  /** What stands about, as the scenario says, and the road's edges across the line, the lower first. */
  readonly surroundings: readonly Surrounding[]
  readonly road: { readonly from: number; readonly to: number } | null
  readonly place: Sheet['place']
  /** Whether one of the wires feeds street lamps. */
  readonly hasLamps: boolean
}

type Sheet = Belief['sheet']

export interface Surrounding {
  readonly id: string
  readonly looks: NonNullable<Sheet['hazards'][number]['looks']>
  readonly at: Vector3
}

/** Along the line: the worked pole and what stands beside it where the scenario does not say. */
const usualRow = [-110, -55, 0, 60, 116] as const
/** Of a road, metres; common practice, no source. */
const roadWidth = 5
/** Sag of the HV in the middle of a span of that length, and of the LV; at one tension it goes with its square. */
const sag = { hv: 0.9, lv: 0.75, span: 60 } as const
export const sagIn = (length: number, of: 'hv' | 'lv'): number => sag[of] * (length / sag.span) * (length / sag.span)
/** Clamps sit on the far side of the pole from the climber, in reach of a stick. */
export const clampAlong = 0.85
/** The side of the pole one climbs: west. */
export const climbSide = -1

/** A point of the ground plane (x east, y north), so many metres above it. */
export const toScene = (point: GroundPoint, height = 0): Vector3 => new Vector3(point.y, height, point.x)
export const toGround = (point: Vector3): GroundPoint => ({ x: point.z, y: point.x })

export const radiusAt = ({ pole }: Layout, height: number): number => pole.topRadius + (pole.top - height) * pole.taper

/** Heights of the wires so far along: a metre from the pole they hang centimetres lower, and clamps with them. */
const sagged = ({ height, poles }: Support, of: 'hv' | 'lv', along: number): number => {
  const index = poles.findIndex((pole, i) => i > 0 && along <= pole)
  const [a, b] = [poles[Math.max(0, index - 1)]!, poles[Math.max(1, index)]!]
  const t = (along - a) / (b - a)
  return height - dropIn(b - a, sagIn(b - a, of), t)
}
export const hvHeight = (wire: Support, along: number): number => sagged(wire, 'hv', along)
export const lvHeight = (wire: Support, along: number): number => sagged(wire, 'lv', along)

/** Poles that the scenario names stand where it says, in place of the neighbours that would be too near. */
function rowOf({ place }: Sheet): readonly number[] {
  const named = [place.nextPole?.along, ...place.sectionJumpers.map(({ along }) => along)].filter(
    (along) => along !== undefined && Math.abs(along) < usualRow[4],
  ) as readonly number[]
  const others = usualRow.filter((along) => along === 0 || named.every((it) => Math.abs(it - along) > tooNear))
  return [...new Set([...others, ...named])].sort((a, b) => a - b)
}
const tooNear = 40

export function layoutOf(sheet: Sheet): Layout {
  const { pole, stay, lv, place } = sheet
  const poles = rowOf(sheet)
  const conductors = sheet.conductors.map(({ id, phase, x, height }) => ({
    id,
    letter: phase as string,
    across: x,
    height,
    poles,
  }))
  const wires = lv.wires.map(({ id, phase, x, height }) => {
    return { id, letter: phase.toLowerCase(), across: x, height, poles }
  })
  const radius = pole.diameter / 2
  // A conductor on a pin at the pole's top: the shaft ends under its seat.
  const middle = conductors.find((it) => Math.abs(it.across) < radius)
  const top = middle ? Math.min(pole.height, middle.height - 0.15) : pole.height
  const spread = (list: readonly Support[]): number => Math.max(...list.map((it) => Math.abs(it.across)))
  const stepBolts = []
  for (let height = 2.6, side = 1; height <= pole.stepBoltsTo + 0.05; height += 0.4, side = -side)
    stepBolts.push({ across: side * 0.19, height })
  return {
    poles,
    pole: {
      kind: pole.kind,
      top,
      topRadius: 0.095,
      taper: (radius - 0.095) / top,
      number: pole.number,
      feetAt: pole.feetAt,
    },
    secondLeg: place.secondLeg && toScene(place.secondLeg),
    arm: armOver(pole.armHeight, conductors, place.secondLeg?.y ?? 0),
    neutral: neutralOf(sheet, poles),
    conductors,
    lv: wires,
    lvArm: { height: pole.lvHeight - 0.19, length: 2 * spread(wires) + 0.24 },
    stepBolts,
    stay: stay && { top: new Vector3(-0.1, pole.armHeight - 0.25, 0), anchor: toScene(stay.anchor) },
    crossing: crossingOf(sheet),
    surroundings: sheet.hazards.flatMap(({ id, at, looks }) => (looks ? [{ id, looks, at: toScene(at) }] : [])),
    road: roadOf(sheet),
    place,
    hasLamps: lv.wires.some(({ lamps }) => lamps !== undefined),
  }
}

/** Past the outer insulators by as much as a hand needs; a single wire has only a stub. Common practice, no source. */
function armOver(height: number, conductors: readonly Support[], secondLeg: number): Layout['arm'] {
  const reached = [...conductors.map((it) => it.across), 0, secondLeg]
  const [low, high] = [Math.min(...reached), Math.max(...reached)]
  const length = high - low < 0.2 ? 0.36 : high - low + 0.6
  return { height, length, along: 0.16, across: (low + high) / 2 }
}

function crossingOf({ crossing }: Sheet): Layout['crossing'] {
  if (!crossing) return null
  const { feeder: id, along, height } = crossing
  const phases = (['A', 'B', 'C'] as const).map((phase, i) => ({ phase, along: along + [-1.1, 0, 1.1][i]! }))
  return { id, along, height, phases }
}

function roadOf({ hazards }: Sheet): Layout['road'] {
  const edge = hazards.find(({ looks }) => looks === 'road')?.at.y
  if (edge === undefined) return null
  return edge < 0 ? { from: edge - roadWidth, to: edge } : { from: edge, to: edge + roadWidth }
}

function neutralOf({ feeders }: Sheet, poles: readonly number[]): Layout['neutral'] {
  const wire = feeders.find(({ neutralWire }) => neutralWire)?.neutralWire
  if (!wire) return null
  return { id: wire.id, letter: 'n', across: wire.x, height: wire.height, poles, earth: toScene(wire.poleEarth.at) }
}

export function requireSupport(list: readonly Support[], id: ThingId): Support {
  const found = list.find((it) => it.id === id)
  if (!found) throw new Error(`no wire ${id} at this pole`)
  return found
}
