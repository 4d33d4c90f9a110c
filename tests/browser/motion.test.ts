// What moves and what flashes: cuts instead of flights and nothing that pulses when the system asks for reduced motion, and
// never more than one flash a second (WCAG 2.2, 2.3.1: a change of relative luminance by 0.1 over a quarter of the view).

import type { Page } from 'playwright'
import { afterAll, expect, test } from 'vitest'
import type {} from '../support/scenePage/page'
import { closeBrowser, openApp } from '../support/openApp'
import { bringIn, runUpTo } from '../support/openedRun'
import { closeScenes, openScene, settled } from '../support/openScene'

afterAll(async () => {
  await closeScenes()
  await closeBrowser()
})

const framesOf = (page: Page): Promise<number> => page.evaluate(() => window.sceneProbe!.info().frames)

async function framesOfChange(page: Page, view: 'over' | 'pole-top'): Promise<number> {
  const before = await framesOf(page)
  await page.evaluate((name) => window.page.set({ view: name }), view)
  await settled(page)
  return (await framesOf(page)) - before
}

test('another view is a cut with reduced motion, a flight without', { timeout: 120_000 }, async () => {
  const small = { viewport: { width: 320, height: 240 } }
  const still = await openScene('at=untie&view=ground', small)
  const cut = await framesOfChange(still.page, 'over')
  await still.close()
  const moving = await openScene('at=untie&view=ground&motion', { ...small, reducedMotion: 'no-preference' })
  const flight = await framesOfChange(moving.page, 'over')
  await moving.close()
  expect(cut).toBeGreaterThan(0)
  expect(cut).toBeLessThanOrEqual(3)
  expect(flight).toBeGreaterThan(cut)
})

test('with reduced motion nothing on the sheets is animated, drawn livening included', {
  timeout: 120_000,
}, async () => {
  const app = await openApp('/', { reducedMotion: 'reduce' })
  await app.page.locator('dialog[open]').waitFor()
  await app.page.keyboard.press('Enter')
  await bringIn(app.page, runUpTo('marrow-bend', 'clean-livened'))
  await app.page.keyboard.press('Alt+5')
  await app.page.getByRole('button', { name: 'Open the drawing' }).click({ timeout: 120_000 })
  await app.page.getByRole('radio', { name: 'Plan', exact: true }).click()
  await app.page.locator('.livecols svg[role=img]').waitFor()
  const moving = () =>
    app.page.evaluate(
      () =>
        document
          .getAnimations()
          .filter((it) => it.playState === 'running' && Number(it.effect?.getComputedTiming().duration) > 0).length,
    )
  expect(await moving()).toBe(0)
  await app.page.emulateMedia({ reducedMotion: 'no-preference' })
  await app.page.getByRole('button', { name: /^Run/ }).click()
  await expect.poll(moving).toBeGreaterThan(0)
  await app.close()
})

/** Mean relative luminance of each field of a chequer laid over a picture, 0 to 1. */
const fieldsOf = (page: Page, png: Buffer): Promise<readonly number[]> =>
  page.evaluate(async (base64) => {
    const image = new Image()
    image.src = `data:image/png;base64,${base64}`
    await image.decode()
    const side = 16
    const canvas = new OffscreenCanvas(side, side)
    const context = canvas.getContext('2d')!
    context.drawImage(image, 0, 0, side, side)
    const { data } = context.getImageData(0, 0, side, side)
    const linear = (value: number): number =>
      value <= 0.04045 * 255 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4
    return Array.from(
      { length: side * side },
      (_, i) => 0.2126 * linear(data[4 * i]!) + 0.7152 * linear(data[4 * i + 1]!) + 0.0722 * linear(data[4 * i + 2]!),
    )
  }, png.toString('base64'))

test('a livening in slow motion does not flash', { timeout: 120_000 }, async () => {
  const { page, close } = await openScene('at=untie&view=over&motion', {
    viewport: { width: 400, height: 300 },
    reducedMotion: 'no-preference',
  })
  const fields = [await fieldsOf(page, await page.screenshot())]
  await page.evaluate(() => window.page.liven('untie', 'clash-b'))
  for (let i = 0; i < 12; i++) fields.push(await fieldsOf(page, await page.screenshot()))
  const changes = fields
    .slice(1)
    .map((now, i) => now.filter((y, k) => Math.abs(y - fields[i]![k]!) >= 0.1).length / 256)
  // The moment it strikes may be one; nothing after it.
  expect(changes.filter((share) => share >= 0.25).length).toBeLessThanOrEqual(1)
  expect(fields.some((now) => now.some((y, k) => Math.abs(y - fields[0]![k]!) > 0.01))).toBe(true)
  await close()
})
