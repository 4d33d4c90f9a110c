/** The switch pole, drawn on its own sheet because it stands hundreds of metres away: posts, blades, handle, who works it. */
import { Matrix4 } from 'three'
import { isolationEarthView } from '../gear/isolationEarth'
import { shaftView } from '../gear/shaft'
import { crossarm, pinInsulator } from '../gear/pole'
import { switchTop, wireEnd } from '../gear/switchTop'
import { span } from '../geometry/curves'
import { at, box, vector } from '../geometry/shapes'
import { type Built, built, join, part, wire } from '../ink/part'
import type { Plate } from '../ink/plateAtlas'
import { wearOf, hitOf } from '../people/crew'
import { figure } from '../people/figure'
import { type Layout, radiusAt, sagIn } from './layout'
import type { SitePicture, SwitchPicture } from './sitePicture'

const reach = 55

export function switchModel(layout: Layout, picture: SitePicture, it: SwitchPicture): Built {
  const along = -(radiusAt(layout, 2) + 0.004)
  return join(
    shaftView(layout, { across: 0, along: 0 }, it.id, true),
    built([part(at(box(0.17, 0.1, 0.006), [0, 2.1, along]), 'plate', it.id, 0.1)]),
    switchTop(layout, it),
    ...(it.hasEarth ? [isolationEarthView(layout, it)] : []),
    wiresOf(layout),
    ...picture.people
      .filter(({ place }) => place.kind === 'switch' && place.id === it.id)
      .map((person, index) => operator(picture, person, index)),
  )
}

/** Both sides end at strain insulators. */
function wiresOf(layout: Layout): Built {
  const wires = layout.conductors.flatMap(({ across }) =>
    ([-1, 1] as const).map((toward) => {
      const { along, height } = wireEnd(layout, toward)
      const far = vector(across, height + 0.2, toward * reach)
      return wire(
        span(vector(across, height, along), far, sagIn(Math.abs(far.z - along), 'hv'), 24),
        0.0095,
        'aluminium',
        '',
        1.7,
      )
    }),
  )
  return join(built([], wires), ...[-reach, reach].map((along) => farPole(layout, along)))
}

const farPole = (layout: Layout, along: number): Built =>
  join(
    shaftView(layout, { across: 0, along }, '', false),
    built([
      ...crossarm({ ...layout.arm, along: along + layout.arm.along, made: layout.place.arm }, ''),
      ...layout.conductors.flatMap(({ across }) =>
        pinInsulator([across, layout.arm.height + 0.05, along + layout.arm.along], '', 0.85, 0.5, false),
      ),
    ]),
  )

function operator(picture: SitePicture, person: SitePicture['people'][number], index: number): Built {
  const isWorking = /open-switch|close-switch|lock|tag|set-local|set-remote/.test(person.doing?.act ?? '')
  const spot = vector(0.3 + index * 0.9, 0, -0.85)
  const on = (ahead: number, aside: number, up: number) => vector(spot.x - aside, up, spot.z + ahead)
  const mat = person.isOnMat ? [part(at(box(0.9, 0.02, 0.9), [spot.x, 0.01, spot.z]), 'rubber', person.id, 0.3)] : []
  const up = person.isOnMat ? 0.02 : 0
  const drawn = figure(
    {
      hips: on(0, 0, 0.925 + up),
      yaw: Math.PI,
      lean: 0.03,
      side: 0,
      head: isWorking ? 0.1 : 0.5,
      leftHand: isWorking ? vector(-0.1, 1.0, -0.3) : on(0.1, -0.27, 0.82),
      rightHand: isWorking ? vector(-0.12, 1.16, -0.24) : on(0.1, 0.27, 0.82),
      leftFoot: on(0.04, -0.13, up),
      rightFoot: on(-0.04, 0.13, up),
    },
    wearOf(picture, person),
    person.id,
  )
  return built([...drawn.parts, ...mat], drawn.wires, [hitOf(person.id, drawn.joints)])
}

export const switchPlates = (layout: Layout, it: SwitchPicture): readonly Plate[] => [
  {
    place: new Matrix4()
      .makeTranslation(0, 2.1, -(radiusAt(layout, 2) + 0.008))
      .multiply(new Matrix4().makeRotationY(Math.PI)),
    width: 0.17,
    height: 0.1,
    text: [it.label],
  },
]
