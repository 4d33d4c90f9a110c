/**
 * The scene alone, at any second of a shipped run: `?run=clean&at=6800&view=ground`, `&site=wood` on another kind of site. Tests and pictures drive it by
 * `window.page`, which sets props, and read what it answered from `window.page.said`.
 */
import '@fontsource-variable/atkinson-hyperlegible-next'
import { createRoot } from 'react-dom/client'
import {
  actions,
  believe,
  declaredCorner,
  drawScenario,
  type Instant,
  isUnsolvable,
  runTimeline,
  siteAt,
  solveInstant,
  type Timeline,
} from '../../../src/engine'
import { applyTheme } from '../../../src/app/look/applyTheme'
import '../../../src/app/look/sheet.css'
import SiteScene, { type SceneInput, type ViewName } from '../../../src/app/scene/SiteScene'
import type { Theme } from '../../../src/app/stores/theme'
import { readRun } from '../../../src/files/run/read'
import { readScenario } from '../../../src/files/scenario/read'
import scenarioText from '../../../scenarios/marrow-bend/scenario.json?raw'
import { secondOf } from '../secondOf'
import { siteKinds } from '../siteKinds'
import './page.css'

const runs = import.meta.glob<string>('../../../scenarios/marrow-bend/runs/*.json', {
  query: '?raw',
  import: 'default',
  eager: true,
})

const wishes = new URLSearchParams(location.search)
const wish = (name: string, otherwise: string): string => wishes.get(name) ?? otherwise

function timelineOf(name: string): Timeline {
  const scenario = readScenario(scenarioText)
  const text = runs[`../../../scenarios/marrow-bend/runs/${name}.json`]
  if (!scenario.ok || text === undefined) throw new Error(`no run ${name}`)
  const run = readRun(text, actions)
  if (!run.ok) throw new Error(JSON.stringify(run.issues.slice(0, 3)))
  return runTimeline(drawScenario(scenario.value, run.value.seed, run.value.purpose), run.value.orders)
}

/** The run is that of the shipped scenario; what it is seen on may be another kind of site. */
const kind = siteKinds[wish('site', 'marrow-bend')]!
const timeline = timelineOf(wish('run', 'clean'))

/** A second, or what is done then. */
const secondFor = (when: string | number): number =>
  typeof when === 'number' ? when : /^\d+$/.test(when) ? Number(when) : secondOf(timeline, when)

function inputAt(second: number): Pick<SceneInput, 'belief' | 'doing'> {
  const doing = timeline.entries
    .filter(({ outcome, start, end }) => outcome === 'done' && start <= second && second < end)
    .map(({ order }) => ({ who: order.who, act: order.do, thing: order.on ?? null, item: order.with ?? null }))
  const site = siteAt(timeline, second)
  return { belief: believe({ ...site, scenario: { ...site.scenario, ...kind(site.scenario) } }), doing }
}

function instantAt(second: number, livening: string): Instant {
  const moment = timeline.moments.find(({ from, to }) => from <= second && second < to)
  if (!moment) throw new Error(`no moment at ${second}`)
  const instant = solveInstant(moment, livening, declaredCorner)
  if (isUnsolvable(instant)) throw new Error(JSON.stringify(instant))
  return instant
}

const said: (readonly [string, ...unknown[]])[] = []
const tell =
  (name: string) =>
  (...values: unknown[]): void =>
    void said.push([name, ...values])

const second = secondFor(wish('at', 'untie'))
const theme = wish('theme', 'light') as Theme
let anchors: Parameters<NonNullable<SceneInput['onFrame']>>[0] = () => null

type Shown = Parameters<typeof SiteScene>[0]
let shown: Shown = {
  ...inputAt(second),
  selection: wishes.get('selection'),
  persons: wishes.getAll('person'),
  instant: wishes.has('livening') ? instantAt(second, wish('livening', '')) : null,
  isFrozen: wishes.has('frozen'),
  theme,
  reducedMotion: !wishes.has('motion'),
  view: wish('view', 'ground') as ViewName,
  switchId: wishes.get('switch'),
  onSelect: (id) => {
    tell('select')(id)
    set({ selection: id })
  },
  onAct: tell('act'),
  onLook: tell('look'),
  onFrame: (anchorOf) => {
    anchors = anchorOf
    return null
  },
  onLost: tell('lost'),
  onRestored: tell('restored'),
}

let root: ReturnType<typeof createRoot> | null = null

function set(change: Partial<Shown>): void {
  shown = { ...shown, ...change }
  root ??= createRoot(document.getElementById('app')!)
  applyTheme(shown.theme)
  root.render(
    <div className='place'>
      <SiteScene {...shown} />
    </div>,
  )
}

const page = {
  set,
  said,
  goTo: (when: string) => set(inputAt(secondFor(when))),
  liven: (when: string, livening: string) => set({ instant: instantAt(secondFor(when), livening) }),
  place: () => set({ onGroundPoint: tell('ground') }),
  anchorOf: (id: string) => anchors(id),
  liveningIds: timeline.scenario.livenings.map(({ id }) => id),
  unmount: () => root?.render(<p>gone</p>),
  instant: () => shown.instant,
}

declare global {
  interface Window {
    page: typeof page
  }
}
window.page = page
if (wishes.has('stage')) void import('./stage').then(({ openStage }) => openStage(wish('part', 'below-lv')))
else set({})
