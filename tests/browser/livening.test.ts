// A livening by its own seconds: scrubbed by keys and by hand, dead between shots, felt in the picture, never flashing.

import { readFileSync } from 'node:fs'
import type { Locator, Page } from 'playwright'
import { afterAll, expect, test } from 'vitest'
import { answerOfVerb } from '../support/answerOfVerb'
import { closeBrowser, type OpenedApp, openApp } from '../support/openApp'
import { bringIn } from '../support/openedRun'

afterAll(closeBrowser)

const folder = 'scenarios/marrow-bend'
const path = `${folder}/runs/clean-livened.json`
const livened = readFileSync(path, 'utf8')

/** The same run without the request to block reclosing: the breaker closes once more. */
function reclosing(): string {
  const run = JSON.parse(livened) as { readonly actions: readonly { readonly do: string }[] }
  return JSON.stringify({ ...run, actions: run.actions.filter((it) => it.do !== 'ask-reclose-block') })
}

async function openDrawing(run: string, options: Parameters<typeof openApp>[1] = {}): Promise<OpenedApp> {
  const app = await openApp('/?probe&aa=0&dpr=1', options)
  const { page } = app
  await page.locator('dialog[open]').waitFor()
  await page.keyboard.press('Enter')
  await bringIn(page, run)
  await page.keyboard.press('Alt+5')
  await page.getByRole('button', { name: 'Open the drawing' }).click({ timeout: 120_000 })
  await page.locator('.course').waitFor()
  return app
}

const rule = (page: Page): Locator => page.getByRole('slider', { name: 'Time of the livening' })
const secondOf = async (page: Page): Promise<number> => Number(await rule(page).getAttribute('aria-valuenow'))

interface Story {
  readonly livening: string
  readonly endS: number
  readonly shots: readonly { readonly fromS: number; readonly toS: number }[]
}

/** What the command line tells of the same livening. */
async function toldBy(file: string): Promise<Story> {
  const { out } = await answerOfVerb('expose', folder, file, '--at', '7003s', '--json')
  return (JSON.parse(out) as { readonly answers: readonly Story[] }).answers.find((it) => it.livening === 'clash-b')!
}

const still = { reducedMotion: 'reduce' } as const

test('the rule is moved by keys: a step, the ends, change by change, and the words follow', {
  timeout: 180_000,
}, async () => {
  const { page, complaints, close } = await openDrawing(livened, still)
  const { endS } = await toldBy(path)
  await rule(page).focus()
  expect(await secondOf(page)).toBe(0)
  expect(await rule(page).getAttribute('aria-valuetext')).toContain('comes alive')
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('ArrowRight')
  expect(await secondOf(page)).toBeCloseTo(0.02, 9)
  await page.keyboard.press('ArrowLeft')
  expect(await secondOf(page)).toBeCloseTo(0.01, 9)
  await page.keyboard.press('PageUp')
  expect(await rule(page).getAttribute('aria-valuetext')).toContain('earth-fault relay operates')
  await page.locator('.sofar').first().waitFor()
  await page.keyboard.press('End')
  expect(await secondOf(page)).toBeCloseTo(endS, 6)
  expect(await rule(page).getAttribute('aria-valuetext')).toContain('breaker opens')
  await page.getByText('Off: nothing feeds it any more.').waitFor()
  await page.keyboard.press('Home')
  expect(await secondOf(page)).toBe(0)
  expect(complaints).toEqual([])
  await close()
})

