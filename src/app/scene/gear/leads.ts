/** Earthing leads and bonds as they hang: where each end sits, the cable between, and what one picks them by. */
import type { Vector3 } from 'three'
import { hangLead, type Post, soften } from '../geometry/curves'
import { at, box, vector } from '../geometry/shapes'
import { type Built, built, hitAlong, type Part, part, wire } from '../ink/part'
import { clampAlong, hvHeight, type Layout, lvHeight, radiusAt, type Support, toScene } from '../site/layout'
import type { LeadEnd, LeadPicture, SitePicture } from '../site/sitePicture'
import { clampTail, screwClamp } from './clamp'
import { rodClampHeight } from './rod'

export interface LeadSection {
  readonly from: string
  readonly to: string
  readonly points: readonly Vector3[]
}

export interface LeadRoute {
  readonly lead: LeadPicture
  /** Seat of each clamp, in order of the ends; where the cable leaves it. */
  readonly seats: readonly {
    readonly end: LeadEnd
    readonly seat: Vector3
    readonly tail: Vector3
    readonly isClamp: boolean
  }[]
  readonly sections: readonly LeadSection[]
  /** Where its tails meet. */
  readonly hub?: Vector3
}

/** Points that carry a free end now: the head of a stick, a hand. By `item` and `end`. */
export type HeldEnds = ReadonlyMap<string, Vector3>
export const heldKey = (item: string, end: string): string => `${item}:${end}`

const coilCentre = vector(0.75, 0.02, 1.1)
const cableRadius = 0.011

export function routeLead(layout: Layout, picture: SitePicture, lead: LeadPicture, held: HeldEnds): LeadRoute {
  const seats = lead.ends.map((end, index) => seatOf(layout, picture, lead, end, index, held))
  if (lead.hub !== null) return routeTails(layout, lead, lead.hub, seats)
  const sections = seats.slice(1).map((to, index): LeadSection => {
    const from = seats[index]!
    return {
      from: from.end.end,
      to: to.end.end,
      points: cable(layout, from.tail, to.tail, lead.lengths[index] ?? 1.5, index, lead.route),
    }
  })
  return { lead, seats, sections }
}

/** From the first end to the hub, and a tail from there to each other end. */
function routeTails(layout: Layout, lead: LeadPicture, name: string, seats: LeadRoute['seats']): LeadRoute {
  const others = seats.slice(lead.ends[0]?.end === 'earth' ? 1 : 0)
  const closed = others.filter(({ end }) => end.on !== null)
  const tails = (closed.length > 0 ? closed : others).map((it) => it.tail)
  const low = Math.min(...tails.map((it) => it.y))
  const hub = tails
    .reduce((sum, it) => sum.add(it), vector(0, 0, 0))
    .divideScalar(tails.length)
    .setY(Math.max(0.06, low - 0.5 * (lead.lengths[1] ?? 1)))
  // What is on nothing yet hangs from the hub, beside the others.
  const hung = seats.map((it, index) => {
    if (it.end.on !== null || closed.length === 0 || it.end.end === 'earth') return it
    const seat = hub.clone().add(vector(0.05 + 0.07 * index, -0.25, 0.04 * index))
    return { ...it, seat, tail: clampTail(seat) }
  })
  const sections = hung.map(({ end, tail }, index): LeadSection => {
    const [from, to] = index === 0 ? [tail, hub] : [hub, tail]
    const length = lead.lengths[index] ?? 1.5
    const points = cable(layout, from, to, Math.max(length, from.distanceTo(to)), index, lead.route)
    return index === 0 ? { from: end.end, to: name, points } : { from: name, to: end.end, points }
  })
  return { lead, seats: hung, sections, hub }
}

function seatOf(
  layout: Layout,
  picture: SitePicture,
  lead: LeadPicture,
  end: LeadEnd,
  index: number,
  held: HeldEnds,
): LeadRoute['seats'][number] {
  const carried = held.get(heldKey(lead.item, end.end))
  if (carried) return { end, seat: carried, tail: clampTail(carried), isClamp: end.end !== 'earth' }
  const seat = end.on === null ? freeEnd(lead, index, layout) : seatOn(layout, picture, lead, end.on)
  if (end.end === 'earth') return { end, seat, tail: seat, isClamp: false }
  return { end, seat, tail: clampTail(seat), isClamp: true }
}

