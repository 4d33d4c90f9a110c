/** A plain figure from its posture and what it wears: lofted solids, about 3 400 triangles. */
import { type BufferGeometry, Quaternion, Vector3 } from 'three'
import { soften } from '../geometry/curves'
import { at, ball, ellipse, lathe, loft, ring, type Triple } from '../geometry/shapes'
import type { Slot } from '../ink/palette'
import { type Part, part, type Wire, wire } from '../ink/part'
import { boot, limb, peak, turnOf } from './bodyParts'
import { type Joints, type LimbJoints, type Posture, solvePosture } from './posture'

export interface Wear {
  readonly hasHarness: boolean
  readonly gloves: Slot
  readonly cloth: Slot
  readonly trousers: Slot
  readonly boots: Slot
  readonly sleeves: Slot
  readonly hasOvershoes: boolean
  readonly hasIrons: boolean
}

export interface Figure {
  readonly parts: readonly Part[]
  readonly wires: readonly Wire[]
  readonly joints: Joints
}

export function figure(posture: Posture, wear: Wear, id: string): Figure {
  const joints = solvePosture(posture)
  const parts: Part[] = []
  const add = (geometry: BufferGeometry, slot: Slot, detail = 0.1, crease = 48): void =>
    void parts.push(part(geometry, slot, id, detail, crease))
  trunk(joints, wear, add)
  const wires = head(joints, posture.head, id, add)
  for (const limbs of [joints.left, joints.rightLimb]) armAndLeg(limbs, joints, wear, add)
  if (!wear.hasHarness) return { parts, wires, joints }
  const harness = harnessOn(joints, id, add)
  return { parts, wires: [...wires, ...harness], joints }
}

type Add = (geometry: BufferGeometry, slot: Slot, detail?: number, crease?: number) => void

/** A ring round the trunk so far above the hips. */
function section(
  { hips, up, right, forward }: Joints,
  above: number,
  wide: number,
  deep: number,
  ahead = 0,
): Vector3[] {
  const centre = hips.clone().addScaledVector(up, above).addScaledVector(forward, ahead)
  return ellipse(centre, right, forward.clone().negate(), wide, deep, 16).reverse()
}

function trunk(joints: Joints, wear: Wear, add: Add): void {
  const ringAt = (above: number, wide: number, deep: number, ahead = 0): Vector3[] =>
    section(joints, above, wide, deep, ahead)
  add(loft([ringAt(-0.12, 0.13, 0.1), ringAt(-0.05, 0.165, 0.118), ringAt(0.06, 0.165, 0.115)]), wear.trousers, 0.14)
  const jacket = [
    ringAt(-0.025, 0.185, 0.14),
    ringAt(-0.02, 0.186, 0.141),
    ringAt(0.06, 0.172, 0.124),
    ringAt(0.18, 0.162, 0.115, 0.008),
    ringAt(0.32, 0.182, 0.125, 0.014),
    ringAt(0.43, 0.185, 0.112, 0.004),
    ringAt(0.49, 0.12, 0.085),
    ringAt(0.525, 0.062, 0.06),
  ]
  add(loft(jacket), wear.cloth, 0.14)
  const neck = (above: number, ahead: number): Vector3 =>
    joints.hips.clone().addScaledVector(joints.up, above).addScaledVector(joints.forward, ahead)
  add(limb([neck(0.49, 0), neck(0.58, 0.02)], [0.052, 0.05]), 'skin')
}

const helmetProfile = [
  [0.128, 0],
  [0.132, 0.012],
  [0.118, 0.02],
  [0.117, 0.05],
  [0.1, 0.095],
  [0.06, 0.122],
  [0, 0.13],
] as const

/** Egg, helmet with its brim, chin strap; a nod turns all of it. */
function head({ head: centre, up, right, forward }: Joints, nod: number, id: string, add: Add): readonly Wire[] {
  const turn = new Quaternion().setFromAxisAngle(right, nod)
  const headUp = up.clone().applyQuaternion(turn)
  const ahead = forward.clone().applyQuaternion(turn)
  const place = turnOf(right, headUp, ahead.clone().negate())
  const egg = at(ball(0.098, 14), [0, 0, 0], [0, 0, 0], [0.86, 1.15, 0.98])
    .applyQuaternion(place)
    .translate(...centre.toArray())
  add(egg, 'skin')
  const nose = at(ball(0.018, 8), [0, -0.012, -0.098], [0, 0, 0], [0.75, 1.25, 1])
    .applyQuaternion(place)
    .translate(...centre.toArray())
  add(nose, 'skin', 0.03, 60)
  const cap = centre.clone().addScaledVector(headUp, 0.028)
  const shell = at(lathe(helmetProfile, 18), [0, 0, 0], [0, 0, 0], [0.92, 1, 1.08])
    .applyQuaternion(place)
    .translate(...cap.toArray())
  add(shell, 'helmet', 0.1, 40)
  add(
    loft([peak(0), peak(0.01)].map((each) => each.map((point) => point.applyQuaternion(place).add(cap)))),
    'helmet',
    0.08,
    40,
  )
  const strap = (side: number, above: number, out: number): Vector3 =>
    centre.clone().addScaledVector(right, side).addScaledVector(headUp, above).addScaledVector(ahead, out)
  return [wire([strap(-0.085, 0.03, 0), strap(0, -0.1, 0.05), strap(0.085, 0.03, 0)], 0.004, 'strap', id, 0.6, 5)]
}

