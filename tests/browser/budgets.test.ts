// What the built app may cost: bytes until something is seen, work of the graphics card, frames when nothing moves.

import { existsSync, readFileSync, readdirSync } from 'node:fs'
import { gzipSync } from 'node:zlib'
import type { Page } from 'playwright'
import { afterAll, expect, test } from 'vitest'
import { closeBrowser, openApp } from '../support/openApp'
import { bringIn, hasRun, runUpTo } from '../support/openedRun'
import { settled } from '../support/openScene'
import { openJob } from '../support/sheets'
import { filesBelow } from '../support/sourceTree'

afterAll(closeBrowser)

const kilobyte = 1000

/** Zipped size of each script that the page itself asked for, by name; what the service worker fetches is not waited for. */
function watchScripts(page: Page): () => ReadonlyMap<string, number> {
  const sizes = new Map<string, number>()
  page.on('request', (request) => {
    if (request.resourceType() !== 'script' || request.serviceWorker()) return
    const { pathname } = new URL(request.url())
    sizes.set(pathname, gzipSync(readFileSync(`dist${pathname}`)).length)
  })
  return () => new Map(sizes)
}

const sum = (sizes: Iterable<number>): number => [...sizes].reduce((total, size) => total + size, 0)

test('the Depot is there after at most 90 kB of script, and 3D comes with at most 260 kB, when it is looked at', async () => {
  const app = await openApp('/#')
  const scriptsNow = watchScripts(app.page)
  await app.page.reload()
  await app.page.locator('dialog[open]').waitFor()
  await app.page.waitForLoadState('networkidle')
  const first = scriptsNow()
  expect(first.size).toBeGreaterThan(1)
  expect(sum(first.values()) / kilobyte).toBeLessThanOrEqual(90)

  await app.page.keyboard.press('Enter')
  await app.page.getByRole('button', { name: 'Open the job sheet' }).click()
  await app.page.locator('main:not(.depot)').waitFor()
  await app.page.waitForLoadState('networkidle')
  const before = scriptsNow()
  await app.page.keyboard.press('Alt+4')
  await app.page.locator('canvas').waitFor()
  await app.page.waitForLoadState('networkidle')
  const scene = [...scriptsNow()].filter(([name]) => !before.has(name))
  expect(scene.length).toBeGreaterThan(0)
  expect(sum(scene.map(([, size]) => size)) / kilobyte).toBeLessThanOrEqual(260)
  await app.close()
})

test('the whole app is at most 2.5 MB, kept after the first visit, and runs without a network to the debrief', async () => {
  const app = await openApp()
  await app.page.getByText('it runs without a network').waitFor()
  const kept = await app.page.evaluate(async () => {
    const sizes = await Promise.all(
      (await caches.keys()).map(async (name) => {
        const cache = await caches.open(name)
        const answers = await Promise.all((await cache.keys()).map((request) => cache.match(request)))
        return Promise.all(answers.map(async (answer) => (await answer!.blob()).size))
      }),
    )
    return sizes.flat()
  })
  expect(kept.length).toBeGreaterThan(5)
  // Unpacked, as they lie on the disk: stricter than what travels.
  expect(sum(kept) / kilobyte / kilobyte).toBeLessThanOrEqual(2.5)
  const built = filesBelow('dist').filter((path) => path !== 'dist/offline.js')
  expect(kept).toHaveLength(built.length)

  await app.page.context().setOffline(true)
  await app.page.reload()
  await openJob(app.page, 'earths-on')
  await app.page.keyboard.press('d')
  await app.page.locator('canvas').waitFor()
  await app.page.keyboard.press('Alt+5')
  await app.page.locator('.debriefcols').waitFor({ timeout: 60_000 })
  expect(app.complaints).toEqual([])
  await app.close()
})

test('sheets that cannot be fetched: a line says so, and the page loaded again asks for them again', async () => {
  const app = await openApp()
  let isDown = true
  await app.page.context().route(/(jobFolder|SiteStage).*[.]js/, (route) => (isDown ? route.abort() : route.continue()))
  await app.page.locator('dialog[open]').waitFor()
  await app.page.keyboard.press('Enter')
  const open = app.page.getByRole('button', { name: 'Open the job sheet' })
  const failed = app.page.getByRole('alert').filter({ hasText: 'could not be fetched' })
  await open.click()
  await failed.waitFor()
  isDown = false
  await failed.getByRole('button', { name: 'Load the page again' }).click()
  await open.click()
  await app.page.locator('.tabs button[aria-keyshortcuts="Alt+4"]:enabled').waitFor()
  isDown = true
  await app.page.keyboard.press('Alt+4')
  await failed.waitFor()
  // The job goes on in the drawings meanwhile.
  await app.page.getByRole('button', { name: 'Drawings' }).click()
  await app.page.locator('.sheetdrawings').waitFor()
  expect(await app.page.locator('[role=tree]').count()).toBe(1)
  await app.close()
})

const scenarios = readdirSync('scenarios').filter((name) => existsSync(`scenarios/${name}/scenario.json`))

/** What one frame of the picture costs, from each place that its bar offers. */
async function expectFrames(page: Page, when: string): Promise<void> {
  await page.waitForFunction(() => (window.sceneProbe?.info().frames ?? 0) > 0)
  const views = page.locator('.scene-bar button[aria-pressed]')
  for (let i = 0; i < (await views.count()); i++) {
    const name = await views.nth(i).innerText()
    await views.nth(i).click()
    await settled(page)
    const { calls, triangles } = await page.evaluate(() => window.sceneProbe!.info())
    expect(calls, `${name}, ${when}`).toBeLessThanOrEqual(60)
    expect(calls, `${name}, ${when}`).toBeGreaterThan(8)
    expect(triangles, `${name}, ${when}`).toBeLessThanOrEqual(200_000)
  }
  const frames = () => page.evaluate(() => window.sceneProbe!.info().frames)
  const before = await frames()
  await page.waitForTimeout(2000)
  expect(await frames(), `frames while nothing moves, ${when}`).toBe(before)
}

test.each(scenarios)(
  '%s: 60 calls, 200 000 triangles, no frame when nothing moves',
  { timeout: 300_000 },
  async (id) => {
    const app = await openApp(`/?probe&aa=0&dpr=1#scenario=${id}&purpose=practise&place=site`, {
      reducedMotion: 'reduce',
      viewport: { width: 1000, height: 640 },
    })
    await app.page.getByRole('button', { name: 'Read and understood' }).click()
    await expectFrames(app.page, 'at the beginning')
    if (hasRun(id, 'clean')) {
      await app.page.keyboard.press('Alt+1')
      await bringIn(app.page, runUpTo(id, 'clean', 'declare-safe'))
      await app.page.keyboard.press('Alt+4')
      await expectFrames(app.page, 'with everything fitted')
      await app.page.keyboard.press('Alt+5')
      await app.page.getByRole('button', { name: 'Open the drawing' }).click({ timeout: 120_000 })
      await expectFrames(app.page, 'livened')
    }
    expect(app.complaints).toEqual([])
    await app.close()
  },
)
