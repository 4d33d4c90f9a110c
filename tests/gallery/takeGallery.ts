/**
 * `npm run gallery`: pictures of the built app from the recorded clean job, all of one size. The picture of the README is
 * kept; the others go to `out`, which git leaves alone: to look at before saying that something is done.
 */
import { mkdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { chromium, type Page } from 'playwright'
import { preview } from 'vite'
import { requireChromium } from '../../.ci/chromium.mjs'
import { ensureBuilt } from '../../.ci/ensure.mjs'
import type {} from '../../src/app/scene/probe'

const here = (name: string): string => fileURLToPath(new URL(name, import.meta.url))

interface RecordedRun {
  readonly actions: readonly { readonly do: string }[]
}

const clean = JSON.parse(readFileSync(here('../../scenarios/marrow-bend/runs/clean.json'), 'utf8')) as RecordedRun

/** The clean run up to and with the first of this act, as a run file that the Depot opens. */
function upTo(act: string): string {
  const last = clean.actions.findIndex((order) => order.do === act)
  if (last < 0) throw new Error(`the clean run has no ${act}`)
  return JSON.stringify({ ...clean, actions: clean.actions.slice(0, last + 1) })
}

/** A fresh visit in which the run is open; without a run, the Depot as a newcomer finds it. */
async function visit(run?: string): Promise<Page> {
  const context = await browser.newContext({
    locale: 'en-GB',
    viewport: { width: 1280, height: 720 },
    reducedMotion: 'reduce',
  })
  const page = await context.newPage()
  // The probe is asked for beside a job: without one the app tidies its address.
  await page.goto(`${origin}/${run === undefined ? '' : '?probe#scenario=marrow-bend&purpose=practise&place=depot'}`)
  await page.locator('dialog[open]').waitFor()
  await page.keyboard.press('Enter')
  if (run === undefined) return page
  const file = { name: 'run.json', mimeType: 'application/json', buffer: Buffer.from(run) }
  await page.locator('input[type=file]').setInputFiles(file)
  await page.locator('main').getByRole('heading', { level: 1, name: 'Depot' }).waitFor({ state: 'detached' })
  return page
}

const press = (page: Page, name: string): Promise<void> =>
  page.getByRole('button', { name, exact: true }).first().click()

/** The scene is there and draws no further frame. */
async function untilDrawn(page: Page): Promise<void> {
  const framesNow = (): Promise<number> => page.evaluate(() => window.sceneProbe?.info().frames ?? 0)
  for (let last = -1, frames = 0; frames === 0 || frames !== last; ) {
    await page.waitForTimeout(500)
    last = frames
    frames = await framesNow()
  }
}

async function keep(page: Page, path: string): Promise<void> {
  await page.evaluate(() => document.fonts.ready)
  await page.screenshot({ path: here(path) })
  await page.context().close()
  console.log(path)
}

/** A sheet of the open job. */
async function keepSheet(sheet: string, run: string, path: string): Promise<void> {
  const page = await visit(run)
  await press(page, sheet)
  await keep(page, path)
}

/** The Site in three dimensions, with one thing of the list chosen. */
async function keepScene(view: string, thing: string, run: string, path: string): Promise<void> {
  const page = await visit(run)
  await press(page, 'Site')
  await untilDrawn(page)
  await press(page, view)
  await page.locator(`[role=treeitem][data-key="${thing}"]`).click()
  await untilDrawn(page)
  await keep(page, path)
}

ensureBuilt()
mkdirSync(here('./out'), { recursive: true })
const server = await preview({ logLevel: 'error', preview: { host: '127.0.0.1', port: 0, strictPort: true } })
const address = server.httpServer.address()
if (address === null || typeof address === 'string') throw new Error('the server has no port')
const origin = `http://127.0.0.1:${address.port}`
const browser = await chromium.launch(await requireChromium())
try {
  await keep(await visit(), './out/depot.png')
  await keepSheet('Job sheet', upTo('hold-briefing'), './out/job-sheet.png')
  await keepSheet('Gear', upTo('wear'), './out/gear.png')
  await keepScene('Over the site', 'pole', upTo('declare-safe'), './site.png')
  await keepScene('Ground', 'pole', upTo('declare-safe'), './out/ground.png')
  await keepScene('Pole top', 'conductor-b', upTo('declare-safe'), './out/pole-top.png')
  await keepScene('Switch 27', 'switch-27/B', upTo('lock'), './out/switch.png')
} finally {
  await browser.close()
  await server.close()
}
