/** The crew as drawn: figures by stance and wear, straps, sticks with what is on their heads, boards and small gear in hand. */
import { Vector3 } from 'three'
import { at, box, strut, vector } from '../geometry/shapes'
import type { Slot } from '../ink/palette'
import { type Built, built, join, type Part, part, wire } from '../ink/part'
import { type HeldEnds, heldKey } from '../gear/leads'
import { type Layout, radiusAt } from '../site/layout'
import type { PersonPicture, SitePicture } from '../site/sitePicture'
import { figure, type Wear } from './figure'
import { inHand } from './inHand'
import type { Joints } from './posture'
import { type Stance, stanceOf, stickOf } from './stance'

export interface Crew {
  readonly built: Built
  readonly joints: ReadonlyMap<string, Joints>
}

const clothOf: Readonly<Record<PersonPicture['role'], Slot>> = {
  'person-in-charge': 'clothPale',
  'pole-worker': 'cloth',
  'ground-worker': 'clothEarth',
  'switching-operator': 'clothGreen',
}

export type Stances = ReadonlyMap<string, Stance>

export function stancesOf(layout: Layout, picture: SitePicture): Stances {
  const stances = new Map<string, Stance>()
  for (const person of picture.people) {
    const stance = stanceOf(layout, picture, person)
    if (stance) stances.set(person.id, stance)
  }
  return stances
}

export function crewView(layout: Layout, picture: SitePicture, stances: Stances): Crew {
  const joints = new Map<string, Joints>()
  const pieces = picture.people.flatMap((person): Built[] => {
    const stance = stances.get(person.id)
    if (!stance) return []
    const drawn = figure(stance.posture, wearOf(picture, person), person.id)
    joints.set(person.id, drawn.joints)
    return [
      built(drawn.parts, drawn.wires, [hitOf(person.id, drawn.joints)]),
      carried(layout, picture, person, stance, drawn.joints),
    ]
  })
  return { built: join(...pieces), joints }
}

/** Boots are orange only when they are the insulating ones. */
export function wearOf(picture: SitePicture, person: PersonPicture): Wear {
  const types = person.wears.map((item) => picture.typeOf[item])
  const isLeather = types.includes('work-gloves') || types.includes('leather-protectors')
  const isRubber = types.includes('lv-gloves') || types.includes('switching-gloves')
  return {
    hasHarness: types.includes('harness'),
    // What is outermost is seen.
    gloves: isLeather ? 'leather' : isRubber ? 'rubber' : 'skin',
    cloth: clothOf[person.role],
    sleeves: types.includes('sleeves') ? 'rubber' : clothOf[person.role],
    trousers: 'clothDark',
    boots: types.includes('boots') ? 'rubber' : 'rubberDark',
    hasOvershoes: types.includes('overshoes'),
    hasIrons: types.includes('climbing-irons'),
  }
}

export const hitOf = (id: string, { head, hips, left, rightLimb }: Joints) => ({
  id,
  segments: [
    [head, hips],
    [left.hip, left.ankle],
    [rightLimb.hip, rightLimb.ankle],
  ] as const,
  radius: 0.15,
})

function carried(layout: Layout, picture: SitePicture, person: PersonPicture, stance: Stance, joints: Joints): Built {
  const pieces: Built[] = []
  if (person.isStrapped && person.place.kind === 'pole') {
    const along = person.place.pole === 'next' ? (layout.place.nextPole?.along ?? 0) : 0
    pieces.push(strap(layout, person.id, joints, along))
  }
  pieces.push(wornHits(picture, person, joints))
  const stick = stickOf(picture, person)
  if (stance.stick && stick) pieces.push(stickView(stick, stance.stick, headOf(picture, person)))
  if (person.role === 'person-in-charge') pieces.push(built([board(joints, person.id)]))
  const small = person.holds.filter((item) => item !== stick && !picture.leads.some((lead) => lead.item === item))
  pieces.push(smallGear(picture, small, joints, person.doing !== null && person.place.kind === 'pole'))
  return join(...pieces)
}

/** The strap round the pole, from ring to ring. */
function strap(layout: Layout, id: string, { hips, right, up }: Joints, along: number): Built {
  const radius = radiusAt(layout, hips.y + 0.1) + 0.012
  const height = hips.y + 0.1
  const ringAt = (side: number): Vector3 =>
    hips
      .clone()
      .addScaledVector(right, side * 0.19)
      .addScaledVector(up, 0.05)
  const side = Math.sign(hips.z - along) || 1
  const round = [-1.05, -0.75, 0, 0.75, 1.05].map((turn) => {
    const angle = (turn * Math.PI) / 2
    return vector(
      Math.sin(angle) * radius * (Math.abs(turn) > 1 ? 1.02 : 1),
      height + 0.02,
      along - side * Math.cos(angle) * radius,
    )
  })
  const ends = right.x < 0 ? [ringAt(1), ringAt(-1)] : [ringAt(-1), ringAt(1)]
  return built([], [wire([ends[0]!, ...round, ends[1]!], 0.013, 'strap', id, 1.6)])
}

const heads: Readonly<Record<string, 'detector' | 'brush'>> = { 'hv-detector': 'detector', 'stick-brush': 'brush' }

function headOf(picture: SitePicture, person: PersonPicture): 'detector' | 'brush' | null {
  const using = person.doing?.with
  const item =
    using && heads[picture.typeOf[using] ?? ''] ? using : person.holds.find((held) => heads[picture.typeOf[held] ?? ''])
  return item ? (heads[picture.typeOf[item] ?? ''] ?? null) : null
}

