/** Earths at a point of isolation: a clamp on each wire of the section's side, three tails to one lead, down the pole to its rod. */
import { soften } from '../geometry/curves'
import { at, box, cylinder, vector } from '../geometry/shapes'
import { type Built, built, part, wire } from '../ink/part'
import { type Layout, radiusAt } from '../site/layout'
import type { SwitchPicture } from '../site/sitePicture'
import { clampTail, screwClamp } from './clamp'
import { wireEnd } from './switchTop'

/** Turns with which its clamps are drawn: seated. */
const seated = 6

export function isolationEarthView(layout: Layout, { along: ofSwitch, id }: SwitchPicture): Built {
  const toward = ofSwitch < 0 ? 1 : -1
  const end = wireEnd(layout, toward)
  const place = end.along + toward * 0.35
  const seats = layout.conductors.map(({ across }) => vector(across, end.height - 0.012, place))
  const joint = vector(0.02, end.height - 1.5, toward * (radiusAt(layout, end.height - 1.5) + 0.03))
  const rod = vector(0.75, 0, toward * 0.7)
  const tails = seats.map((seat) => {
    const tail = clampTail(seat)
    const low = tail
      .clone()
      .lerp(joint, 0.45)
      .setY(Math.min(tail.y, joint.y) + 0.35)
    return wire(soften([tail, low, joint], 3), 0.011, 'lead', id, 2)
  })
  const down = [
    joint,
    vector(0.03, 4, toward * (radiusAt(layout, 4) + 0.02)),
    vector(0.06, 0.4, toward * (radiusAt(layout, 0.4) + 0.02)),
    vector(0.3, 0.02, toward * 0.35),
    rod.clone().setY(0.25),
  ]
  return built(
    [
      ...seats.flatMap((seat) => screwClamp(seat, id, seated)),
      part(at(box(0.07, 0.1, 0.05), [joint.x, joint.y, joint.z]), 'copper', id, 0.05),
      part(at(cylinder(0.009, 0.009, 0.5, 8), [rod.x, 0.2, rod.z]), 'copper', id, 0.04),
      part(at(box(0.05, 0.045, 0.04), [rod.x, 0.25, rod.z]), 'aluminium', id, 0.04),
    ],
    [...tails, wire(soften(down, 2), 0.011, 'lead', id, 2.2)],
  )
}
