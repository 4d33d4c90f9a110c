/**
 * A solved instant as the scene draws it: which way current goes where, the field of the ground, what reached whom.
 * Nothing is computed anew; which way a phasor goes is told by the phase of the largest current into the ground.
 */
import type { Vector3 } from 'three'
import type { Belief, Exposure, GroundPoint, Instant } from '../../../engine'
import { contourInterval, groundTop } from '../../stores/contours'
import { currentsOf, leastShare, signOf } from '../../stores/flows'
import { type Field, fieldOf, type GroundElectrode } from '../ground/potential'
import { soften } from '../geometry/curves'
import { vector } from '../geometry/shapes'
import type { Flow } from '../ink/part'
import type { LeadRoute } from '../gear/leads'
import type { Joints } from '../people/posture'
import { clampAlong, hvHeight, type Layout, radiusAt, toScene, type Support } from './layout'
import { crossingPath } from './lines'

export interface LiveningPicture {
  readonly flows: readonly Flow[]
  readonly bodies: readonly Flow[]
  readonly field: Field
  /** Largest current of any flow, ampere. */
  readonly most: number
  /** Volts from contour to contour; the pace that is tolerable, volts; where the tints end. */
  readonly interval: number
  readonly paceLimit: number
  readonly top: number
  /** Outlines of where a pace is too high. */
  readonly zone: readonly (readonly Vector3[])[]
  /** The electrode that lifts the ground most. */
  readonly strongest: GroundElectrode | null
}

type Complex = Parameters<ReturnType<typeof signOf>>[0]

export interface Drawn {
  readonly layout: Layout
  readonly sheet: Belief['sheet']
  readonly routes: readonly LeadRoute[]
  readonly joints: ReadonlyMap<string, Joints>
  readonly zone: readonly (readonly GroundPoint[])[]
}

export function liveningPicture(instant: Instant, drawn: Drawn): LiveningPicture {
  const signed = signOf(instant)
  const { most } = currentsOf(instant)
  const electrodes = instant.electrodes
    .map(({ at, current, radii, ohm }): GroundElectrode => ({ x: at.y, z: at.x, amperes: signed(current), radii, ohm }))
    .sort((a, b) => lift(b) - lift(a))
  const strongest = electrodes[0] ?? null
  const felt = electrodes
    .filter((it) => strongest && Math.abs(it.amperes) > Math.abs(strongest.amperes) * 0.004)
    .slice(0, 12)
  const field = fieldOf(felt)
  const top = groundTop(instant.electrodes)
  const flows = flowsOf(instant, drawn, signed)
  return {
    flows: flows.filter(({ amperes }) => amperes > most * leastShare),
    bodies: instant.exposures.flatMap((exposure) => bodyFlow(exposure, drawn.joints)),
    field: top > 1 ? field : fieldOf([]),
    most,
    interval: contourInterval(top),
    paceLimit: instant.tolerable.step,
    top: Math.max(1, top * 1.25),
    zone: drawn.zone.map((ring) => ring.map((at) => toScene(at, 0.02))),
    strongest: top > 1 ? strongest : null,
  }
}

const lift = ({ amperes, ohm }: GroundElectrode): number => Math.abs(amperes * (ohm[0] ?? 0))

function flowsOf(instant: Instant, drawn: Drawn, signed: (current: Complex) => number): Flow[] {
  const { layout } = drawn
  const flows: Flow[] = []
  const branch = (id: string) => instant.branches.find((it) => it.id === id)
  const add = (points: readonly Vector3[], radius: number, amperes: number): void => {
    flows.push({ points: amperes < 0 ? [...points].reverse() : points, radius, amperes: Math.abs(amperes) })
  }
  for (const route of drawn.routes)
    for (const { from, to, points } of route.sections) {
      const found = branch(`piece/${route.lead.item}/${from}-${to}`)
      if (found) add(points, 0.011, signed(found.current))
    }
  for (const conductor of layout.conductors)
    for (const piece of instant.branches.filter(({ id }) => id.startsWith(`${conductor.id}/`))) {
      const points = alongSection(layout, drawn.sheet, conductor.id, piece.id.slice(conductor.id.length + 1))
      if (points) add(points, 0.0095, signed(piece.current))
    }
  for (const { id, current } of instant.branches.filter((it) => it.id.startsWith('clash-'))) {
    const support = layout.conductors.find(({ letter }) => `clash-${letter}` === id)
    if (support) add(clashPath(layout, support), 0.009, Math.abs(signed(current)))
  }
  for (const electrode of instant.electrodes) {
    if (electrode.node.startsWith('rod/'))
      add([toScene(electrode.at, 0.34), toScene(electrode.at, -0.02)], 0.01, signed(electrode.current))
    if (electrode.node === 'cage') add(downThePole(layout), 0.008, signed(electrode.current))
  }
  return flows
}

