/**
 * How each person stands from where they are and what they do: the stations of the pole, standing, kneeling at a rod,
 * a hand on the thing, a stick toward it. What is not told is stood still.
 */
import { Vector3 } from 'three'
import type { GroundPoint, ItemId } from '../../../engine'
import { bucketFloor } from '../gear/boom'
import { vector } from '../geometry/shapes'
import { climbSide, hvHeight, type Layout, lvHeight, radiusAt, toScene } from '../site/layout'
import type { PersonPicture, SitePicture } from '../site/sitePicture'
import type { Posture } from './posture'

export interface Stance {
  readonly posture: Posture
  /** Stick in the hands: its foot and its head. */
  readonly stick: { readonly foot: Vector3; readonly head: Vector3 } | null
}

const stickLength = 3
const kneeling = new Set([
  'drive-rod',
  'pull-rod',
  'clamp-earth-end',
  'unclamp-earth-end',
  'locate-services',
  'set-barrier',
  'tie-on',
])
const byStick = new Set(['test', 'brush', 'clamp', 'tug', 'tighten', 'unclamp', 'bond-line', 'unbond-line'])

export function stanceOf(layout: Layout, picture: SitePicture, person: PersonPicture): Stance | null {
  const { place } = person
  if (place.kind === 'switch') return null
  if (place.kind === 'bucket') return inBucket(layout, picture, person)
  const along = place.kind === 'pole' && place.pole === 'next' ? (layout.place.nextPole?.along ?? 0) : 0
  if (place.kind === 'pole' && place.station !== 'foot') {
    const stance = aloft(layout, picture, atFirstPole(person), layout.pole.feetAt[place.station])
    return along === 0 ? stance : moved(stance, along)
  }
  const at = place.kind === 'ground' ? apart(place.at, picture, person) : { x: along - 0.15, y: 0.62 }
  return onGround(layout, picture, person, at)
}

/** What is done on the next pole looks like the same on the first. */
const atFirstPole = (person: PersonPicture): PersonPicture =>
  person.doing?.on?.endsWith('@next')
    ? { ...person, doing: { ...person.doing, on: person.doing.on.slice(0, -'@next'.length) } }
    : person

function moved({ posture, stick }: Stance, along: number): Stance {
  const on = (point: Vector3): Vector3 => point.clone().setZ(point.z + along)
  const { hips, leftHand, rightHand, leftFoot, rightFoot } = posture
  return {
    posture: {
      ...posture,
      hips: on(hips),
      leftHand: on(leftHand),
      rightHand: on(rightHand),
      leftFoot: on(leftFoot),
      rightFoot: on(rightFoot),
    },
    stick: stick && { foot: on(stick.foot), head: on(stick.head) },
  }
}

/** Two people who were sent to the same spot stand beside each other; nobody stands on a rod. */
function apart(at: GroundPoint, picture: SitePicture, person: PersonPicture): GroundPoint {
  const before = picture.people
    .slice(0, picture.people.indexOf(person))
    .filter(({ place }) => place.kind === 'ground' && Math.hypot(place.at.x - at.x, place.at.y - at.y) < 0.5).length
  const isAtRod =
    picture.rods.some((rod) => Math.hypot(rod.at.x - at.x, rod.at.y - at.y) < 0.4) || person.doing?.act === 'drive-rod'
  const out = Math.hypot(at.x, at.y) || 1
  const back = isAtRod ? 0.62 : 0
  const angle = before * 2.2
  const beside = before === 0 ? 0 : 0.75
  return {
    x: at.x + (at.x / out) * back + beside * Math.cos(angle),
    y: at.y + (at.y / out) * back + beside * Math.sin(angle),
  }
}

export const isBelowLv = ({ place }: PersonPicture): boolean => place.kind === 'pole' && place.station === 'below-lv'

const yawTo = (from: Vector3, to: Vector3): number => Math.atan2(from.x - to.x, from.z - to.z)

/** Ahead of and beside a person who faces so. */
const facing = (yaw: number) => ({
  forward: vector(-Math.sin(yaw), 0, -Math.cos(yaw)),
  right: vector(Math.cos(yaw), 0, -Math.sin(yaw)),
})