test('dragged into the dead time it is drawn dead, and says that it may come again', {
  timeout: 180_000,
}, async () => {
  const { page, complaints, close } = await openDrawing(reclosing(), still)
  await page.getByRole('radio', { name: 'Plan' }).click()
  await page.locator('.d-contour').first().waitFor()
  const box = (await page.locator('.coursescale').boundingBox())!
  const y = box.y + box.height / 2
  const end = Number(await rule(page).getAttribute('aria-valuemax'))
  await page.mouse.move(box.x + 2, y)
  await page.mouse.down()
  await page.mouse.move(box.x + box.width * 0.3, y, { steps: 4 })
  await page.mouse.move(box.x + box.width * 0.5, y, { steps: 4 })
  await page.mouse.up()
  expect(await secondOf(page)).toBeCloseTo(end / 2, 1)
  await page.getByText('Dead between two shots. It may come again.').waitFor()
  expect(await page.locator('.d-contour').count()).toBe(0)
  await page.getByRole('button', { name: /breaker recloses/ }).click()
  await page.locator('.d-contour').first().waitFor()
  expect(await page.getByText('It may come again').isVisible()).toBe(false)
  expect(complaints).toEqual([])
  await close()
})

test('however fast one scrubs, light and dark are a second apart', { timeout: 180_000 }, async () => {
  const { page, close } = await openDrawing(reclosing(), still)
  await page.getByRole('radio', { name: 'Plan' }).click()
  await page.locator('.d-contour').first().waitFor()
  await page.evaluate(() => {
    const isLight = () => document.querySelector('.d-contour') !== null
    const flips: number[] = []
    let was = isLight()
    new MutationObserver(() => {
      if (isLight() === was) return
      was = !was
      flips.push(performance.now())
    }).observe(document.querySelector('.livepicture')!, { childList: true, subtree: true })
    Object.assign(window, { flips })
  })
  await rule(page).focus()
  const start = Date.now()
  while (Date.now() - start < 5000) for (const key of ['End', 'Home']) await page.keyboard.press(key)
  const flips = await page.evaluate(() => (window as unknown as { flips: number[] }).flips)
  expect(flips.length).toBeGreaterThan(1)
  for (let i = 1; i < flips.length; i++) expect(flips[i]! - flips[i - 1]!).toBeGreaterThan(900)
  await close()
})

test('space runs it slower than it was and freezes it; with reduced motion it only steps, and nothing is animated', {
  timeout: 240_000,
}, async () => {
  const moving = await openDrawing(livened, { reducedMotion: 'no-preference' })
  await rule(moving.page).focus()
  await moving.page.keyboard.press('Space')
  await expect.poll(() => secondOf(moving.page), { timeout: 20_000 }).toBeGreaterThan(0.05)
  await moving.page.keyboard.press('Space')
  const frozen = await secondOf(moving.page)
  expect(frozen).toBeLessThan(2.3)
  await moving.page.waitForTimeout(700)
  expect(await secondOf(moving.page)).toBe(frozen)
  expect(await moving.page.getByRole('button', { name: 'Run, 10 times slower' }).count()).toBe(1)
  await moving.close()

  const { page, close } = await openDrawing(livened, still)
  await rule(page).focus()
  await page.keyboard.press('Space')
  expect(await secondOf(page)).toBeCloseTo(2.29, 1)
  await page.waitForTimeout(500)
  const frames = () => page.evaluate(() => window.sceneProbe!.info().frames)
  const before = await frames()
  await page.waitForTimeout(1200)
  expect(await frames()).toBe(before)
  await page.getByRole('radio', { name: 'Plan' }).click()
  await page.locator('.d-flow').first().waitFor({ state: 'attached' })
  const durations = await page
    .locator('.d-flow')
    .evaluateAll((all) => all.map((it) => getComputedStyle(it).animationDuration))
  expect(new Set(durations)).toEqual(new Set(['0s']))
  await close()
})

