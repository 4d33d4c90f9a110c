/**
 * `npm run gallery`: pictures of the built app, to be looked at before somebody says that something is done: every
 * scenario, from the ground, at the pole top, in plan, with a livening's contours, and its debrief; on a laptop and on a
 * tablet, light and dark. They go to `out`, which git leaves alone, with one sheet of them all; a small one of that
 * (`contact-sheet.jpg`) and the picture of the README (`site.png`) are kept. A word after the command names a scenario:
 * only that one is taken; `--kept` takes what those two are made of, and no more.
 */
import { existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { chromium, type Page } from 'playwright'
import { preview } from 'vite'
import { requireChromium } from '../../.ci/chromium.mjs'
import { ensureBuilt } from '../../.ci/ensure.mjs'
import type {} from '../../src/app/scene/probe'
import { bringIn, hasRun, runUpTo } from '../support/openedRun'
import { type Picture, contactSheet } from './contactSheet'

const here = (name: string): string => fileURLToPath(new URL(name, import.meta.url))

const sizes = { laptop: { width: 1280, height: 720 }, tablet: { width: 820, height: 1180 } } as const
const themes = ['light', 'dark'] as const
/** The button of the scene's bar for each picture of the Site. */
const views = { ground: 'From below', 'pole-top': 'Pole top', plan: 'Plan' } as const

interface Frame {
  readonly size: keyof typeof sizes
  readonly theme: (typeof themes)[number]
}

const words = process.argv.slice(2)
const isKeptOnly = words.includes('--kept')
const frames: readonly Frame[] = isKeptOnly
  ? [{ size: 'laptop', theme: 'light' }]
  : Object.keys(sizes).flatMap((size) => themes.map((theme) => ({ size: size as Frame['size'], theme })))

/** A fresh visit at the Depot, past the caution. */
async function visit({ size, theme }: Frame, scenario = ''): Promise<Page> {
  const context = await browser.newContext({ locale: 'en-GB', viewport: sizes[size], reducedMotion: 'reduce' })
  const page = await context.newPage()
  const settings = { theme, people: [], person: null, hasReadCaution: true }
  await page.addInitScript((kept) => localStorage.setItem('earths-on/settings', JSON.stringify(kept)), settings)
  await page.goto(`${origin}/?probe${scenario && `#scenario=${scenario}&purpose=practise&place=site`}`)
  await page.locator('main').waitFor()
  return page
}

const press = (page: Page, name: string): Promise<void> =>
  page.getByRole('button', { name, exact: true }).first().click()

/** The scene is there and draws no further frame. */
async function untilDrawn(page: Page): Promise<void> {
  const framesNow = (): Promise<number> => page.evaluate(() => window.sceneProbe?.info().frames ?? 0)
  for (let last = -1, drawn = 0; drawn === 0 || drawn !== last; ) {
    await page.waitForTimeout(500)
    last = drawn
    drawn = await framesNow()
  }
}

const taken: Picture[] = []

async function take(page: Page, name: string): Promise<void> {
  await page.evaluate(() => document.fonts.ready)
  const path = here(`./out/${name}.png`)
  await page.screenshot({ path })
  taken.push({ name, path })
  console.log(`out/${name}.png`)
}

/** With everything on, if a clean run was recorded; else as it is found. */
async function takeScenario(scenario: string, frame: Frame): Promise<void> {
  const named = (view: string): string => [scenario, view, frame.size, frame.theme].join('.')
  const page = await visit(frame, hasRun(scenario, 'clean') ? '' : scenario)
  if (hasRun(scenario, 'clean')) await bringIn(page, runUpTo(scenario, 'clean', 'declare-safe'))
  await press(page, 'Site')
  await untilDrawn(page)
  for (const [view, button] of Object.entries(views)) {
    await press(page, button)
    await untilDrawn(page)
    await take(page, named(view))
  }
  if (hasRun(scenario, 'clean')) {
    await press(page, 'Debrief')
    await page.locator('.debriefcols').waitFor({ timeout: 180_000 })
    await take(page, named('debrief'))
    await takeContours(page, scenario, named('contours'))
  }
  await page.context().close()
}

/** Of a run in which something came alive, if one was recorded; else the worst that could have. */
async function takeContours(page: Page, scenario: string, name: string): Promise<void> {
  if (hasRun(scenario, 'clean-livened')) {
    await press(page, 'Depot')
    await bringIn(page, runUpTo(scenario, 'clean-livened'))
    await press(page, 'Debrief')
  }
  await page.getByRole('button', { name: 'Open the drawing', exact: true }).click({ timeout: 180_000 })
  await untilDrawn(page)
  await take(page, name)
}

/** The sheets that are not a picture of a site, once. */
async function takeSheets(scenario: string): Promise<void> {
  for (const frame of frames) {
    const page = await visit(frame)
    await take(page, ['depot', frame.size, frame.theme].join('.'))
    for (const [sheet, act] of [
      ['Job sheet', 'hold-briefing'],
      ['Gear', 'wear'],
    ] as const) {
      await press(page, 'Depot')
      await bringIn(page, runUpTo(scenario, 'clean', act))
      await press(page, sheet)
      await take(page, [sheet.toLowerCase().replace(' ', '-'), frame.size, frame.theme].join('.'))
    }
    await page.context().close()
  }
}

/** Three wires over four: more to see than a single one. */
const pictured = 'marrow-bend'

/** The picture of the README. */
async function takeSite(scenario: string): Promise<void> {
  const page = await visit({ size: 'laptop', theme: 'light' })
  await bringIn(page, runUpTo(scenario, 'clean', 'declare-safe'))
  await press(page, 'Site')
  await untilDrawn(page)
  await press(page, 'Over the site')
  await untilDrawn(page)
  await page.screenshot({ path: here('./site.png') })
  await page.context().close()
  console.log('site.png')
}

const all = readdirSync(here('../../scenarios')).filter((name) =>
  existsSync(here(`../../scenarios/${name}/scenario.json`)),
)
const wanted = words.find((word) => !word.startsWith('--'))
const scenarios = wanted === undefined ? all : all.filter((name) => name === wanted)
if (scenarios.length === 0) throw new Error(`No scenario is called ${wanted}. There are: ${all.join(', ')}`)

/** The small sheet is kept with the code, so it holds one of each. */
const isKept = ({ name }: Picture): boolean => name.endsWith('.laptop.light')

ensureBuilt()
mkdirSync(here('./out'), { recursive: true })
const server = await preview({ logLevel: 'error', preview: { host: '127.0.0.1', port: 0, strictPort: true } })
const address = server.httpServer.address()
if (address === null || typeof address === 'string') throw new Error('the server has no port')
const origin = `http://127.0.0.1:${address.port}`
const browser = await chromium.launch(await requireChromium())
try {
  const first = scenarios.find((name) => hasRun(name, 'clean'))
  if (first !== undefined) {
    await takeSheets(first)
    if (wanted === undefined) await takeSite(pictured)
  }
  for (const scenario of scenarios) for (const frame of frames) await takeScenario(scenario, frame)
  const page = await browser.newPage()
  writeFileSync(here('./out/all.jpg'), await contactSheet(page, taken, 320))
  if (wanted === undefined)
    writeFileSync(here('./contact-sheet.jpg'), await contactSheet(page, taken.filter(isKept), 150))
} finally {
  await browser.close()
  await server.close()
}