/** Where a thing is held, seen or aimed at; undefined when it has no place on this site. */
function placeOf(layout: Layout, picture: SitePicture, thing: string): Vector3 | undefined {
  const conductor = layout.conductors.find((it) => it.id === thing)
  if (conductor) return vector(conductor.across, hvHeight(conductor, -0.2), -0.2)
  const lv = layout.lv.find((it) => it.id === thing)
  if (lv) return vector(lv.across, lvHeight(lv, -0.4), -0.4)
  const rod = picture.rods.find((it) => `rod/${it.item}` === thing)
  if (rod) return toScene(rod.at, 0.3)
  if (thing === 'arm') return vector(0.28, layout.arm.height, layout.arm.along - 0.05)
  if (thing === 'pole' || thing === 'pole-top') return vector(0, layout.pole.top - 0.6, 0)
  if (thing === 'cover' || thing.startsWith('C-')) return vector(0, picture.cover?.to ?? 7.6, 0)
  if (thing === 'truck') return toScene(picture.truck, 1.2)
  if (thing === 'stay' && layout.stay) return layout.stay.anchor.clone().setY(0.5)
  return undefined
}

/** The stick in the hands: held, or taken from where it hangs for an act that needs it. */
export function stickOf(picture: SitePicture, person: PersonPicture): ItemId | undefined {
  const isStick = (item: ItemId): boolean => picture.typeOf[item] === 'operating-stick'
  const held = person.holds.find(isStick)
  if (held || person.place.kind !== 'pole' || !byStick.has(person.doing?.act ?? '')) return held
  return picture.typeOf[person.doing?.with ?? ''] === 'lv-tester' ? undefined : picture.aloft.find(isStick)
}

const holdsStick = (picture: SitePicture, person: PersonPicture): boolean => stickOf(picture, person) !== undefined

function onGround(layout: Layout, picture: SitePicture, person: PersonPicture, at: GroundPoint): Stance {
  const spot = toScene(at)
  const target = person.doing?.on ? placeOf(layout, picture, person.doing.on) : undefined
  const yaw = yawTo(spot, target && target.distanceTo(spot) > 0.3 ? target : vector(0, 0, 0))
  const { forward, right } = facing(yaw)
  const on = (ahead: number, aside: number, up: number): Vector3 =>
    spot.clone().addScaledVector(forward, ahead).addScaledVector(right, aside).setY(up)
  const act = person.doing?.act ?? ''
  if (kneeling.has(act)) return { posture: kneel(on, yaw, target), stick: null }
  const feet =
    act === 'walk' || act === 'lay-lead'
      ? { left: on(0.28, -0.1, 0), right: on(-0.28, 0.1, 0) }
      : { left: on(0.05, -0.12, 0), right: on(-0.03, 0.12, 0) }
  const isWatching = person.role === 'person-in-charge' || act === 'check-from-ground' || act === 'watch'
  const hands = isWatching
    ? { left: on(0.3, -0.1, 1.16), right: on(0.31, 0.07, 1.12) }
    : { left: on(0.1, -0.27, 0.82), right: on(0.1, 0.27, 0.82) }
  if (act === 'hold-lead') hands.right = on(0.4, 0.1, 1.2)
  const hips = spot.clone().setY(act === 'walk' ? 0.88 : 0.925)
  const posture = {
    hips,
    yaw,
    lean: 0.03,
    side: 0,
    head: isWatching || target ? 0.25 : 0.1,
    ...handsAndFeet(hands, feet),
  }
  if (!holdsStick(picture, person)) return { posture, stick: null }
  const foot = on(0.32, 0.3, 0.05)
  const head = foot.clone().add(vector(0, stickLength, 0))
  return { posture: { ...posture, rightHand: foot.clone().lerp(head, 0.4) }, stick: { foot, head } }
}

const handsAndFeet = (hands: { left: Vector3; right: Vector3 }, feet: { left: Vector3; right: Vector3 }) => ({
  leftHand: hands.left,
  rightHand: hands.right,
  leftFoot: feet.left,
  rightFoot: feet.right,
})

type Placing = (ahead: number, aside: number, up: number) => Vector3

function kneel(on: Placing, yaw: number, target: Vector3 | undefined): Posture {
  const work = target && target.distanceTo(on(0, 0, 0.3)) < 0.9 ? target : on(0.55, 0, 0.25)
  return {
    hips: on(-0.15, 0, 0.56),
    yaw,
    lean: 0.5,
    side: 0,
    head: -0.1,
    leftHand: work.clone().add(vector(0, 0.1, 0)),
    rightHand: work.clone().add(vector(0, -0.02, 0)),
    leftFoot: on(0.22, -0.13, 0),
    rightFoot: on(-0.42, 0.13, 0),
  }
}

