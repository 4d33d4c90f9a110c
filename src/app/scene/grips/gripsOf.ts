/** The handles of what is being set: a place and its depth, corners, edges of a cover, an eye screw, the ways of a lead. */
import type { PerspectiveCamera, Vector3 } from 'three'
import { metres, say, spotWords } from '../../../text'
import { type Entries, figureText } from '../../stores/entries'
import type { Handled, Handling, Measure } from '../../stores/handling'
import { type Spot, tidySpot } from '../../stores/aimStore'
import { vector } from '../geometry/shapes'
import { type Layout, radiusAt, toScene } from '../site/layout'
import type { Carried, Grip } from './grip'
import { nearestWay, type Way } from './ways'

export interface GripPlaces {
  readonly layout: Layout
  /** Where the clamp that is being closed sits, by what it is closed on. */
  readonly seatOf: (thing: string) => Vector3 | undefined
  readonly ways: readonly Way[]
  readonly camera: PerspectiveCamera
  readonly screen: () => { readonly width: number; readonly height: number }
}

type Of<Kind extends Handled['kind']> = Extract<Handled, { kind: Kind }>

export function gripsOf({ handled }: Handling, places: GripPlaces): readonly Grip[] {
  switch (handled.kind) {
    case 'spot':
      return spotGrips(handled)
    case 'outline':
      return outlineGrips(handled)
    case 'extent':
      return extentGrips(handled, places.layout)
    case 'turns':
      return dialGrips(handled, places)
    case 'ways':
      return wayGrips(handled, places)
  }
}

const figure = (measure: Measure, value: number): Entries => ({ [measure.field]: { text: figureText(measure, value) } })

function spotGrips({ field, at, rod }: Of<'spot'>): readonly Grip[] {
  if (!at) return []
  const place: Grip = {
    key: 'place',
    at: toScene(at, 0.02),
    text: spotWords(at),
    shape: 'corner',
    carry: ({ point }) => ({ [field]: { points: [tidySpot(point)] } }),
  }
  if (!rod) return [place]
  const standing = rod.length - (rod.depth.value ?? 0)
  const depth: Grip = {
    key: 'depth',
    at: toScene(at, standing),
    text: rod.depth.value === null ? say('grip.depth.unset') : say('grip.depth', { depth: metres(rod.depth.value) }),
    shape: 'up-down',
    carry: ({ height }) => figure(rod.depth, rod.length - height),
  }
  return [place, depth]
}

function outlineGrips({ field, points }: Of<'outline'>): readonly Grip[] {
  const write = (moved: readonly Spot[]): Entries => ({ [field]: { points: moved } })
  const corners = points.map(
    (point, i): Grip => ({
      key: `corner-${i}`,
      at: toScene(point, 0.9),
      text: '',
      shape: 'corner',
      carry: ({ point: to }) => write(points.map((it, k) => (k === i ? tidySpot(to) : it))),
      ...(points.length > 3 ? { remove: () => write(points.filter((_point, k) => k !== i)) } : {}),
    }),
  )
  if (points.length < 3) return corners
  const between = points.map((point, i): Grip => {
    const next = points[(i + 1) % points.length]!
    const length = Math.hypot(next.x - point.x, next.y - point.y)
    return {
      key: `side-${i}`,
      at: toScene({ x: (point.x + next.x) / 2, y: (point.y + next.y) / 2 }, 0.9),
      text: metres(length),
      shape: 'new-corner',
      carry: ({ point: to }) => write([...points.slice(0, i + 1), tidySpot(to), ...points.slice(i + 1)]),
    }
  })
  return [...corners, ...between]
}

function extentGrips({ from, to }: Of<'extent'>, layout: Layout): readonly Grip[] {
  return [from, to].flatMap((edge): Grip[] =>
    edge.value === null
      ? []
      : [
          {
            key: edge.field,
            at: vector(0, edge.value, -radiusAt(layout, edge.value) - 0.03),
            text: metres(edge.value),
            shape: 'up-down',
            carry: ({ height }) => figure(edge, height),
          },
        ],
  )
}

function dialGrips({ on, turns }: Of<'turns'>, { seatOf }: GripPlaces): readonly Grip[] {
  const seat = seatOf(on)
  if (!seat) return []
  const now = turns.value ?? 0
  return [
    {
      key: 'turns',
      at: seat.clone().setY(seat.y - 0.2),
      text: turns.value === null ? say('grip.turns.unset') : say('grip.turns', { turns: turns.value }),
      shape: 'dial',
      turns: now,
      carry: ({ turned }) => (now + turned < turns.low / 2 ? null : figure(turns, now + turned)),
    },
  ]
}

function wayGrips({ give }: Of<'ways'>, { ways, camera, screen }: GripPlaces): readonly Grip[] {
  const [first] = ways
  if (!first) return []
  const at = first.points[0]!
  const nearest = (to: Carried): Way | undefined => nearestWay(ways, camera, screen(), to.pixel)
  return [
    {
      key: 'way',
      at,
      text: say('grip.way'),
      shape: 'end',
      carry: () => null,
      letGo: (to) => {
        const way = nearest(to)
        if (way) give(way.choice)
      },
    },
    ...ways.map(
      ({ choice, name, points }): Grip => ({
        key: `way-${choice}`,
        at: points[Math.floor(points.length * 0.6)]!,
        text: name,
        shape: 'mark',
        carry: () => null,
      }),
    ),
  ]
}
