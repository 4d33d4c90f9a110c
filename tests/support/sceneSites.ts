/** Pictures of the shipped scenario at any second of a shipped run, for tests of the scene. */
import { readFileSync } from 'node:fs'
import { actions, believe, runTimeline, siteAt, type Site, type Timeline } from '../../src/engine'
import { layoutOf } from '../../src/app/scene/site/layout'
import { type Doing, pictureOf } from '../../src/app/scene/site/pictureOf'
import { readRun } from '../../src/files/run/read'
import { marrowBend } from './marrowBend'
import { secondOf } from './secondOf'

export function timelineOf(name: string): Timeline {
  const run = readRun(
    readFileSync(new URL(`../../scenarios/marrow-bend/runs/${name}.json`, import.meta.url), 'utf8'),
    actions,
  )
  if (!run.ok) throw new Error(JSON.stringify(run.issues.slice(0, 3)))
  return runTimeline(marrowBend(run.value.seed, run.value.purpose), run.value.orders)
}

const doingAt = (timeline: Timeline, second: number): readonly Doing[] =>
  timeline.entries
    .filter(({ outcome, start, end }) => outcome === 'done' && start <= second && second < end)
    .map(({ order }) => ({ who: order.who, act: order.do, thing: order.on ?? null, item: order.with ?? null }))

export function sceneOf(site: Site, doing: readonly Doing[] = []) {
  const belief = believe(site)
  return { belief, layout: layoutOf(belief.sheet), picture: pictureOf(belief, doing) }
}

/** @param when a second, or what is done then; see secondOf */
export function sceneAt(timeline: Timeline, when: number | string) {
  const second = typeof when === 'number' ? when : secondOf(timeline, when)
  return sceneOf(siteAt(timeline, second), doingAt(timeline, second))
}
