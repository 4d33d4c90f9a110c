// Opens the page that shows the scene alone, built once per test file.

import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright'
import { type PreviewServer, preview } from 'vite'
import { requireChromium } from '../../.ci/chromium.mjs'
import { buildScenePage } from './buildScenePage.mjs'

let browser: Browser | undefined
let server: PreviewServer | undefined
let folder: string | undefined

async function requireOrigin(): Promise<string> {
  if (!server) {
    folder = mkdtempSync(join(tmpdir(), 'scene-page-'))
    await buildScenePage(folder)
    server = await preview({
      configFile: false,
      root: folder,
      logLevel: 'error',
      build: { outDir: '.' },
      preview: { host: '127.0.0.1', port: 0, strictPort: true },
    })
  }
  const address = server.httpServer.address()
  if (address === null || typeof address === 'string') throw new Error('the server has no port')
  return `http://127.0.0.1:${address.port}`
}

export interface OpenedScene {
  readonly page: Page
  readonly complaints: readonly string[]
  readonly close: () => Promise<void>
}

/** @param wishes of the page's address; without multisampling, which software rendering pays dearly */
export async function openScene(wishes: string, options: BrowserContextOptions = {}): Promise<OpenedScene> {
  const origin = await requireOrigin()
  browser ??= await chromium.launch(await requireChromium())
  const context = await browser.newContext({
    viewport: { width: 800, height: 600 },
    reducedMotion: 'reduce',
    ...options,
  })
  const page = await context.newPage()
  const complaints: string[] = []
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text())
  })
  page.on('pageerror', (error) => complaints.push(error.message))
  await page.goto(`${origin}/?probe&aa=0&dpr=1&${wishes}`)
  await page.waitForFunction(() => (window.sceneProbe?.info().frames ?? 0) > 0)
  await settled(page)
  return { page, complaints, close: () => context.close() }
}

/** No frame is drawn any more. Nothing inside has a name: tsx would mark it by a helper that the page does not have. */
export async function settled(page: Page): Promise<void> {
  await page.evaluate(async () => {
    // A frame may take longer than a wait: it has to be quiet several times.
    let quiet = 0
    let last = -1
    for (let round = 0; quiet < 4 && round < 100; round++) {
      await new Promise((done) => setTimeout(done, 120))
      const { frames } = window.sceneProbe!.info()
      quiet = frames === last ? quiet + 1 : 0
      last = frames
    }
  })
}

export async function closeScenes(): Promise<void> {
  await browser?.close()
  await server?.close()
  if (folder) rmSync(folder, { recursive: true, force: true })
  browser = undefined
  server = undefined
  folder = undefined
}