/** From the named place to the next along the section, as far as the picture reaches. */
function alongSection(layout: Layout, sheet: Belief['sheet'], conductor: string, name: string): Vector3[] | undefined {
  const places = [
    ...sheet.switches.map(({ id, along }) => [id, along] as const),
    ['pole', clampAlong] as const,
    ['crossing', sheet.section.crossingAlong] as const,
  ]
  const ends = places.flatMap(([from, start]) =>
    places.flatMap(([to, end]) => (`${from}-${to}` === name ? [[start, end] as const] : [])),
  )[0]
  const support = layout.conductors.find(({ id }) => id === conductor)
  if (!ends || !support) return undefined
  const [from, to] = [Math.max(-54, Math.min(59, ends[0])), Math.max(-54, Math.min(59, ends[1]))]
  if (Math.abs(to - from) < 1) return undefined
  return Array.from({ length: 49 }, (_, i) => {
    const along = from + ((to - from) * i) / 48
    return vector(support.across, hvHeight(support, along), along)
  })
}

/** From the crossing's pole to where its wire hangs down on the conductor. */
function clashPath(layout: Layout, support: Support): Vector3[] {
  const { across, letter } = support
  const along = layout.crossing?.along ?? 0
  const overhead = [...crossingPath(layout, letter, across)].reverse()
  const touch = vector(across, hvHeight(support, along), along)
  const last = overhead[overhead.length - 1] ?? touch
  return [...overhead.slice(0, -1), ...soften([last, vector(across + 0.3, (last.y + touch.y) / 2, along), touch], 2)]
}

/** On the side one looks from, down to the ground. */
const downThePole = (layout: Layout): Vector3[] =>
  Array.from({ length: 24 }, (_, i) => {
    const height = layout.arm.height - 0.1 - ((layout.arm.height - 0.1) * i) / 23
    const radius = radiusAt(layout, height) + 0.006
    return vector(-0.55 * radius, height, -0.835 * radius)
  })

type Chain = (joints: Joints) => readonly Vector3[]
const trunkOf = ({ neck, chest, waist }: Joints): Vector3[] => [neck.clone().lerp(chest, 0.4), waist]
const leftArm: Chain = ({ left }) => [left.hand, left.wrist, left.elbow, left.shoulder]
const rightArm: Chain = ({ rightLimb: { hand, wrist, elbow, shoulder } }) => [hand, wrist, elbow, shoulder]
const leg = ({ hip, knee, ankle, foot }: Joints['left']): Vector3[] => [hip, knee, ankle, foot]
const backwards = (points: readonly Vector3[]): Vector3[] => [...points].reverse()

/** The way through the body, by the engine's shock path: hand to hand, hand to feet, foot to foot, hand to seat. */
const chains: readonly { readonly test: RegExp; readonly chain: Chain }[] = [
  {
    test: /hand.*hand|hand-metalwork/,
    chain: (j) => [...leftArm(j), j.neck.clone().lerp(j.chest, 0.4), ...backwards(rightArm(j))],
  },
  { test: /pace|foot.*foot|feet.*feet/, chain: (j) => [...backwards(leg(j.left)), j.hips, ...leg(j.rightLimb)] },
  {
    test: /hand.*(thigh|pole|seat|chest)/,
    chain: (j) => [...leftArm(j), ...trunkOf(j), j.hips.clone().addScaledVector(j.forward, 0.12)],
  },
  { test: /thigh.*feet|thigh/, chain: (j) => [j.hips.clone().addScaledVector(j.forward, 0.12), ...leg(j.rightLimb)] },
  { test: /./, chain: (j) => [...leftArm(j), ...trunkOf(j), j.hips, ...leg(j.left)] },
]

function bodyFlow(exposure: Exposure, joints: ReadonlyMap<string, Joints>): readonly Flow[] {
  const of = joints.get(exposure.person)
  if (!of || exposure.bodyCurrent <= 0) return []
  const chain = chains.find(({ test }) => test.test(exposure.path))!
  return [{ points: soften(chain.chain(of), 2), radius: 0.009, amperes: exposure.bodyCurrent }]
}