/** Where the clamp that is closed, or being closed, on a thing sits. */
export function clampSeat(
  layout: Layout,
  picture: SitePicture,
  routes: readonly LeadRoute[],
  on: string,
): Vector3 | undefined {
  const closed = routes.flatMap(({ seats }) => seats).find(({ end }) => end.on === on)
  if (closed) return closed.seat
  const wireOf = layout.conductors.find((it) => it.id === wireName(on))
  if (wireOf) return onWire(layout, wireOf, on, clampAlong)
  const rod = picture.rods.find((it) => `rod/${it.item}` === on)
  if (rod) return toScene(rod.at, rodClampHeight(rod))
  return on === 'arm' ? vector(0.3, layout.arm.height + 0.02, layout.arm.along + 0.03) : undefined
}

/** Either end of a conductor that a jumper carries past the pole. */
const wireName = (on: string): string => on.replace(/\/far$/, '')

/** The near end of a conductor with a jumper lies on this side of the pole, as far off as the other. */
function onWire(layout: Layout, wireOf: Support, on: string, along: number): Vector3 {
  const side = on === wireOf.id && layout.place.jumpers.includes(on) ? -along : along
  return vector(wireOf.across, hvHeight(wireOf, side), side)
}

function seatOn(layout: Layout, picture: SitePicture, lead: LeadPicture, on: string): Vector3 {
  if (on.endsWith('@next')) {
    const seat = seatOn(layout, picture, lead, on.slice(0, -'@next'.length))
    return seat.setZ(seat.z + (layout.place.nextPole?.along ?? 0))
  }
  if (on === 'truck') return toScene(picture.truck, 0.6)
  const conductor = layout.conductors.find((it) => it.id === wireName(on))
  const shift = picture.leads.findIndex((it) => it.item === lead.item) * 0.16 + (lead.isBond ? -0.35 : 0)
  const along = clampAlong + shift
  if (conductor) return onWire(layout, conductor, on, along)
  const lv = layout.lv.find((it) => it.id === on)
  if (lv) return vector(lv.across, lvHeight(lv, along), along)
  const rod = picture.rods.find((it) => `rod/${it.item}` === on)
  if (rod) return toScene(rod.at, rodClampHeight(rod))
  // The arm, a bolt of it: the flat side takes the jaw.
  return vector(0.3, layout.arm.height + 0.02, layout.arm.along + 0.03)
}

/** A free end hangs under the arm when the lead was hauled up, else it lies with its coil at the foot of the pole. */
function freeEnd(lead: LeadPicture, index: number, layout: Layout): Vector3 {
  if (lead.isAloft && index > 0) return vector(0.34 + 0.13 * index, layout.arm.height - 0.12, layout.arm.along + 0.04)
  if (index === 0) return coilCentre.clone().add(vector(0.35, 0.02, 0.2))
  const angle = index * 1.3
  return coilCentre.clone().add(vector(Math.cos(angle) * 0.3, 0.06, Math.sin(angle) * 0.3))
}

function cable(
  layout: Layout,
  a: Vector3,
  b: Vector3,
  length: number,
  index: number,
  route: LeadPicture['route'],
): Vector3[] {
  const isDown = Math.abs(a.y - b.y) > 3
  const middle = a.clone().add(b).multiplyScalar(0.5)
  if (!isDown) {
    if (a.y < 1) return soften([a, vector(a.x * 0.7 + b.x * 0.3, 0.012, a.z * 0.7 + b.z * 0.3), ...coil(index), b], 2)
    const drop = Math.max(0.1, (length - a.distanceTo(b)) * 0.45)
    return soften(hangLead(a, b, length, { pieces: 22, via: [middle.setY(Math.min(a.y, b.y) - drop)] }), 1)
  }
  const [low, high] = a.y < b.y ? [a, b] : [b, a]
  const post: Post = { x: 0, z: 0, radius: radiusAt(layout, 4) + 0.03, from: 0, to: layout.pole.top }
  if (route === 'over-lv' && layout.lv.length > 0) {
    const fallen = overLv(layout, high, low, length, post)
    return low === a ? fallen.reverse() : fallen
  }
  const foot = vector(high.x * 1.1, 0.02, high.z + 0.25)
  if (route === 'coiled') {
    const fallen = coiledAtFoot(high, foot, low, length)
    return low === a ? fallen.reverse() : fallen
  }
  const via = [
    vector(high.x * 1.05, high.y * 0.5, high.z + 0.12),
    foot,
    ...slackBend(foot, low, length - high.y * 1.02),
  ]
  const fallen = soften(hangLead(high, low, length, { pieces: 56, via, posts: [post] }), 1)
  return low === a ? fallen.reverse() : fallen
}