function armAndLeg(limbs: LimbJoints, { forward }: Joints, wear: Wear, add: Add): void {
  const sleeve = wear.sleeves === wear.cloth ? 0 : 0.012
  add(limb([limbs.shoulder, limbs.elbow, limbs.wrist], [0.062 + sleeve, 0.05 + sleeve, 0.042 + sleeve]), wear.sleeves)
  hand(limbs, forward, wear, add)
  add(limb([limbs.hip, limbs.knee, limbs.ankle], [0.088, 0.066, 0.052]), wear.trousers)
  add(boot(limbs.ankle, limbs.knee, forward), wear.boots, 0.09, 40)
  if (wear.hasOvershoes) add(overshoe(limbs, forward), 'rubber', 0.08, 40)
  if (wear.hasIrons) for (const piece of iron(limbs, forward)) add(piece, 'steel', 0.04)
}

/** Round the foot up to the ankle, a finger thicker than what is in it. */
function overshoe({ ankle, foot }: LimbJoints, forward: Vector3): BufferGeometry {
  const on = (ahead: number, above: number): Vector3 =>
    foot
      .clone()
      .addScaledVector(forward, ahead)
      .setY(foot.y + above)
  return limb(
    [ankle.clone().setY(ankle.y + 0.03), on(0.01, 0.055), on(0.12, 0.045), on(0.19, 0.035)],
    [0.064, 0.062, 0.052, 0.04],
  )
}

/** A shank along the inside of the shin, its stirrup under the foot and the gaff beside it. */
function iron({ knee, ankle, foot }: LimbJoints, forward: Vector3): readonly BufferGeometry[] {
  const inward = new Vector3(-forward.z, 0, forward.x).multiplyScalar(0.062)
  const low = foot
    .clone()
    .add(inward)
    .setY(foot.y + 0.02)
  const high = ankle.clone().lerp(knee, 0.8).add(inward)
  const gaff = ankle.clone().add(inward)
  const point = gaff
    .clone()
    .addScaledVector(inward, 0.6)
    .setY(gaff.y - 0.09)
  return [
    limb([low, high], [0.01, 0.01], 6),
    limb(
      [
        low,
        foot.clone().setY(foot.y - 0.002),
        foot
          .clone()
          .sub(inward)
          .setY(foot.y + 0.01),
      ],
      [0.009, 0.009, 0.009],
      6,
    ),
    limb([gaff, point], [0.012, 0.003], 6),
  ]
}

/** Cuff and palm, four fingers bent round what the hand ends on, and the thumb against them: a hand that holds. */
function hand(limbs: LimbJoints, forward: Vector3, wear: Wear, add: Add): void {
  const reach = new Vector3().subVectors(limbs.hand, limbs.wrist).normalize()
  const across = new Vector3().crossVectors(reach, forward)
  if (across.lengthSq() < 1e-3) across.set(1, 0, 0)
  across.normalize()
  const palmward = new Vector3().crossVectors(across, reach).normalize()
  const on = (along: number, aside = 0, out = 0): Vector3 =>
    limbs.wrist.clone().addScaledVector(reach, along).addScaledVector(across, aside).addScaledVector(palmward, out)
  const cuff = wear.gloves === 'skin' ? 0.03 : 0.13
  const thick = wear.gloves === 'skin' ? 0.036 : 0.055
  add(limb([on(-cuff), on(-0.01), on(0.045), on(0.075)], [thick, 0.04, 0.04, 0.032], 10), wear.gloves, 0.08)
  for (const aside of [-0.027, -0.009, 0.009, 0.027])
    add(
      limb(
        [on(0.07, aside), on(0.115, aside * 1.05, 0.008), on(0.118, aside, 0.042), on(0.088, aside, 0.056)],
        [0.0125, 0.012, 0.0115, 0.0105],
        6,
      ),
      wear.gloves,
      0.03,
      60,
    )
  add(
    limb([on(0.03, 0.034, 0.012), on(0.07, 0.036, 0.04), on(0.098, 0.014, 0.056)], [0.017, 0.014, 0.012], 6),
    wear.gloves,
    0.04,
    60,
  )
}

function harnessOn(joints: Joints, id: string, add: Add): readonly Wire[] {
  const { hips, up, right, forward } = joints
  const band = (above: number, tall: number, wide: number, deep: number, ahead = 0): void =>
    add(
      loft([section(joints, above, wide, deep, ahead), section(joints, above + tall, wide, deep, ahead)]),
      'strap',
      0.06,
      50,
    )
  band(0.03, 0.055, 0.178, 0.13)
  band(0.3, 0.03, 0.19, 0.133, 0.014)
  return [-1, 1].flatMap((side) => {
    const on = (above: number, ahead: number, out: number): Vector3 =>
      hips
        .clone()
        .addScaledVector(up, above)
        .addScaledVector(forward, ahead)
        .addScaledVector(right, side * out)
    add(
      at(ring(0.03, 0.006, 12), on(0.05, 0.02, 0.185).toArray() as unknown as Triple, [0, Math.PI / 2, 0]),
      'steel',
      0.05,
    )
    const over = soften([
      on(0.06, 0.135, 0.08),
      on(0.3, 0.15, 0.085),
      on(0.43, 0.118, 0.09),
      on(0.5, 0.02, 0.1),
      on(0.43, -0.118, 0.085),
      on(0.3, -0.13, 0.03),
      on(0.06, -0.13, 0.07),
    ])
    return [
      wire(over, 0.013, 'strap', id, 1, 6),
      wire(thighLoop(side < 0 ? joints.left : joints.rightLimb, right), 0.012, 'strap', id, 1, 5),
    ]
  })
}

function thighLoop({ hip, knee }: LimbJoints, right: Vector3): Vector3[] {
  const along = new Vector3().subVectors(knee, hip).normalize()
  const x = right.clone().addScaledVector(along, -right.dot(along)).normalize()
  const loop = ellipse(hip.clone().lerp(knee, 0.22), x, new Vector3().crossVectors(along, x), 0.09, 0.09, 14)
  return [...loop, loop[0]!.clone()]
}
