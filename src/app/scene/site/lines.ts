/** Wires in the air and the poles that carry them: the section, the LV under-build, the crossing circuit, the service to a house. */
import { span } from '../geometry/curves'
import { at, box, cylinder, vector } from '../geometry/shapes'
import { crossarm, pinInsulator, polePlate, poleShaft, seatAbove, stepBolts } from '../gear/pole'
import { stayView } from '../gear/stay'
import { type Built, built, hitAlong, join, type Part, part, type Wire, wire } from '../ink/part'
import { hvHeight, type Layout, lvHeight, poleRow, radiusAt, sag, type Support } from './layout'

const lvScale = { wide: 0.5, tall: 0.42 }

/** @param worn the insulator of this conductor is the cracked one */
export function lineView(layout: Layout, cracked: string | null): Built {
  return join(
    built(poleRow.flatMap((along) => poleWithArms(layout, along))),
    built([...polePlate(layout), ...stepBolts(layout), ...(cracked ? crackOf(layout, cracked) : [])]),
    stayView(layout),
    sectionWires(layout),
    crossingView(layout),
    serviceView(layout),
    poleHits(layout),
  )
}

/** Height of the pin insulator under a wire: from the arm's top, or from the pole's for a wire over the axis. */
function hvInsulator(layout: Layout, wireOf: Support, along: number, isNear: boolean, id: string): readonly Part[] {
  const isOnTop = Math.abs(wireOf.across) < layout.pole.topRadius
  const foot = isOnTop ? layout.pole.top : layout.arm.height + 0.05
  const tall = (wireOf.height - foot) / seatAbove
  return pinInsulator([wireOf.across, foot, along + (isOnTop ? 0 : layout.arm.along)], id, 0.85, tall, isNear)
}

function poleWithArms(layout: Layout, along: number): readonly Part[] {
  const isWorked = along === 0
  const id = (name: string): string => (isWorked ? name : '')
  const { arm, lvArm } = layout
  return [
    ...poleShaft(layout, along, id('pole')),
    ...crossarm(arm.height, arm.length, along + arm.along, id('arm')),
    ...crossarm(lvArm.height, lvArm.length, along + arm.along, id(''), 0.35),
    ...layout.conductors.flatMap((it) => hvInsulator(layout, it, along, isWorked, id(it.id))),
    ...layout.lv.flatMap((it) =>
      pinInsulator(
        [it.across, lvArm.height + 0.05, along + arm.along],
        id(it.id),
        lvScale.wide,
        lvScale.tall,
        isWorked,
      ),
    ),
  ]
}

/** A dark seam over the petticoats. */
function crackOf(layout: Layout, conductor: string): readonly Part[] {
  const support = layout.conductors.find((it) => it.id === conductor)
  if (!support) return []
  const height = support.height - 0.07
  const along = Math.abs(support.across) < layout.pole.topRadius ? 0 : layout.arm.along
  return [
    part(
      at(box(0.004, 0.05, 0.004), [support.across + 0.018, height, along - 0.066], [0, 0, 0.5]),
      'ink',
      conductor,
      0.05,
    ),
    part(
      at(box(0.004, 0.045, 0.004), [support.across - 0.002, height + 0.025, along - 0.055], [0, 0, -0.35]),
      'ink',
      conductor,
      0.05,
    ),
  ]
}

function sectionWires(layout: Layout): Built {
  const wires: Wire[] = []
  for (let s = 0; s + 1 < poleRow.length; s++) {
    const [from, to] = [poleRow[s]!, poleRow[s + 1]!]
    const isNear = from === 0 || to === 0
    const pieces = isNear ? 44 : 16
    const strung = ({ id, across, height }: Support, most: number, radius: number, minPx: number): Wire =>
      wire(
        span(vector(across, height, from), vector(across, height, to), most, pieces),
        radius,
        'aluminium',
        id,
        isNear ? minPx : minPx * 0.6,
        isNear ? 6 : 4,
      )
    wires.push(
      ...layout.conductors.map((it) => strung(it, sag.hv, 0.0095, 1.9)),
      ...layout.lv.map((it) => strung(it, sag.lv, 0.006, 1.3)),
    )
  }
  const near = Array.from({ length: 21 }, (_, i) => (i - 10) * 1.6)
  return built([], wires, [
    ...layout.conductors.map((it) =>
      hitAlong(
        it.id,
        near.map((z) => vector(it.across, hvHeight(it, z), z)),
        0.02,
        2,
      ),
    ),
    ...layout.lv.map((it) =>
      hitAlong(
        it.id,
        near.map((z) => vector(it.across, lvHeight(it, z), z)),
        0.015,
        2,
      ),
    ),
  ])
}

/** The circuit that crosses above the next span, on two taller wooden poles beside the line. */
function crossingView({ crossing }: Layout): Built {
  const ends = [-34, 31]
  const parts = ends.flatMap((across) => [
    part(at(cylinder(0.12, 0.2, crossing.height, 12), [across, crossing.height / 2, crossing.along]), 'wood', '', 0.3),
    part(at(box(0.1, 0.12, 2.6), [across, crossing.height - 0.2, crossing.along]), 'wood', '', 0.12),
    ...crossing.phases.flatMap(({ along }) => pinInsulator([across, crossing.height - 0.14, along], '', 1, 0.7, false)),
  ])
  const strung = crossing.phases.map(({ along }) => crossingWire(along, crossing.height, ends))
  return built(
    parts,
    strung.map((points) => wire(points, 0.008, 'aluminium', 'fx', 1.2)),
    strung.map((points) => hitAlong('fx', points, 0.03, 4)),
  )
}

const crossingWire = (along: number, height: number, ends: readonly number[]) =>
  span(vector(ends[0]!, height + 0.08, along), vector(ends[1]!, height + 0.08, along), 1.3, 32)

/** Where a phase of the crossing hangs over the section's conductor, and the way to it from its pole. */
export function crossingPath({ crossing }: Layout, phase: string, across: number) {
  const along = crossing.phases.find((it) => it.phase === phase)?.along ?? crossing.along
  return crossingWire(along, crossing.height, [-34, 31]).filter((point) => point.x >= across)
}

/** Four LV wires twisted to one span over the road. */
function serviceView(layout: Layout): Built {
  const { lvArm } = layout
  const points = span(vector(0.5, lvArm.height + 0.1, 0.3), vector(26, 4.2, 17), 0.9, 20)
  return built(
    [part(at(box(0.05, 0.12, 0.12), [0.48, lvArm.height + 0.06, 0.28]), 'steel', '', 0.05)],
    [wire(points, 0.013, 'ink', 'hazard-service-span', 1.5, 6)],
    [hitAlong('hazard-service-span', points.slice(4), 0.02, 2)],
  )
}

function poleHits(layout: Layout): Built {
  const { arm, pole } = layout
  const half = arm.length / 2
  return built(
    [],
    [],
    [
      { id: 'pole', segments: [[vector(0, 0, 0), vector(0, pole.top - 0.4, 0)]], radius: radiusAt(layout, 3) },
      // Its bolt heads stand out to the side that one looks from: in front of cover and insulator.
      {
        id: 'pole-top',
        segments: [[vector(-0.05, pole.top - 0.08, -0.16), vector(0.05, pole.top - 0.08, -0.16)]],
        radius: 0.06,
      },
      {
        id: 'arm',
        segments: [[vector(-half, arm.height, arm.along), vector(half, arm.height, arm.along)]],
        radius: 0.05,
      },
    ],
  )
}