/** Hangs from the conductor onto the LV wire that is in its way, lies on it, and falls from there. */
function overLv(layout: Layout, high: Vector3, low: Vector3, length: number, post: Post): Vector3[] {
  const side = high.x < 0 ? -1 : 1
  const inWay = layout.lv.reduce((best, it) =>
    Math.abs(it.across - side * 0.5) < Math.abs(best.across - side * 0.5) ? it : best,
  )
  const along = high.z + 0.1
  const rest = vector(inWay.across, lvHeight(inWay, along) + cableRadius + 0.008, along)
  const upper = high.distanceTo(rest) * 1.06
  const off = vector(rest.x - side * 0.3, rest.y * 0.5, along + 0.05)
  const foot = vector(off.x, 0.02, along + 0.2)
  const left = Math.max(length - upper, rest.distanceTo(low) * 1.02)
  const lower = hangLead(rest, low, left, {
    pieces: 44,
    via: [off, foot, ...slackBend(foot, low, left - rest.y * 1.02)],
    posts: [post],
  })
  return soften([...hangLead(high, rest, upper, { pieces: 14 }), ...lower.slice(1)], 1)
}

/** What is left over lies in rings at the foot of the pole: as many as its length makes. */
function coiledAtFoot(high: Vector3, foot: Vector3, low: Vector3, length: number): Vector3[] {
  const radius = 0.3
  const straight = high.distanceTo(foot) + foot.distanceTo(low)
  const turns = Math.max(1, Math.min(5, Math.round((length - straight) / (2 * Math.PI * radius))))
  const rings = Array.from({ length: turns * 12 + 1 }, (_, i) => {
    const angle = (i / 12) * Math.PI * 2
    const lift = cableRadius + Math.floor(i / 12) * 2 * cableRadius
    return foot.clone().add(vector(radius - Math.cos(angle) * radius, lift, Math.sin(angle) * radius))
  })
  const down = hangLead(high, rings[0]!, high.distanceTo(rings[0]!) * 1.01, { pieces: 24 })
  const ground = vector((foot.x + low.x) / 2, cableRadius, (foot.z + low.z) / 2 + 0.15)
  return soften([...down, ...rings.slice(1), ground, low], 1)
}

/** What is left over lies beside the straight way, bent out as far as its length asks. */
function slackBend(from: Vector3, to: Vector3, length: number): Vector3[] {
  const straight = Math.hypot(to.x - from.x, to.z - from.z)
  const half = Math.max(straight, Math.min(length, straight + 2.5)) / 2
  const out = Math.min(1.3, Math.sqrt(Math.max(0, half * half - (straight * straight) / 4)))
  const [ax, az] = [(to.x - from.x) / (straight || 1), (to.z - from.z) / (straight || 1)]
  return [1, 2, 3, 4, 5].map((sixth) => {
    const aside = out * Math.sin((sixth * Math.PI) / 6)
    const place = from.clone().lerp(to, sixth / 6)
    return vector(place.x - az * aside, 0.02, place.z + ax * aside)
  })
}

const coil = (index: number): Vector3[] =>
  index > 0
    ? []
    : Array.from({ length: 34 }, (_, i) => {
        const angle = i * 0.5
        return coilCentre
          .clone()
          .add(
            vector(Math.cos(angle) * (0.3 - i * 0.001), Math.floor(i / 12) * 0.02, Math.sin(angle) * (0.3 - i * 0.001)),
          )
      })

function hubAt(hub: Vector3 | undefined, item: string): readonly Part[] {
  return hub ? [part(at(box(0.07, 0.1, 0.05), [hub.x, hub.y, hub.z]), 'copper', item, 0.05)] : []
}

export function leadView(route: LeadRoute): Built {
  const { item } = route.lead
  const clamps = route.seats.filter((it) => it.isClamp)
  return built(
    [
      ...clamps.flatMap(({ seat, end }) => screwClamp(seat, item, end.on === null ? 0 : end.turns)),
      ...hubAt(route.hub, item),
    ],
    route.sections.map(({ points }) => wire(points, cableRadius, 'lead', item, 2.4)),
    [
      ...route.sections.map(({ points }) => hitAlong(item, points, 0.02)),
      ...clamps.map(({ seat }) => ({
        id: item,
        segments: [[seat, seat.clone().setY(seat.y - 0.2)] as const],
        radius: 0.05,
      })),
    ],
  )
}
