/** What labels keep clear of, and what they can be behind. */
import { Vector3 } from 'three'
import { bedside } from '../gear/truck'
import { toScene } from '../site/layout'
import type { SiteState } from '../site/useSite'
import type { Clear } from './labelLayer'
import type { Solid } from './solid'

/** What no label may lie on: clamps and hands, bodies, and the heads of rods. */
export function clearOf({ routes, joints, picture }: SiteState): readonly Clear[] {
  const clamps = routes.flatMap(({ seats }) => seats.filter((it) => it.isClamp).map(({ seat }) => seat))
  const people = [...joints.values()]
  const hands = people.flatMap(({ left, rightLimb }) => [left.wrist, rightLimb.wrist])
  return [
    ...clamps.map((seat) => ({ at: seat.clone().setY(seat.y - 0.1), radius: 0.13 })),
    ...hands.map((at) => ({ at, radius: 0.1 })),
    ...people.flatMap(({ chest, hips }) => [chest, hips].map((at) => ({ at, radius: 0.17 }))),
    ...picture.rods.map((rod) => ({ at: toScene(rod.at, 0.2), radius: 0.2 })),
  ]
}

/** What hides a label that is behind it. */
export function solidsOf({ layout, joints, picture }: SiteState): readonly Solid[] {
  const truck = toScene(picture.truck, 1.2).setX(picture.truck.y + bedside)
  const [front, back] = [2.6, -3].map((along) => truck.clone().setZ(truck.z + along))
  const leg = (foot: Vector3): Solid => ({ from: foot, to: foot.clone().setY(layout.pole.top), radius: 0.12 })
  return [
    leg(new Vector3()),
    ...(layout.secondLeg ? [leg(layout.secondLeg)] : []),
    { from: front!, to: back!, radius: 1 },
    ...[...joints.values()].map(({ hips, head }) => ({ from: hips, to: head, radius: 0.2 })),
  ]
}