/** On the step bolts of the west side, on irons where there are none; belt round the pole, one leg on each side of the LV wires beside it. */
function aloft(layout: Layout, picture: SitePicture, person: PersonPicture, feet: number): Stance {
  const yaw = climbSide < 0 ? Math.PI : 0
  const foot = (side: number): Vector3 => {
    const bolts = layout.stepBolts.filter((bolt) => Math.sign(bolt.across) === side)
    const [nearest] = bolts.toSorted((a, b) => Math.abs(a.height - feet) - Math.abs(b.height - feet))
    return vector(side * 0.19, nearest?.height ?? feet, climbSide * 0.06)
  }
  const [left, right] = [foot(1), foot(-1)] // facing east, the left hand is to the north
  const target = person.doing?.on ? placeOf(layout, picture, person.doing.on) : undefined
  const lowest = Math.min(left.y, right.y)
  const back = radiusAt(layout, lowest + 1) + 0.29
  const reachAside = target ? Math.max(-1, Math.min(1, target.x / 0.7)) : 0
  const hips = vector(reachAside * 0.12, lowest + 0.9, climbSide * back)
  const grip = (side: number): Vector3 =>
    vector(side * (radiusAt(layout, hips.y + 0.35) + 0.01), hips.y + 0.38, climbSide * 0.04)
  const base = { hips, yaw, lean: -0.06, side: 0, head: 0.2, leftFoot: left, rightFoot: right }
  if (holdsStick(picture, person)) {
    const isAiming = target !== undefined && byStick.has(person.doing?.act ?? '')
    const aim = isAiming ? target : vector(-0.42, hips.y + 1.75, climbSide * (back - 0.05))
    return stickAloft(base, aim, isAiming)
  }
  if (!target) return { posture: { ...base, leftHand: grip(1), rightHand: grip(-1) }, stick: null }
  const isNorth = target.x >= 0
  const near = target.clone().setZ(Math.min(target.z, 0))
  const leaning = { ...base, side: -reachAside * 0.3 }
  // The left hand takes what lies overhead in the middle; the other holds the pole.
  const isLeft = isNorth || Math.abs(target.x) < 0.1
  return {
    posture: { ...leaning, leftHand: isLeft ? near : grip(1), rightHand: isLeft ? grip(-1) : near },
    stick: null,
  }
}

/** Both feet on the bucket's floor, one hand on its rim unless both have work. */
function inBucket(layout: Layout, picture: SitePicture, person: PersonPicture): Stance {
  const floor = bucketFloor(picture)
  const target = person.doing?.on ? placeOf(layout, picture, person.doing.on) : undefined
  const yaw = yawTo(floor, target ?? vector(0, 0, 0.2))
  const { forward, right } = facing(yaw)
  const on = (ahead: number, aside: number, up: number): Vector3 =>
    floor
      .clone()
      .addScaledVector(forward, ahead)
      .addScaledVector(right, aside)
      .setY(floor.y + up)
  const base = {
    hips: on(0.04, 0, 0.925),
    yaw,
    lean: target ? 0.12 : 0.02,
    side: 0,
    head: target ? 0.15 : 0,
    leftFoot: on(0.03, -0.12, 0),
    rightFoot: on(-0.03, 0.12, 0),
  }
  if (holdsStick(picture, person)) {
    const isAiming = target !== undefined && byStick.has(person.doing?.act ?? '')
    const low = on(0.28, 0.14, 1.2)
    const aim = isAiming ? target : low.clone().add(vector(0, 2, 0))
    const along = new Vector3().subVectors(aim, low).normalize()
    const head = isAiming ? aim : low.clone().addScaledVector(along, 1.7)
    const hands = { leftHand: low.clone().addScaledVector(along, 0.36), rightHand: low }
    return { posture: { ...base, ...hands }, stick: { foot: head.clone().addScaledVector(along, -stickLength), head } }
  }
  const rim = on(0.34, -0.24, 1.09)
  const near = target && target.distanceTo(on(0.1, 0.1, 1.4)) < 0.75 ? target : on(0.34, 0.24, 1.09)
  return { posture: { ...base, leftHand: rim, rightHand: near }, stick: null }
}

/** Both hands on the stick before the chest; its tail passes beside the body. */
function stickAloft(base: Omit<Posture, 'leftHand' | 'rightHand'>, aim: Vector3, isAiming: boolean): Stance {
  const aside = aim.x >= 0 ? -1 : 1
  const low = base.hips.clone().add(vector(isAiming ? aside * 0.16 : -0.3, 0.22, -climbSide * 0.2))
  const along = new Vector3().subVectors(aim, low).normalize()
  const head = isAiming ? aim : low.clone().addScaledVector(along, 1.7)
  const foot = head.clone().addScaledVector(along, -stickLength)
  const high = low.clone().addScaledVector(along, 0.36)
  const hands = aside > 0 ? { leftHand: low, rightHand: high } : { leftHand: high, rightHand: low }
  return { posture: { ...base, ...hands }, stick: { foot, head } }
}
