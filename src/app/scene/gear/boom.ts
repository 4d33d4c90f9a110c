/** The insulated boom of the truck: folded over its bed, or up with somebody in the bucket beside the pole's top; pads of the outriggers. */
import { Vector3 } from 'three'
import { at, box, cylinder, strut, vector } from '../geometry/shapes'
import { type Built, built, type Part, part } from '../ink/part'
import { type Layout, toScene } from '../site/layout'
import type { SitePicture } from '../site/sitePicture'
import { markAt } from './laidMarks'
import { bedside } from './truck'

/** Where the bucket's floor is: up where the crew moved it, else home over the bed. */
export function bucketFloor({ bucket, truck }: SitePicture): Vector3 {
  if (bucket) return toScene(bucket.at, bucket.height)
  const stands = toScene(truck)
  return vector(stands.x + bedside, 2.35, stands.z + 3.1)
}

const turret = { above: 1.25, behind: -3.6 } as const

export function boomView(layout: Layout, picture: SitePicture): Built {
  const { truck } = layout.place
  if (!truck) return built([])
  const stands = toScene(picture.truck)
  const pads = (picture.isOnPads ? truck.outriggers : []).flatMap((pad): Part[] => {
    const foot = toScene({ x: picture.truck.x + pad.x, y: picture.truck.y + pad.y })
    const chassis = vector(stands.x + bedside, 0.75, foot.z)
    const knee = vector(foot.x, 0.7, foot.z)
    return [
      part(at(cylinder(pad.radius, pad.radius + 0.03, 0.06, 16), [foot.x, 0.03, foot.z]), 'steel', 'truck', 0.12),
      part(strut(vector(foot.x, 0.05, foot.z), knee, 0.045, 0.055, 10), 'steel', 'truck', 0.08),
      part(strut(knee, chassis, 0.06, 0.07, 8), 'steel', 'truck', 0.08),
    ]
  })
  const rim = bucketFloor(picture).add(vector(0, 0.5, 0))
  const hits = truck.hasBoom ? [{ id: 'bucket', segments: [[rim, rim]] as const, radius: 0.45 }] : []
  return built([...pads, ...(truck.hasBoom ? boom(picture, stands) : [])], [], hits)
}

function boom(picture: SitePicture, stands: Vector3): readonly Part[] {
  const isUp = picture.bucket !== null
  const base = vector(stands.x + bedside, turret.above, stands.z + 1.6 + turret.behind)
  const shoulder = base.clone().setY(2.15)
  const floor = bucketFloor(picture)
  const wrist = floor.clone().add(isUp ? vector(0.42, 0.35, -0.2) : vector(0, 0.3, -0.45))
  const elbow = isUp
    ? shoulder
        .clone()
        .lerp(wrist, 0.42)
        .setY(Math.max(shoulder.y, wrist.y) * 0.62 + 2.6)
    : vector(base.x, 2.75, base.z - 1.3)
  const upper = new Vector3().subVectors(wrist, elbow)
  const shared = elbow.clone().addScaledVector(upper, 0.35)
  return [
    part(at(cylinder(0.3, 0.34, 0.9, 16), [base.x, 1.7, base.z]), 'truck', 'truck', 0.15),
    part(strut(shoulder, elbow, 0.13, 0.11, 8), 'truck', 'truck', 0.12),
    part(strut(elbow, shared, 0.11, 0.1, 8), 'truck', 'truck', 0.12),
    // The insulating part is glass fibre, and looks it.
    part(strut(shared, wrist, 0.085, 0.07, 12), 'fibreglass', 'truck', 0.12),
    part(
      at(cylinder(0.15, 0.15, 0.3, 12), elbow.toArray() as [number, number, number], [Math.PI / 2, 0, 0]),
      'steel',
      'truck',
      0.1,
    ),
    ...bucket(floor),
    ...boomMarks(picture, {
      liner: floor.clone().add(vector(-0.4, 0.6, 0)),
      boom: shared.clone().lerp(wrist, 0.4),
      reel: base,
    }),
  ]
}

/** What looks at boom and bucket told, where it is. */
function boomMarks(
  { typeOf, found }: SitePicture,
  at: Readonly<Record<'liner' | 'boom' | 'reel', Vector3>>,
): readonly Part[] {
  const item = Object.keys(typeOf).find((id) => typeOf[id] === 'bucket-boom')
  if (item === undefined) return []
  return (found[item] ?? []).flatMap((finding) => {
    const place = finding.includes('liner') ? at.liner : finding.includes('boom') ? at.boom : at.reel
    return markAt(finding, place.clone().add(vector(-0.02, 0, 0)), item)
  })
}

/** Open on top: floor and four walls, a lip round its rim. */
function bucket(floor: Vector3): readonly Part[] {
  const [wide, tall] = [0.36, 1.05]
  const wall = (x: number, z: number): Part =>
    part(
      at(box(x === 0 ? wide * 2 : 0.04, tall, z === 0 ? wide * 2 : 0.04), [
        floor.x + x,
        floor.y + tall / 2,
        floor.z + z,
      ]),
      'fibreglass',
      'bucket',
      0.2,
    )
  const lip = (x: number, z: number): Part =>
    part(
      at(box(x === 0 ? wide * 2 + 0.1 : 0.08, 0.05, z === 0 ? wide * 2 + 0.1 : 0.08), [
        floor.x + x,
        floor.y + tall,
        floor.z + z,
      ]),
      'fibreglass',
      'bucket',
      0.08,
    )
  const sides = [
    [wide, 0],
    [-wide, 0],
    [0, wide],
    [0, -wide],
  ] as const
  return [
    part(at(box(wide * 2, 0.04, wide * 2), [floor.x, floor.y - 0.02, floor.z]), 'fibreglass', 'bucket', 0.2),
    ...sides.map(([x, z]) => wall(x, z)),
    ...sides.map(([x, z]) => lip(x, z)),
  ]
}
