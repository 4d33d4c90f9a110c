/**
 * The jumper that carries a conductor past a pole between its two ends: on, hanging from the near one, or tied back. At
 * the worked pole, and at poles of the section where another crew takes them out.
 */
import { soften } from '../geometry/curves'
import { at, cylinder, strut, vector } from '../geometry/shapes'
import { type Built, built, hitAlong, join, type Part, part, wire } from '../ink/part'
import { hvHeight, type Layout, type Support } from '../site/layout'
import type { SitePicture } from '../site/sitePicture'

/** Half of the gap between the ends, metres. */
export const gapHalf = 0.45

export function jumperView(layout: Layout, picture: SitePicture): Built {
  return join(
    ...picture.jumpers.flatMap(({ id, conductor, isOpen }) => {
      const support = [...layout.conductors, ...(layout.neutral ? [layout.neutral] : [])].find(
        (it) => it.id === conductor,
      )
      return support ? [jumper(layout, support, id, isOpen ? 'hanging' : 'on', 0)] : []
    }),
    ...layout.place.sectionJumpers.flatMap(({ id, along }) =>
      layout.conductors.map((it) => jumper(layout, it, id, picture.farJumpers[id] ?? 'on', along)),
    ),
  )
}

type Tail = SitePicture['farJumpers'][string]

function jumper(layout: Layout, support: Support, far: string, tail: Tail, pole: number): Built {
  const { across } = support
  const id = pole === 0 ? support.id : far
  const isOpen = tail !== 'on'
  const on = (along: number, up = 0) => vector(across, hvHeight(support, pole + along) + up, pole + along)
  const [near, away] = [-gapHalf - 0.12, gapHalf + 0.12]
  const loops = {
    on: [on(near), on(-0.3, 0.24), on(0, 0.32), on(0.3, 0.24), on(away)],
    hanging: [on(near), on(near + 0.1, -0.2), on(near + 0.05, -0.55), on(near - 0.05, -0.85)],
    'tied-back': [on(near), on(near + 0.12, -0.08), on(near - 0.1, -0.12), on(near - 0.75, -0.03)],
  } as const
  const loop = loops[tail]
  const clamp = (along: number, what: string): Part =>
    part(
      at(cylinder(0.022, 0.022, 0.09, 8), [across, hvHeight(support, pole + along), pole + along], [Math.PI / 2, 0, 0]),
      'steel',
      what,
      0.03,
    )
  const rest = Array.from({ length: 9 }, (_, i) => on(away + i * 0.3))
  const post = vector(across, layout.arm.height + 0.06, pole + layout.arm.along)
  const strings = [-gapHalf, gapHalf].map((along) => part(strut(post, on(along), 0.03, 0.022, 8), 'glaze', id, 0.05))
  return built(
    [...strings, clamp(near, id), ...(isOpen ? [] : [clamp(away, far)])],
    [wire(soften(loop, 2), 0.009, 'aluminium', id, 1.9)],
    [pole === 0 ? hitAlong(far, rest, 0.03, 1) : hitAlong(far, [on(near), on(0, 0.2), on(away)], 0.05, 1)],
  )
}
