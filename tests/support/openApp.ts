// Opens the built app in a real browser and keeps an account of everything that should not happen in it.

import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright'
import { inject } from 'vitest'
import { requireChromium } from '../../.ci/chromium.mjs'

export interface OpenedApp {
  readonly page: Page
  /** Addresses asked for outside the app's own origin. Must stay empty: a depot may have no network. */
  readonly foreignRequests: readonly string[]
  /** Errors and warnings on the console, exceptions, refused by the page's policy. Must stay empty. */
  readonly complaints: readonly string[]
  readonly close: () => Promise<void>
}

let browser: Browser | undefined

/** One browser per test file; each call of `openApp` gets a fresh profile in it. */
async function requireBrowser(): Promise<Browser> {
  browser ??= await chromium.launch(await requireChromium())
  return browser
}

/** @param path from the origin, with its leading slash */
export async function openApp(path = '/', options: BrowserContextOptions = {}): Promise<OpenedApp> {
  const origin = inject('origin')
  const context = await (await requireBrowser()).newContext({
    locale: 'en-GB',
    viewport: { width: 1280, height: 720 },
    ...options,
  })
  const page = await context.newPage()
  const foreignRequests: string[] = []
  const complaints: string[] = []
  context.on('request', (request) => {
    const { protocol, origin: asked } = new URL(request.url())
    if (protocol !== 'data:' && protocol !== 'blob:' && asked !== origin) foreignRequests.push(request.url())
  })
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning')
      complaints.push(`${message.type()}: ${message.text()}`)
  })
  page.on('pageerror', (error) => complaints.push(`exception: ${error.message}`))
  page.on('response', (response) => {
    if (response.status() >= 400) complaints.push(`${response.status()}: ${response.url()}`)
  })
  await page.goto(`${origin}${path}`)
  return { page, foreignRequests, complaints, close: () => context.close() }
}

export async function closeBrowser(): Promise<void> {
  await browser?.close()
  browser = undefined
}
