/** Figures of a drawn livening at what carries them: volts on their contours, currents, what reached whom. Pure. */
import type { Vector3 } from 'three'
import type { Belief, Exposure, Instant } from '../../../engine'
import { aboutWords, amperes, say, verdictWords, volts } from '../../../text'
import { crossingAt, paceAt, potentialAt } from '../ground/potential'
import { vector } from '../geometry/shapes'
import { hvHeight, toScene } from '../site/layout'
import type { LiveningPicture } from '../site/liveningPicture'
import type { Told } from '../sceneInput'
import type { Label } from './label'
import type { LabelSource } from './siteLabels'

/** Bearings round a line, nearest first, so that a figure finds a free place on it. */
const bearings = (first: number): readonly number[] =>
  Array.from({ length: 12 }, (_, i) => first + ((i % 2 ? 1 : -1) * Math.ceil(i / 2) * Math.PI) / 6)

export function liveningLabels(
  source: LabelSource,
  livening: LiveningPicture,
  instant: Instant,
  sheet: Belief['sheet'],
  hasFigures: boolean,
): readonly Label[] {
  return [
    ...groundLabels(livening, instant),
    ...publicLabel(source, livening, instant),
    ...currentLabels(source, instant),
    ...exposureLabels(source, instant, sheet),
    ...(hasFigures ? [...voltLabels(source, instant), ...sectionLabels(source, instant)] : []),
  ]
}

function groundLabels(
  { field, strongest, interval, paceLimit, top, zone }: LiveningPicture,
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
  const outline = zone[0] ?? []
  const limit = outline.filter((_, i) => i % Math.ceil(outline.length / 12) === 0)
  if (limit.length > 0)
    labels.push({
      key: 'limit',
      at: limit,
      text:
        instant.story.clearedBy === 'nothing'
          ? say('scene.pace-limit-lasting', { volts: volts(paceLimit) })
          : say('scene.pace-limit', { volts: volts(paceLimit), seconds: instant.tolerable.duration }),
      kind: 'limit',
      away: [-70, 56],
      rank: 7,
    })
  return labels
}

/**
 * What the public meets at the barrier, as the engine judged it, written where the ground falls off most along the tape.
 * Nothing is written where there is no barrier or no answer.
 */
function publicLabel(
  { picture }: LabelSource,
  { field, strongest }: LiveningPicture,
  instant: Instant,
): readonly Label[] {
  const { barrier } = picture
  const answer = instant.exposures.find(({ person, path }) => person === 'bystander' && path === 'bystander-pace')
  if (!barrier || !strongest || !answer) return []
  const corners = barrier.map((point) => toScene(point))
  const places = corners.flatMap((corner, i) => {
    const next = corners[(i + 1) % corners.length]!
    return Array.from({ length: 24 }, (_, k) => corner.clone().lerp(next, k / 24))
  })
  const worst = places.reduce((best, place) =>
    paceAt(field, place.x, place.z) > paceAt(field, best.x, best.z) ? place : best,
  )
  const figure = volts(answer.judged)
  return [
    {
      key: 'public',
      at: worst.setY(0.9),
      text: say('scene.pace-at-barrier', { figure }),
      kind: 'verdict',
      away: [60, 44],
      rank: 8.2,
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
    if (node && node.size >= 0.5)
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
  if (clash && support && layout.crossing)
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

/** What gave way, at it: a lead that melted, boots that did not hold. */
export function goneLabels({ routes, joints, picture }: LabelSource, told: Told | null): readonly Label[] {
  return (told?.gone ?? []).flatMap(({ of, person, words }): readonly Label[] => {
    const down = routes.find(({ lead }) => lead.item === of)?.sections[0]
    const wearer = person ?? picture.people.find(({ wears }) => wears.includes(of))?.id
    const at = down ? midway(down.points) : joints.get(wearer ?? '')?.hips
    return at ? [{ key: `gone-${of}`, at, text: words, kind: 'verdict', away: [-96, 16], rank: 9.6 }] : []
  })
}

/** The worst of each person, in the words of its zone. */
function exposureLabels({ joints }: LabelSource, instant: Instant, sheet: Belief['sheet']): readonly Label[] {
  return sheet.crew.flatMap(({ id }, index): Label[] => {
    const of = joints.get(id)
    const worst = worstOf(instant.exposures.filter(({ person }) => person === id))
    if (!of || !worst) return []
    const words = say('scene.verdict', {
      figure: aboutWords(amperes(worst.bodyCurrent)),
      verdict: verdictWords(worst),
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

/** Voltage to far ground of everything that stands at one of its own. */
function voltLabels({ layout, picture }: LabelSource, { nodes }: Instant): readonly Label[] {
  const { pole, arm, stay, lv, conductors } = layout
  const places: readonly (readonly [string, Vector3, readonly [number, number]])[] = [
    ...conductors.map(({ id, across, height }, i) => {
      return [`${id}@pole`, vector(across, height, -2.2 - i * 0.6), [-70, -26 - i * 24]] as const
    }),
    ['arm', vector(arm.length / 2 - 0.1, arm.height, arm.along), [74, 10]],
    ['cage', vector(0, pole.top * 0.45, 0), [-84, 6]],
    ['steel', vector(0, pole.top * 0.45, 0), [-84, 6]],
    ...(stay
      ? ([
          ['stay-upper', stay.top.clone().lerp(stay.anchor, 0.2), [80, -8]],
          ['stay-lower', stay.top.clone().lerp(stay.anchor, 0.86), [80, 10]],
        ] as const)
      : []),
    ...lv.map(({ id, across, height }, i) => [id, vector(across, height, 1.2 + i * 0.5), [86, 4 + i * 22]] as const),
  ]
  return places.flatMap(([node, at, away], i): readonly Label[] => {
    const found = nodes.find((it) => it.node === node)
    const isWire = picture.conductors[node.replace('@pole', '')] !== undefined
    if (!found || found.size < 0.5) return []
    return [
      { key: `volts-${node}`, at, text: volts(found.size), kind: 'callout', away, rank: (isWire ? 7.5 : 7) - i / 50 },
    ]
  })
}

/** The current in each conductor on both sides of the pole, and in each piece of lead from clamp to clamp. */
function sectionLabels({ layout, routes }: LabelSource, { branches }: Instant): readonly Label[] {
  const written = (key: string, size: number, at: Vector3, away: readonly [number, number]): Label => ({
    key: `amperes-${key}`,
    at,
    text: amperes(size),
    kind: 'callout',
    away,
    rank: 6.5,
  })
  const worth = branches.filter(({ size }) => size > 0.01)
  return [
    ...layout.conductors.flatMap((support, i) =>
      worth
        .filter(({ id }) => id.startsWith(`${support.id}/`) && id.includes('pole'))
        .map(({ id, size }) => {
          const along = (id.endsWith('-pole') ? -1 : 1) * (6 + i * 1.5)
          return written(id, size, vector(support.across, hvHeight(support, along), along), [0, -24])
        }),
    ),
    ...routes.flatMap(({ lead, sections }) =>
      sections.flatMap(({ from, to, points }, i) => {
        const piece = worth.find(({ id }) => id === `piece/${lead.item}/${from}-${to}`)
        return piece && i > 0 ? [written(piece.id, piece.size, midway(points), [0, 30])] : []
      }),
    ),
  ]
}
