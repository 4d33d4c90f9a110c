/** Wires in the air and the poles that carry them: the section, the LV under-build, the crossing circuit, the service to a house. */
import { span } from '../geometry/curves'
import { at, bar, box, cylinder, vector } from '../geometry/shapes'
import { gapHalf } from '../gear/jumper'
import { lampView, metalworkView } from '../gear/metalwork'
import { crossarm, pinInsulator, polePlate, seatAbove, stepBolts } from '../gear/pole'
import { shaftView } from '../gear/shaft'
import { stayView } from '../gear/stay'
import { type Carriers, transformerView } from '../gear/transformer'
import { type Built, built, hitAlong, join, type Part, part, type Wire, wire } from '../ink/part'
import { aroundView } from './around'
import { hvHeight, type Layout, lvHeight, radiusAt, sagIn, type Support } from './layout'

const lvScale = { wide: 0.5, tall: 0.42 }

interface LineState {
  /** The insulator of this conductor is the cracked one. */
  readonly cracked: string | null
  /** Fuse carriers of transformers, as last seen. */
  readonly carriers: Readonly<Record<string, Carriers>>
}

export function lineView(layout: Layout, { cracked, carriers }: LineState): Built {
  return join(
    ...layout.poles.map((along) => poleWithArms(layout, along)),
    built([...polePlate(layout), ...stepBolts(layout), ...(cracked ? crackOf(layout, cracked) : [])]),
    ...layout.place.transformers.map((it) => {
      const along = poleOf(layout, it.along)
      const second = along === 0 ? layout.secondLeg : null
      return transformerView(layout, { ...it, along }, second, carriers[it.id] ?? 'not-looked')
    }),
    ...(layout.stay ? [stayView(layout.stay)] : []),
    ...(layout.neutral ? [neutralEarth(layout, layout.neutral)] : []),
    metalworkView(layout),
    aroundView(layout),
    sectionWires(layout),
    crossingView(layout),
    poleHits(layout),
    ...(layout.place.nextPole ? [nextPoleHits(layout, layout.place.nextPole.along)] : []),
  )
}

/** A transformer at the worked pole stands there; any other on the pole of the row that is nearest to its place. */
function poleOf({ poles }: Layout, along: number): number {
  if (Math.abs(along) < 3) return 0
  const others = poles.filter((it) => it !== 0)
  return others.reduce((best, it) => (Math.abs(it - along) < Math.abs(best - along) ? it : best), others[0]!)
}

/** Height of the pin insulator under a wire: from the arm's top, or from the pole's for a wire over the axis. */
function hvInsulator(layout: Layout, wireOf: Support, along: number, isNear: boolean, id: string): readonly Part[] {
  const isOnTop = Math.abs(wireOf.across) < layout.pole.topRadius
  const foot = isOnTop ? layout.pole.top : layout.arm.height + 0.05
  const tall = (wireOf.height - foot) / seatAbove
  return pinInsulator([wireOf.across, foot, along + (isOnTop ? 0 : layout.arm.along)], id, 0.85, tall, isNear)
}