/** Sections that thin toward the head, a hand guard, and the tool at the head. */
function stickView(
  item: string,
  { foot, head }: { foot: Vector3; head: Vector3 },
  tool: 'detector' | 'brush' | null,
): Built {
  const along = new Vector3().subVectors(head, foot)
  const length = along.length()
  along.normalize()
  const on = (metres: number): Vector3 => foot.clone().addScaledVector(along, metres)
  const parts: Part[] = []
  for (let k = 0; k < 3; k++) {
    const [from, to] = [(length * k) / 3, (length * (k + 1)) / 3]
    parts.push(part(strut(on(from), on(to), 0.019 - k * 0.0025, 0.019 - k * 0.0025, 10), 'fibreglass', item, 0.05))
    parts.push(
      part(
        strut(on(to - 0.05), on(Math.min(length, to + 0.02)), 0.024 - k * 0.0025, 0.024 - k * 0.0025, 10),
        'rubberDark',
        item,
        0.04,
      ),
    )
  }
  parts.push(part(strut(on(-0.03), on(0.03), 0.024, 0.024, 10), 'rubberDark', item, 0.04))
  parts.push(part(strut(on(length - 1.5), on(length - 1.47), 0.042, 0.042, 14), 'tape', item, 0.05))
  if (tool === 'detector')
    parts.push(
      part(strut(on(length - 0.02), on(length + 0.2), 0.04, 0.028, 12), 'white', item, 0.05),
      part(strut(on(length + 0.2), on(length + 0.27), 0.008, 0.004, 8), 'steel', item, 0.03),
    )
  if (tool === 'brush') parts.push(part(strut(on(length), on(length + 0.16), 0.026, 0.026, 12), 'leather', item, 0.03))
  return built(parts, [], [{ id: item, segments: [[foot, head]], radius: 0.03 }])
}

/** Gloves are picked at the hands, boots at the toes, sleeves at the forearm, irons at the shin: there the person is not in the way. */
function wornHits(picture: SitePicture, person: PersonPicture, { left, rightLimb, forward }: Joints): Built {
  const hits = person.wears.flatMap((item) => {
    const type = picture.typeOf[item] ?? ''
    if (/gloves/.test(type))
      return [left, rightLimb].map(({ wrist, hand }) => ({
        id: item,
        segments: [[wrist, hand]] as const,
        radius: 0.05,
      }))
    if (type === 'leather-protectors')
      return [left, rightLimb].map(({ hand }) => ({ id: item, segments: [[hand, hand]] as const, radius: 0.06 }))
    if (type === 'sleeves')
      return [left, rightLimb].map(({ elbow, wrist }) => ({
        id: item,
        segments: [[elbow, wrist]] as const,
        radius: 0.07,
      }))
    if (type === 'climbing-irons')
      return [left, rightLimb].map(({ ankle, knee }) => ({
        id: item,
        segments: [[ankle, ankle.clone().lerp(knee, 0.5)]] as const,
        radius: 0.09,
      }))
    if (type !== 'boots' && type !== 'overshoes') return []
    return [left, rightLimb].map(({ foot }) => {
      const toe = foot
        .clone()
        .addScaledVector(forward, 0.17)
        .setY(foot.y + 0.04)
      return { id: item, segments: [[toe, toe.clone().setY(foot.y + 0.07)]] as const, radius: 0.03 }
    })
  })
  return built([], [], hits)
}

/** The first two in the hands, the rest at the belt, all of it there while the hands work: each can be picked. */
function smallGear(
  picture: SitePicture,
  items: readonly string[],
  { left, rightLimb, hips, right, up, forward }: Joints,
  areHandsBusy: boolean,
): Built {
  const hands = areHandsBusy ? [] : [rightLimb.hand, left.hand]
  const pieces = items.map((item, index) => {
    const place =
      hands[index] ??
      hips
        .clone()
        .addScaledVector(right, 0.2 - 0.4 * (index % 2))
        .addScaledVector(up, -0.02 * index)
    const [from, to] = [place.clone().addScaledVector(up, -0.07), place.clone().addScaledVector(up, 0.09)]
    const shown = inHand(picture.typeOf[item] ?? '', item, place, forward) ?? [
      part(strut(from, to, 0.028, 0.024, 8), 'rubberDark', item, 0.04),
    ]
    // Before the glove that holds it.
    return built(shown, [], [{ id: item, segments: [[from, to]] as const, radius: 0.075 }])
  })
  return join(...pieces)
}

/** The checklist on its board, in both hands. */
function board({ left, rightLimb, forward }: Joints, id: string): Part {
  const middle = left.hand.clone().add(rightLimb.hand).multiplyScalar(0.5).addScaledVector(forward, 0.04)
  const turn = Math.atan2(forward.x, forward.z)
  const sheet = at(box(0.24, 0.32, 0.012), [0, 0, 0], [-0.9, 0, 0])
    .rotateY(turn)
    .translate(middle.x, middle.y + 0.04, middle.z)
  return part(sheet, 'plate', id, 0.12)
}

/** Ends of leads that a stick or a hand carries just now. */
export function heldEnds(picture: SitePicture, stances: Stances): HeldEnds {
  const held = new Map<string, Vector3>()
  for (const person of picture.people) {
    const { doing } = person
    const stance = stances.get(person.id)
    if (!doing || !stance || !/^(clamp|bond-line|bond-metal|clamp-by-hand)$/.test(doing.act)) continue
    const lead = picture.leads.find((it) => it.item === doing.with) ?? picture.leads.find((it) => it.isAloft)
    const free = lead?.ends.find((end) => end.on === null && end.end !== 'earth')
    if (!lead || !free) continue
    const place = stance.stick?.head ?? stance.posture.rightHand
    held.set(heldKey(lead.item, free.end), place)
  }
  return held
}
