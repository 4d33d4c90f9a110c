/** What is written at the things: letters with their state, people, lengths, marks. Pure. */
import type { Vector3 } from 'three'
import { metres, personLetters, say } from '../../../text'
import type { ViewName } from '../camera/presets'
import { bladeMiddle } from '../gear/switchTop'
import type { LeadRoute } from '../gear/leads'
import { vector } from '../geometry/shapes'
import type { Joints } from '../people/posture'
import { isBelowLv } from '../people/stance'
import { hvHeight, type Layout, lvHeight, toScene } from '../site/layout'
import type { SitePicture, SwitchPicture } from '../site/sitePicture'
import { poleBeside, workAlong } from '../site/workAlong'
import type { Label } from './label'

export interface LabelSource {
  readonly layout: Layout
  readonly picture: SitePicture
  readonly routes: readonly LeadRoute[]
  readonly joints: ReadonlyMap<string, Joints>
  readonly view: ViewName
  readonly isLivened: boolean
  /** Persons that the next order goes to. */
  readonly persons: readonly string[]
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

type Stretch = readonly [from: number, to: number]

/**
 * Along the line, the stretch in which the letter of each wire stands, from south to north: no two overlap, so that the
 * letters keep the order of the wires. Beside the pole from below, over the west span from the pole top.
 */
const letterAlong: Readonly<Record<ViewName, readonly [Stretch, Stretch, Stretch]>> = {
  ground: [
    [4.2, 6],
    [6.8, 9],
    [10, 15],
  ],
  'pole-top': [
    [-1.3, -2],
    [-1.3, -2],
    [-1.3, -2],
  ],
  plan: [
    [-4, -5.2],
    [-4, -5.2],
    [-4, -5.2],
  ],
  over: [
    [2.6, 3.6],
    [5.5, 8.5],
    [12, 22],
  ],
  tarp: [
    [4, 5],
    [6, 7],
    [8, 9],
  ],
  switch: [
    [0, 0],
    [0, 0],
    [0, 0],
  ],
}
const shares = [0, 0.25, 0.5, 0.75, 1] as const

function conductorLabels({ layout, picture, view }: LabelSource): readonly Label[] {
  const work = workAlong(layout, picture)
  return [...layout.conductors]
    .sort((a, b) => a.across - b.across)
    .map((support, i) => {
      const [from, to] = letterAlong[view][i] ?? letterAlong[view][2]
      const east = shares.map((share) => from + (to - from) * share)
      // On the other side of the pole only where its own is out of sight.
      const places = [...east, ...east.map((along) => -along)].map((along) => work + along)
      return {
        key: support.id,
        at: places.map((along) => vector(support.across, hvHeight(support, along), along)),
        text: support.letter,
        kind: 'letter',
        state:
          work !== 0 && isEarthedThere(picture, support.id) ? 'earthed' : (picture.conductors[support.id] ?? 'live'),
        rank: 8,
      }
    })
}

/** By a lead at the next pole, whose earth end is on something. */
const isEarthedThere = ({ leads }: SitePicture, id: string): boolean =>
  leads.some(
    ({ ends }) =>
      ends.some(({ on }) => on === `${id}@next`) && ends.some(({ end, on }) => end === 'earth' && on !== null),
  )

const personLabels = ({ picture, joints, persons, view }: LabelSource): readonly Label[] =>
  picture.people.flatMap((person): Label[] => {
    const of = joints.get(person.id)
    if (!of) return []
    const isChosen = persons.includes(person.id)
    return [
      {
        key: person.id,
        at: personPlace(of, view),
        text: personLetters(picture.people, person.id),
        kind: 'person',
        isChosen,
        rank: isChosen ? 7 : 5,
      },
    ]
  })

/** Letters of the LV wires, where they can be told apart. */
const lvLabels = ({ layout, picture, view }: LabelSource): readonly Label[] =>
  view !== 'pole-top' || !picture.people.some(isBelowLv)
    ? []
    : layout.lv.map((support, i) => ({
        key: support.id,
        at: [-1.5, -1.9, -1.2].map((along) =>
          vector(support.across, lvHeight(support, along - i * 0.12), along - i * 0.12),
        ),
        text: support.letter,
        kind: 'wire',
        rank: 4,
      }))

/** Not while the pole top fills the picture, nor under the figures of a livening. */
const hazardLabels = ({ picture, view, isLivened }: LabelSource): readonly Label[] =>
  view === 'pole-top' || isLivened
    ? []
    : picture.hazards.map(({ id, at }, i) => ({
        key: id,
        at: toScene(at, 0.2),
        text: String(i + 1),
        kind: 'hazard',
        rank: 1.5,
      }))

/** Over the head; beside the body where the hands are what one looks at. */
function personPlace({ head, chest, right }: Joints, view: ViewName): Vector3 {
  if (view === 'plan') return head.clone().add(vector(0.7, 0, 0))
  return view === 'pole-top' ? chest.clone().addScaledVector(right, 0.55) : head.clone().add(vector(0, 0.36, 0))
}

const rodLabels = ({ layout, picture, view }: LabelSource): readonly Label[] =>
  view === 'pole-top'
    ? []
    : picture.rods.map((rod) => {
        const foot = poleBeside(layout, rod.at.x)
        return {
          key: `length-${rod.item}`,
          at: vector(0, 0, foot).lerp(toScene(rod.at), 0.5).setY(0.02),
          text: metres(Math.hypot(rod.at.x - foot, rod.at.y)),
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
