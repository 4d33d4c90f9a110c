/**
 * Three single-blade air-break switches, or fuse carriers, on a pole where the line ends from both sides at strain
 * insulators and goes on by jumpers. As the crew knows them: a blade that nobody has looked at is behind a
 * paper strip; one that was seen stands open or closed. The handle and its lock are what everyone at the pole sees.
 */
import type { Vector3 } from 'three'
import { soften } from '../geometry/curves'
import { at, bar, box, cylinder, lathe, ring, strut, vector } from '../geometry/shapes'
import { type Built, built, type Hit, type Part, part, type Wire, wire } from '../ink/part'
import { type Layout, radiusAt } from '../site/layout'
import type { SwitchPicture } from '../site/sitePicture'
import { crossarm, strainLength, strainString } from './pole'

const postProfile = [
  [0.03, 0],
  [0.03, 0.03],
  [0.055, 0.05],
  [0.03, 0.07],
  [0.058, 0.1],
  [0.03, 0.12],
  [0.055, 0.15],
  [0.03, 0.17],
  [0.03, 0.23],
] as const
/** One for each conductor that there is. */
const arms = (layout: Layout, along: number, id: string): readonly Part[] =>
  crossarm({ ...layout.arm, along, made: layout.place.arm }, id)

/** Posts of hinge and jaw along the line, and how high the blade lies over the arm. */
const hingeAlong = -0.34
const jawAlong = 0.3
const bladeAbove = 0.3

export const bladeMiddle = (layout: Layout, across: number): Vector3 =>
  vector(across, layout.arm.height + bladeAbove + 0.1, (hingeAlong + jawAlong) / 2)

/** Where the line's wire ends on either side: at the grip of its strain insulators. */
export const wireEnd = (layout: Layout, toward: 1 | -1): { readonly along: number; readonly height: number } => ({
  along: (toward < 0 ? hingeAlong : jawAlong) + toward * (strainLength + 0.03),
  height: layout.arm.height,
})

export function switchTop(layout: Layout, it: SwitchPicture): Built {
  const { height } = layout.arm
  const parts: Part[] = [...arms(layout, hingeAlong, it.id), ...arms(layout, jawAlong, it.id)]
  const wires: Wire[] = []
  const hits: Hit[] = []
  for (const { letter, across } of layout.conductors) {
    const state = it.blades[letter as keyof typeof it.blades]
    const id = `${it.id}/${letter}`
    const way = it.isFuses ? carrier : blade
    parts.push(...posts(across, height, id), ...way(across, height + bladeAbove, state, id))
    for (const toward of [-1, 1] as const) {
      const post = toward < 0 ? hingeAlong : jawAlong
      parts.push(...strainString([across, height, post + toward * 0.03], toward, ''))
      wires.push(jumper(layout, across, post, toward))
    }
    hits.push({
      id,
      segments: [[vector(across, height + 0.1, hingeAlong), vector(across, height + 0.5, jawAlong)]],
      radius: 0.14,
    })
  }
  const handle = handleView(layout, it)
  return built([...parts, ...handle.parts], [...wires, ...handle.wires], [...hits, ...handle.hits])
}

/** From the grip of the strain insulators in a bow to the post. */
function jumper(layout: Layout, across: number, post: number, toward: 1 | -1): Wire {
  const end = wireEnd(layout, toward)
  const from = vector(across, end.height - 0.01, end.along - toward * 0.06)
  const to = vector(across, layout.arm.height + bladeAbove, post + toward * 0.02)
  const bow = [
    vector(across + 0.02, from.y - 0.16, from.z - toward * 0.08),
    vector(across + 0.03, from.y + 0.06, post + toward * 0.22),
    vector(across, to.y + 0.02, post + toward * 0.12),
  ]
  return wire(soften([from, ...bow, to], 2), 0.0075, 'aluminium', '', 1.4, 6)
}

