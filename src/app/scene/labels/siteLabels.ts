/** What is written at the things: letters with their state, people, lengths; and while a livening is drawn its figures. Pure. */
import type { Vector3 } from 'three'
import type { Belief, Exposure, Instant } from '../../../engine'
import { amperes, metres, say, volts } from '../../../text'
import type { ViewName } from '../camera/presets'
import { bladeMiddle } from '../gear/switchTop'
import type { LeadRoute } from '../gear/leads'
import { crossingAt, paceAt, potentialAt } from '../ground/potential'
import { vector } from '../geometry/shapes'
import type { Joints } from '../people/posture'
import { hvHeight, type Layout, lvHeight, toScene } from '../site/layout'
import type { LiveningPicture } from '../site/liveningPicture'
import type { PersonPicture, SitePicture, SwitchPicture } from '../site/sitePicture'
import type { Label } from './label'

export interface LabelSource {
  readonly layout: Layout
  readonly picture: SitePicture
  readonly routes: readonly LeadRoute[]
  readonly joints: ReadonlyMap<string, Joints>
  readonly view: ViewName
  /** Persons that the next order goes to. */
  readonly persons: readonly string[]
}

const letters: Readonly<Record<PersonPicture['role'], string>> = {
  'person-in-charge': 'PIC',
  'pole-worker': 'PW',
  'ground-worker': 'GW',
  'switching-operator': 'SO',
}

export function siteLabels(source: LabelSource): readonly Label[] {
  return [
    ...conductorLabels(source),
    ...lvLabels(source),
    ...personLabels(source),
    ...rodLabels(source),
    ...hazardLabels(source),
  ]
}

/** Where along the line each letter stands, by view: beside the pole from below, over the west span from the pole top. */
const letterAlong: Readonly<Record<ViewName, readonly [number, number, number]>> = {
  ground: [7, 9.5, 12],
  'pole-top': [-1.3, -1.3, -1.3],
  plan: [-4, -4, -4],
  over: [5, 7, 9],
  tarp: [0, 0, 0],
  switch: [0, 0, 0],
}

const conductorLabels = ({ layout, picture, view }: LabelSource): readonly Label[] =>
  layout.conductors.map((support, i) => {
    const first = letterAlong[view][i] ?? 4
    const places = [first, first + 2, first - 1.5, first + 5, first + 9, first + 14, -first]
    return {
      key: support.id,
      at: places.map((along) => vector(support.across, hvHeight(support, along), along)),
      text: support.letter,
      kind: 'letter',
      state: picture.conductors[support.id] ?? 'live',
      rank: 8,
    }
  })

const personLabels = ({ picture, joints, persons, view }: LabelSource): readonly Label[] =>
  picture.people.flatMap((person): Label[] => {
    const of = joints.get(person.id)
    if (!of) return []
    const isChosen = persons.includes(person.id)
    return [
      {
        key: person.id,
        at: personPlace(of, view),
        text: letters[person.role],
        kind: 'person',
        isChosen,
        rank: isChosen ? 7 : 5,
      },
    ]
  })

/** Letters of the LV wires, where they can be told apart. */
const lvLabels = ({ layout, view }: LabelSource): readonly Label[] =>
  view !== 'pole-top'
    ? []
    : layout.lv.map((support, i) => ({
        key: support.id,
        at: [-1.5, -1.9, -1.2, 1.6].map((along) =>
          vector(support.across, lvHeight(support, along - i * 0.12), along - i * 0.12),
        ),
        text: support.letter,
        kind: 'wire',
        rank: 4,
      }))

/** Not while the pole top fills the picture. */
const hazardLabels = ({ picture, view }: LabelSource): readonly Label[] =>
  view === 'pole-top'
    ? []
    : picture.hazards.map(({ id, at }, i) => ({
        key: id,
        at: toScene(at, view === 'plan' ? 0 : 1.7),
        text: String(i + 1),
        kind: 'hazard',
        rank: 1.5,
      }))