test('feelers set in the picture say what the command line says, to the last digit', {
  timeout: 240_000,
}, async () => {
  const { page, complaints, close } = await openDrawing(livened, still)
  await page.getByRole('button', { name: 'Press to feel' }).click()
  await page.locator('.scene-stage.is-placing canvas').waitFor()
  const picture = (await page.locator('.scene-stage canvas').boundingBox())!
  await page.mouse.click(picture.x + picture.width * 0.66, picture.y + picture.height * 0.55)
  const [east, north] = [page.getByLabel('m east of the pole'), page.getByLabel('m north', { exact: true })] as const
  await expect.poll(() => east.inputValue()).not.toBe('')
  const place = async () => `${await east.inputValue()},${await north.inputValue()}`
  await expect.poll(() => reading(page)).toContain('Between the feet')
  expect(await reading(page)).toBe(await feltBy(`pace:${await place()}`))
  // Within an arm's length of the rod, which stands at 2.6 east, 2.35 south.
  await page.getByRole('radio', { name: 'A hand and feet' }).click()
  await east.fill('2.6')
  await north.fill('-1.6')
  await expect.poll(() => reading(page)).toContain('Between hand')
  expect(await reading(page)).toBe(await feltBy(`touch:${await place()}`))
  await page.getByRole('radio', { name: 'Two hands' }).click()
  for (const id of ['conductor-a', 'stay']) {
    const spot = await page.evaluate((thing) => window.sceneProbe!.pick(thing), id)
    expect(spot, id).not.toBeNull()
    await page.mouse.click(spot!.x, spot!.y)
  }
  await expect.poll(() => reading(page)).toContain('Between the hands')
  expect(await reading(page)).toBe(await feltBy('hands:conductor-a,stay-lower'))
  expect(complaints).toEqual([])
  await close()
})

const reading = async (page: Page): Promise<string> =>
  (await page.locator('.feelersread').innerText()).replace(/\s+/g, ' ').trim()

async function feltBy(feel: string): Promise<string> {
  const { out } = await answerOfVerb('expose', folder, path, '--at', '7003s', '--livening', 'clash-b', '--feel', feel)
  return out
    .slice(out.indexOf('conductor B: ') + 'conductor B: '.length)
    .replace(/\s+/g, ' ')
    .trim()
}

test('plan and elevation without a scene: the same currents, the pace from where it is tolerable, both on paper', {
  timeout: 180_000,
}, async () => {
  const app = await openApp('/', still)
  const { page } = app
  await page.addInitScript(() => {
    const { getContext } = HTMLCanvasElement.prototype
    Object.assign(HTMLCanvasElement.prototype, {
      getContext(this: HTMLCanvasElement, kind: string, ...rest: never[]) {
        return kind.startsWith('webgl') ? null : Reflect.apply(getContext, this, [kind, ...rest])
      },
    })
  })
  await page.reload()
  await page.locator('dialog[open]').waitFor()
  await page.keyboard.press('Enter')
  await bringIn(page, livened)
  await page.keyboard.press('Alt+5')
  await page.getByRole('button', { name: 'Open the drawing' }).click({ timeout: 120_000 })
  await page.locator('[data-electrode="rod/R-1"]').waitFor()
  const { out } = await answerOfVerb('ground', folder, path, '--at', '7003s', '--livening', 'clash-b', '--json')
  const told = JSON.parse(out) as {
    readonly electrodes: readonly { readonly id: string; readonly safeDistanceM: number }[]
  }
  const rod = told.electrodes.find(({ id }) => id === 'rod/R-1')!
  const words = await page.locator('[data-electrode="rod/R-1"]').textContent()
  expect(words).toContain(`tolerable from ${rod.safeDistanceM.toFixed(1)} m`)
  expect(await page.getByRole('radio', { name: 'In 3D' }).count()).toBe(0)
  await page.getByRole('radio', { name: 'Elevation' }).click()
  expect(await page.locator('[data-node="rod/R-1"]').textContent()).toMatch(/^5\s600\sV/)
  expect(await page.locator('[data-person="pw"]').textContent()).toContain('not felt')
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')))
  expect(await page.locator('.livepicture svg[role="img"]').count()).toBe(2)
  await page.evaluate(() => dispatchEvent(new Event('afterprint')))
  await app.close()
})