const posts = (across: number, height: number, id: string): readonly Part[] =>
  [hingeAlong, jawAlong].flatMap((along) => [
    part(at(lathe(postProfile, 14), [across, height + 0.05, along]), 'glaze', id, 0.05, 50),
    part(at(box(0.06, 0.07, 0.07), [across, height + bladeAbove, along]), 'copper', id, 0.06),
  ])

function blade(across: number, height: number, state: 'open' | 'closed' | 'not-looked', id: string): readonly Part[] {
  if (state === 'not-looked') {
    const strip = box(0.012, 0.34, jawAlong - hingeAlong + 0.2)
    return [part(at(strip, [across, height + 0.12, (hingeAlong + jawAlong) / 2]), 'plate', id, 0.2)]
  }
  const hinge = vector(across, height + 0.02, hingeAlong)
  const tip =
    state === 'closed'
      ? vector(across, height + 0.03, jawAlong + 0.04)
      : vector(across, height + 0.56, hingeAlong - 0.22)
  const eye = state === 'closed' ? tip.clone().add(vector(0, 0.05, 0)) : tip.clone().add(vector(0, 0.03, 0))
  return [
    part(bar(hinge, tip, 0.014, 0.034, vector(1, 0, 0)), 'copper', id, 0.06),
    part(at(ring(0.03, 0.008, 10), [eye.x, eye.y, eye.z], [0, Math.PI / 2, 0]), 'copper', id, 0.04),
  ]
}

/** A fuse carrier instead of a blade: in its contacts, or fallen open and hanging from the lower one. */
function carrier(across: number, height: number, state: 'open' | 'closed' | 'not-looked', id: string): readonly Part[] {
  if (state === 'not-looked') return blade(across, height, state, id)
  const foot = vector(across, height, hingeAlong)
  const tip =
    state === 'closed' ? vector(across, height + 0.03, jawAlong) : vector(across, height - 0.6, hingeAlong - 0.2)
  return [
    part(strut(foot, tip, 0.026, 0.022, 12), 'fibreglass', id, 0.05),
    part(at(ring(0.03, 0.008, 10), [tip.x, tip.y + 0.05, tip.z], [0, Math.PI / 2, 0]), 'copper', id, 0.04),
  ]
}

/** Rod down the pole to a handle in reach: down is open, up is closed. */
function handleView(layout: Layout, it: SwitchPicture): Built {
  const along = -(radiusAt(layout, 1.3) + 0.05)
  const pivot = vector(-0.12, 1.3, along)
  const end = pivot.clone().add(vector(-0.02, it.handle === 'open' ? -0.42 : 0.42, -0.16))
  const parts: Part[] = [
    part(
      strut(vector(-0.12, 1.3, along), vector(-0.12, layout.arm.height, -0.16), 0.014, 0.014, 8),
      'steel',
      it.id,
      0.06,
    ),
    part(at(box(0.2, 0.14, 0.06), [-0.12, 1.3, along + 0.01]), 'steel', it.id, 0.06),
    part(strut(pivot, end, 0.016, 0.016, 10), 'tape', it.id, 0.05),
  ]
  const wires: Wire[] = []
  if (it.hasLock) {
    parts.push(part(at(box(0.05, 0.05, 0.025), [0.03, 1.18, along - 0.03]), 'copper', it.id, 0.03))
    wires.push(
      wire(
        [vector(0.012, 1.2, along - 0.03), vector(0.03, 1.255, along - 0.03), vector(0.048, 1.2, along - 0.03)],
        0.005,
        'steel',
        it.id,
        1,
      ),
    )
  }
  if (it.hasTag) parts.push(part(at(box(0.09, 0.15, 0.004), [-0.2, 1.1, along - 0.05]), 'white', it.id, 0.06))
  parts.push(
    part(at(cylinder(0.03, 0.03, 0.03, 12), [-0.12, 1.3, along - 0.03], [Math.PI / 2, 0, 0]), 'steel', it.id, 0.03),
  )
  return built(parts, wires, [{ id: it.id, segments: [[pivot, end]], radius: 0.12 }])
}
