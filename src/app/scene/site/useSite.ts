/** Belief to batches, each rebuilt only when what it draws has changed. */
import { useMemo } from 'react'
import type { Belief } from '../../../engine'
import type { Built, Hit } from '../ink/part'
import type { LeadRoute } from '../gear/leads'
import { crewView, heldEnds, type Stances, stancesOf } from '../people/crew'
import type { Joints } from '../people/posture'
import { stickOf } from '../people/stance'
import type { SceneInput } from '../sceneInput'
import { type Layout, layoutOf } from './layout'
import { lineView } from './lines'
import { scenery } from './scenery'
import { type LiveningPicture, liveningPicture } from './liveningPicture'
import { pictureOf } from './pictureOf'
import { gearModel } from './siteModel'
import type { SitePicture } from './sitePicture'

export interface SiteState {
  readonly sheet: Belief['sheet']
  readonly layout: Layout
  readonly picture: SitePicture
  readonly setting: Built
  readonly line: Built
  readonly gear: Built
  readonly crew: Built
  readonly stances: Stances
  readonly hits: readonly Hit[]
  readonly routes: readonly LeadRoute[]
  readonly joints: ReadonlyMap<string, Joints>
  readonly livening: LiveningPicture | null
}

/** An earthed conductor that stands at more than this, volts, is drawn as lifted. */
const lifted = 50

const noZone: NonNullable<SceneInput['zone']> = []

export function useSite({ belief, doing, instant, zone = noZone }: SceneInput): SiteState {
  const { sheet } = belief
  const layout = useSame(
    () => layoutOf(sheet),
    JSON.stringify([
      sheet.pole,
      sheet.conductors,
      sheet.lv,
      sheet.stay,
      sheet.section,
      sheet.place,
      sheet.feeders,
      sheet.hazards,
    ]),
  )
  const risen = useMemo(
    () =>
      new Set(
        instant?.nodes
          .filter(({ node, size }) => node.endsWith('@pole') && size > lifted)
          .map(({ node }) => node.slice(0, -5)),
      ),
    [instant],
  )
  const picture = useMemo(() => pictureOf(belief, doing, risen), [belief, doing, risen])
  const line = useMemo(
    () =>
      lineView(layout, {
        cracked: picture.insulator === 'cracked' ? picture.work : null,
        carriers: picture.carriers,
      }),
    [layout, picture.insulator, picture.work, JSON.stringify(picture.carriers)],
  )
  const { people, ...gearOnly } = picture
  const crewKey = JSON.stringify([people, picture.rods, picture.cover, picture.leads, picture.truck, picture.aloft])
  const crew = useSame(
    () => {
      const stances = stancesOf(layout, picture)
      const sticks = picture.people.flatMap((person) => stickOf(picture, person) ?? [])
      return { stances, held: heldEnds(picture, stances), sticks, ...crewView(layout, picture, stances) }
    },
    crewKey,
    layout,
  )
  const gearKey = JSON.stringify([gearOnly, crew.sticks, [...crew.held].map(([key, { x, y, z }]) => [key, x, y, z])])
  const gear = useSame(() => gearModel(layout, picture, crew.held, crew.sticks), gearKey, layout)
  const livening = useMemo(
    () =>
      instant ? liveningPicture(instant, { layout, sheet, routes: gear.routes, joints: crew.joints, zone }) : null,
    [instant, layout, sheet, gear, crew, zone],
  )
  const setting = useMemo(() => scenery(sheet.weather.wind, layout), [sheet.weather.wind, layout])
  const hits = useMemo(
    () => [...setting.hits, ...line.hits, ...gear.built.hits, ...crew.built.hits],
    [setting, line, gear, crew],
  )
  return useMemo(
    () => ({
      sheet,
      layout,
      picture,
      setting,
      line,
      gear: gear.built,
      crew: crew.built,
      stances: crew.stances,
      hits,
      routes: gear.routes,
      joints: crew.joints,
      livening,
    }),
    [sheet, layout, picture, setting, line, gear, crew, hits, livening],
  )
}

/** As useMemo, for causes that are equal by what they say, not by being the same object. */
function useSame<Value>(make: () => Value, key: string, ...causes: readonly unknown[]): Value {
  return useMemo(make, [key, ...causes])
}