/** Over the head; beside the body where the hands are what one looks at. */
function personPlace({ head, chest, right }: Joints, view: ViewName): Vector3 {
  if (view === 'plan') return head.clone().add(vector(0.7, 0, 0))
  return view === 'pole-top' ? chest.clone().addScaledVector(right, 0.55) : head.clone().add(vector(0, 0.36, 0))
}

const rodLabels = ({ picture, view }: LabelSource): readonly Label[] =>
  view === 'pole-top'
    ? []
    : picture.rods.map((rod) => {
        const place = toScene(rod.at, 0.02)
        return {
          key: `length-${rod.item}`,
          at: place.clone().multiplyScalar(0.5),
          text: metres(Math.hypot(rod.at.x, rod.at.y)),
          kind: 'dimension',
          rank: 2,
        }
      })

/** Three chips that stay clear of each other and of the blades. */
const besideBlade: Readonly<Record<string, readonly [number, number]>> = { A: [104, 8], B: [0, -58], C: [-120, 12] }

export const switchLabels = (layout: Layout, it: SwitchPicture): readonly Label[] => [
  ...layout.conductors.map(({ letter, across }): Label => {
    const state = it.blades[letter as keyof SwitchPicture['blades']]
    return {
      key: letter,
      at: bladeMiddle(layout, across),
      text: say('scene.blade', { blade: letter, state: say(`scene.blade.${state}`) }),
      kind: 'callout',
      away: besideBlade[letter] ?? [0, -40],
      rank: 8,
    }
  }),
  {
    key: 'handle',
    at: vector(-0.12, 1.3, -0.3),
    text: say(`scene.handle.${it.handle}`),
    kind: 'callout',
    away: [-110, 30],
    rank: 7,
  },
]

/** Bearings round a line, nearest first, so that a figure finds a free place on it. */
const bearings = (first: number): readonly number[] =>
  Array.from({ length: 12 }, (_, i) => first + ((i % 2 ? 1 : -1) * Math.ceil(i / 2) * Math.PI) / 6)

export function liveningLabels(
  source: LabelSource,
  livening: LiveningPicture,
  instant: Instant,
  sheet: Belief['sheet'],
): readonly Label[] {
  return [
    ...groundLabels(livening, instant),
    ...publicLabel(source, livening),
    ...currentLabels(source, instant),
    ...exposureLabels(source, instant, sheet),
  ]
}

function groundLabels(
  { field, strongest, interval, paceLimit, top }: LiveningPicture,
  instant: Instant,
): readonly Label[] {
  if (!strongest) return []
  const around = (of: (x: number, z: number) => number, level: number, first: number): readonly Vector3[] =>
    bearings(first).flatMap((bearing) => {
      const found = crossingAt(of, level, strongest.x, strongest.z, bearing)
      return found ? [vector(found.x, 0, found.z)] : []
    })
  const labels: Label[] = []
  const voltsAt = (x: number, z: number): number => potentialAt(field, x, z).volts
  for (const steps of [1, 2, 3, 5, 10, 15, 20]) {
    const level = interval * steps
    const at = level < top ? around(voltsAt, level, 3.6) : []
    if (at.length > 0)
      labels.push({
        key: `v${level}`,
        at,
        text: volts(level),
        kind: 'contour',
        rank: 3 + (steps % 5 === 0 ? 0.5 : 0) - steps / 100,
      })
  }
  const limit = around((x, z) => paceAt(field, x, z), paceLimit, 2.2)
  if (limit.length > 0)
    labels.push({
      key: 'limit',
      at: limit,
      text: say('scene.pace-limit', { volts: volts(paceLimit), seconds: instant.tolerable.duration }),
      kind: 'limit',
      away: [-70, 56],
      rank: 7,
    })
  return labels
}

