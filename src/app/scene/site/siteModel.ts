/** The picture as batches, by how often they change: line per scenario, gear per act, crew per posture. Pure. */
import { Matrix4, type Vector3 } from 'three'
import { aloftView, tiedView } from '../gear/aloft'
import { boomView } from '../gear/boom'
import { jumperView } from '../gear/jumper'
import { barrierView, coverView, guardView } from '../gear/protection'
import { type LeadRoute, leadView, routeLead } from '../gear/leads'
import { platformView } from '../gear/platform'
import { plateCentre } from '../gear/pole'
import { rodView } from '../gear/rod'
import { handlineView, tarpPlates, tarpView } from '../gear/tarp'
import { signsView, truckView } from '../gear/truck'
import { vector } from '../geometry/shapes'
import { type Built, built, join, wire } from '../ink/part'
import type { Plate } from '../ink/plateAtlas'
import type { HeldEnds } from '../gear/leads'
import { type Layout, requireSupport, toScene } from './layout'
import type { LeadPicture, SitePicture } from './sitePicture'
import { leadAlong, poleBeside, workAlong } from './workAlong'

export interface GearModel {
  readonly built: Built
  readonly routes: readonly LeadRoute[]
}

/** @param held ends of leads that somebody carries now; @param sticks in somebody's hands */
export function gearModel(layout: Layout, picture: SitePicture, held: HeldEnds, sticks: readonly string[]): GearModel {
  const routes = picture.leads.map((lead) => routeAt(layout, picture, lead, held))
  const work = workAlong(layout, picture)
  const truck = toScene(picture.truck)
  const isClamped = (item: string): boolean =>
    picture.leads.some(({ ends }) => ends.some(({ on }) => on === `rod/${item}`))
  return {
    routes,
    built: join(
      truckView(truck),
      boomView(layout, picture),
      jumperView(layout, picture),
      tarpView(picture, truck),
      ...picture.platforms.map((it) => platformView(it, picture.found[it.item] ?? [])),
      ...(picture.hasSigns ? [signsView(truck)] : []),
      ...(picture.hasHandline ? [handlineView(vector(0.62, layout.arm.height - 0.08, work + layout.arm.along))] : []),
      ...picture.rods.map((rod) => rodView(rod, isClamped(rod.item))),
      ...routes.map(leadView),
      ...(picture.cover ? [coverView(layout, picture.cover.from, picture.cover.to)] : []),
      ...picture.guards.map(({ on, item }) => guardView(requireSupport(layout.lv, on), item)),
      ...(picture.barrier ? [barrierView(picture.barrier)] : []),
      tiedView(picture, vector(0.64, 0, work + layout.arm.along + 0.15)),
      alongBy(aloftView(picture, hookHeight(picture), sticks), work),
      dimensions(layout, picture),
    ),
  }
}

/** As it would hang at the first pole, at the pole where it is. */
function routeAt(layout: Layout, picture: SitePicture, lead: LeadPicture, held: HeldEnds): LeadRoute {
  const along = leadAlong(layout, picture, lead)
  if (along === 0) return routeLead(layout, picture, lead, held)
  const back = (point: Vector3): Vector3 => point.clone().setZ(point.z - along)
  const there = (point: Vector3): Vector3 => point.clone().setZ(point.z + along)
  const rods = picture.rods.map((rod) => ({ ...rod, at: { ...rod.at, x: rod.at.x - along } }))
  const ends = lead.ends.map((end) => ({ ...end, on: end.on?.replace('@next', '') ?? null }))
  const heldThere = new Map([...held].map(([key, point]) => [key, back(point)]))
  const route = routeLead(layout, { ...picture, rods }, { ...lead, ends }, heldThere)
  return {
    ...route,
    lead,
    seats: route.seats.map((it, i) => ({ ...it, end: lead.ends[i]!, seat: there(it.seat), tail: there(it.tail) })),
    sections: route.sections.map((it) => ({ ...it, points: it.points.map(there) })),
    ...(route.hub ? { hub: there(route.hub) } : {}),
  }
}

function alongBy({ parts, wires, hits }: Built, along: number): Built {
  if (along === 0) return { parts, wires, hits }
  const there = (point: Vector3): Vector3 => point.clone().setZ(point.z + along)
  for (const { geometry } of parts) geometry.translate(0, 0, along)
  return built(
    parts,
    wires.map((it) => ({ ...it, points: it.points.map(there) })),
    hits.map((it) => ({ ...it, segments: it.segments.map(([a, b]) => [there(a), there(b)] as const) })),
  )
}

/** In reach of whoever is on the pole. */
const hookHeight = ({ people }: SitePicture): number =>
  people.some(({ place }) => place.kind === 'pole' && place.station === 'above-lv') ? 8 : 6.7

/** From the pole to each rod, on the ground. */
function dimensions(layout: Layout, { rods }: SitePicture): Built {
  const wires = rods.flatMap(({ at }) => {
    const foot = poleBeside(layout, at.x)
    const end = toScene({ x: at.x - foot, y: at.y })
    const length = end.length()
    if (length < 0.6) return []
    const [dx, dz] = [end.x / length, end.z / length]
    const on = (along: number, aside: number) => vector(dx * along - dz * aside, 0.015, foot + dz * along + dx * aside)
    const [from, to] = [0.2, length - 0.05]
    return [
      wire([on(from, 0), on(to, 0)], 0.001, 'ink', '', 1.1, 4),
      wire([on(from, -0.13), on(from, 0.13)], 0.001, 'ink', '', 1.4, 4),
      wire([on(to, -0.13), on(to, 0.13)], 0.001, 'ink', '', 1.4, 4),
    ]
  })
  return built([], wires)
}

/** @param register heading of its board */
export function sitePlates(layout: Layout, picture: SitePicture, register: string): readonly Plate[] {
  const [x, y, z] = plateCentre(layout)
  return [
    {
      place: new Matrix4().makeTranslation(x, y, z - 0.0038).multiply(new Matrix4().makeRotationY(Math.PI)),
      width: 0.17,
      height: 0.1,
      text: [layout.pole.number],
    },
    ...tarpPlates(picture, toScene(picture.truck), register),
  ]
}