function poleWithArms(layout: Layout, along: number): Built {
  const isWorked = along === 0
  const id = (name: string): string => (isWorked ? name : '')
  const { arm, lvArm, neutral, place } = layout
  const parts = [
    ...crossarm({ ...arm, along: along + arm.along, made: place.arm }, id('arm')),
    ...(layout.lv.length > 0
      ? crossarm({ ...lvArm, along: along + arm.along, drop: 0.35, made: place.arm }, id(''))
      : []),
    ...layout.conductors.flatMap((it) => hvInsulator(layout, it, along, isWorked, id(it.id))),
    ...(neutral ? spool(layout, neutral, along, id(neutral.id)) : []),
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
  const lamp = layout.hasLamps && along < 0 ? [lampView(layout, '', layout.lvArm.height - 0.7, along)] : []
  return join(
    shaftView(layout, { across: 0, along }, id('pole'), isWorked),
    built(parts),
    ...lamp,
    ...(isWorked && layout.secondLeg ? [secondLeg(layout)] : []),
  )
}

/** The neutral is tied to a spool on a bracket: it needs no height of insulation. */
function spool(layout: Layout, { across, height }: Support, along: number, id: string): readonly Part[] {
  const inner = Math.sign(across) * radiusAt(layout, height)
  return [
    part(
      at(box(Math.abs(across - inner) + 0.06, 0.03, 0.05), [(across + inner) / 2, height - 0.09, along]),
      'steel',
      id,
      0.05,
    ),
    part(at(cylinder(0.04, 0.04, 0.085, 12), [across, height - 0.035, along]), 'glaze', id, 0.04),
    part(at(cylinder(0.008, 0.008, 0.16, 6), [across, height - 0.03, along]), 'steel', id, 0.03),
  ]
}

/** Down the pole under a moulding to its rod. */
function neutralEarth(layout: Layout, { across, height, earth, id }: NonNullable<Layout['neutral']>): Built {
  const side = Math.sign(across) || 1
  const beside = (y: number) => vector(side * (radiusAt(layout, y) + 0.012), y, 0.02)
  const points = [vector(across, height, 0.05), beside(height - 0.3), beside(3), beside(0.1), earth.clone().setY(0.06)]
  return built(
    [
      part(at(cylinder(0.009, 0.009, 0.2, 8), [earth.x, 0.05, earth.z]), 'copper', '', 0.04),
      part(at(box(0.035, 2.5, 0.03), [beside(1.3).x, 1.3, 0.02]), 'polymer', '', 0.06),
    ],
    [wire(points, 0.005, 'copper', id, 1)],
  )
}

/** Made like the first, tied to it by the arm and by two braces that cross. */
function secondLeg(layout: Layout): Built {
  const { x, z } = layout.secondLeg!
  const shaft = shaftView(layout, { across: x, along: z }, 'pole', false)
  const tie = (from: number, to: number): Part =>
    part(bar(vector(0, from, 0), vector(x, to, z), 0.03, 0.07, vector(0, 0, 1)), 'steel', 'pole', 0.06)
  const high = layout.arm.height - 1.5
  const segments = [[vector(x, 0, z), vector(x, layout.pole.top - 0.4, z)]] as const
  return join(
    shaft,
    built([tie(high, high - 1.5), tie(high - 1.5, high), tie(0.9, 0.9)], [], [{ id: 'pole', segments, radius: 0.15 }]),
  )
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
  const { conductors, place, poles } = layout
  /** A wire with a jumper ends on either side of its pole. */
  const gapAt = (id: string, along: number): number => {
    if (along === 0) return place.jumpers.includes(id) ? gapHalf : 0
    return place.sectionJumpers.some((it) => it.along === along) && conductors.some((it) => it.id === id) ? gapHalf : 0
  }
  for (let s = 0; s + 1 < poles.length; s++) {
    const [from, to] = [poles[s]!, poles[s + 1]!]
    const isNear = from === 0 || to === 0
    const pieces = isNear ? 28 : 10
    const strung = ({ id, across, height }: Support, of: 'hv' | 'lv', radius: number, minPx: number): Wire =>
      wire(
        span(
          vector(across, height, from + gapAt(id, from)),
          vector(across, height, to - gapAt(id, to)),
          sagIn(to - from, of),
          pieces,
        ),
        radius,
        'aluminium',
        id,
        isNear ? minPx : minPx * 0.6,
        isNear ? 5 : 4,
      )
    wires.push(
      ...conductors.map((it) => strung(it, 'hv', 0.0095, 1.9)),
      ...layout.lv.map((it) => strung(it, 'lv', 0.006, 1.3)),
      ...(layout.neutral ? [strung(layout.neutral, 'lv', 0.006, 1.3)] : []),
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
    ...(layout.neutral ? [neutralHit(layout.neutral, near)] : []),
  ])
}

const neutralHit = (it: Support, near: readonly number[]) =>
  hitAlong(
    it.id,
    near.map((z) => vector(it.across, lvHeight(it, z), z)),
    0.015,
    2,
  )

/** The circuit that crosses above the section, on two taller wooden poles beside the line. */
function crossingView({ crossing }: Layout): Built {
  if (!crossing) return built([])
  const { id, along: middle, height, phases } = crossing
  const parts = crossingEnds.flatMap((across) => [
    part(at(cylinder(0.12, 0.2, height, 10), [across, height / 2, middle]), 'wood', '', 0.3),
    part(at(box(0.1, 0.12, 2.6), [across, height - 0.2, middle]), 'wood', '', 0.12),
    ...phases.flatMap(({ along }) => pinInsulator([across, height - 0.14, along], '', 1, 0.7, false)),
  ])
  const strung = phases.map(({ along }) => crossingWire(along, height))
  return built(
    parts,
    strung.map((points) => wire(points, 0.008, 'aluminium', id, 1.2)),
    strung.map((points) => hitAlong(id, points, 0.03, 4)),
  )
}

/** Across the line, metres. */
const crossingEnds = [-34, 31] as const

const crossingWire = (along: number, height: number) =>
  span(vector(crossingEnds[0], height + 0.08, along), vector(crossingEnds[1], height + 0.08, along), 1.3, 32)

/** Where a phase of the crossing hangs over the section's conductor, and the way to it from its pole. */
export function crossingPath({ crossing }: Layout, phase: string, across: number) {
  if (!crossing) return []
  const along = crossing.phases.find((it) => it.phase === phase)?.along ?? crossing.along
  return crossingWire(along, crossing.height).filter((point) => point.x >= across)
}

/** What can be worked on at the next pole. */
function nextPoleHits(layout: Layout, along: number): Built {
  const { arm, pole } = layout
  const half = arm.length / 2
  const near = [-1.6, -0.8, 0, 0.8, 1.6].map((z) => along + z)
  return built(
    [],
    [],
    [
      {
        id: 'next-pole',
        segments: [[vector(0, 0, along), vector(0, pole.top - 0.4, along)]],
        radius: radiusAt(layout, 3),
      },
      {
        id: 'arm@next',
        segments: [
          [
            vector(arm.across - half, arm.height, along + arm.along),
            vector(arm.across + half, arm.height, along + arm.along),
          ],
        ],
        radius: 0.05,
      },
      ...layout.conductors.map((it) =>
        hitAlong(
          `${it.id}@next`,
          near.map((z) => vector(it.across, hvHeight(it, z), z)),
          0.02,
          1,
        ),
      ),
    ],
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
        segments: [
          [vector(arm.across - half, arm.height, arm.along), vector(arm.across + half, arm.height, arm.along)],
        ],
        radius: 0.05,
      },
    ],
  )
}