/** One pace at the barrier, where it is nearest to what lifts the ground: the public may stand there. */
function publicLabel({ picture }: LabelSource, { field, strongest }: LiveningPicture): readonly Label[] {
  const { barrier } = picture
  if (!barrier || !strongest) return []
  const corners = barrier.map((point) => toScene(point))
  const places = corners.flatMap((corner, i) => {
    const next = corners[(i + 1) % corners.length]!
    return Array.from({ length: 24 }, (_, k) => corner.clone().lerp(next, k / 24))
  })
  const worst = places.reduce((best, place) =>
    paceAt(field, place.x, place.z) > paceAt(field, best.x, best.z) ? place : best,
  )
  const figure = volts(paceAt(field, worst.x, worst.z))
  return [
    {
      key: 'public',
      at: worst.setY(0.9),
      text: say('scene.pace-at-barrier', { figure }),
      kind: 'verdict',
      away: [60, 44],
      rank: 6.8,
    },
  ]
}

function currentLabels({ layout, routes }: LabelSource, instant: Instant): readonly Label[] {
  const labels: Label[] = []
  for (const { lead, sections } of routes) {
    const down = sections[0]
    const branch = down && instant.branches.find(({ id }) => id === `piece/${lead.item}/${down.from}-${down.to}`)
    if (!branch || branch.size < 0.01) continue
    labels.push({
      key: `lead-${lead.item}`,
      at: midway(down.points),
      text: say('scene.lead-current', { item: lead.item, figure: amperes(branch.size) }),
      kind: 'verdict',
      away: [64, -6],
      rank: 9,
    })
  }
  const cage = instant.electrodes.find(({ node }) => node === 'cage')
  if (cage && cage.size > 0.01)
    labels.push({
      key: 'cage',
      at: vector(0, 3.1, 0),
      text: say('scene.pole-current', { figure: amperes(cage.size) }),
      kind: 'verdict',
      away: [-92, 8],
      rank: 6,
    })
  for (const electrode of instant.electrodes) {
    const node = electrode.node.startsWith('rod/') ? instant.nodes.find((it) => it.node === electrode.node) : undefined
    if (node)
      labels.push({
        key: node.node,
        at: toScene(electrode.at, 0.35),
        text: say('scene.rise', { figure: volts(node.size) }),
        kind: 'verdict',
        away: [96, -34],
        rank: 8.5,
      })
  }
  const clash = instant.branches.find(({ id }) => id.startsWith('clash-'))
  const support = clash && layout.conductors.find(({ letter }) => clash.id === `clash-${letter}`)
  if (clash && support)
    labels.push({
      key: 'clash',
      at: vector(support.across, hvHeight(support, layout.crossing.along) + 0.5, layout.crossing.along),
      text: say('scene.clash', { phase: support.letter, figure: amperes(clash.size) }),
      kind: 'verdict',
      away: [0, -40],
      rank: 6,
    })
  return labels
}

const midway = (points: readonly Vector3[]): Vector3 => points[Math.floor(points.length * 0.45)] ?? vector(0, 0, 0)

/** The worst of each person, in the words of its zone. */
function exposureLabels({ joints }: LabelSource, instant: Instant, sheet: Belief['sheet']): readonly Label[] {
  return sheet.crew.flatMap(({ id }, index): Label[] => {
    const of = joints.get(id)
    const worst = worstOf(instant.exposures.filter(({ person }) => person === id))
    if (!of || !worst) return []
    const words = say('scene.verdict', {
      figure: say('scene.about', { figure: amperes(worst.bodyCurrent) }),
      verdict: zoneWords(worst),
    })
    return [
      {
        key: `exposed-${id}`,
        at: of.chest,
        text: words,
        kind: 'verdict',
        away: [index % 2 ? 120 : -120, -52],
        rank: 9.5,
      },
    ]
  })
}

const worstOf = (exposures: readonly Exposure[]): Exposure | undefined =>
  exposures.reduce<Exposure | undefined>(
    (worst, it) =>
      !worst || it.zone > worst.zone || (it.zone === worst.zone && it.bodyCurrent > worst.bodyCurrent) ? it : worst,
    undefined,
  )

/** On the way from foot to foot the legs lock before the breath does. */
function zoneWords({ zone, path }: Exposure): string {
  return zone === 'AC-3' && /pace/.test(path) ? say('scene.zone.legs') : say(`scene.zone.${zone}`)
}
