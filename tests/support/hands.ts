// Hands in the picture of the open job: a form opened, strokes and grips carried, what is written in the fields, the run saved.

import { readFileSync } from 'node:fs'
import type { BrowserContextOptions, Page } from 'playwright'
import type {} from '../../src/app/scene/probe'
import { type OpenedApp, openApp } from './openApp'
import { bringIn, runBefore } from './openedRun'
import { settled } from './openScene'

export interface Spot {
  readonly x: number
  readonly y: number
}

export interface Hands extends OpenedApp {
  readonly key: string
  readonly thing: string
}

/** The job just before this act of the clean run, its form open in the slip. */
export async function openBefore(
  act: string,
  view: string,
  thing: 'on' | 'with',
  options: BrowserContextOptions = {},
): Promise<Hands> {
  const { run, order } = runBefore('marrow-bend', 'clean', act)
  const app = await openApp('/?probe&aa=0&dpr=1#scenario=marrow-bend&purpose=practise&place=depot', {
    reducedMotion: 'reduce',
    ...options,
  })
  const { page } = app
  await page.getByRole('button', { name: 'Read and understood' }).click()
  await bringIn(page, run)
  await page.keyboard.press('Alt+4')
  await page.waitForFunction(() => (window.sceneProbe?.info().frames ?? 0) > 0)
  await page.keyboard.press(String(['pic', 'pw', 'gw', 'so'].indexOf(order.who) + 1))
  const chosen = order[thing]
  if (chosen) await page.locator(`[data-thing="${chosen}"]`).first().click()
  await look(page, view)
  return { ...app, key: `${order.do}:${order.with ?? ''}`, thing: chosen ?? '' }
}

export async function openFormOf({ page, key }: Hands): Promise<void> {
  await page.locator(`[data-act="${key}"]`).first().click()
  await page.locator(`[data-form="${key}"]`).waitFor()
  await settled(page)
}

export async function look(page: Page, view: string): Promise<void> {
  await page.getByRole('button', { name: view, exact: true }).click()
  await settled(page)
}

/** What the fields of the open form hold, from above down. */
export const written = (page: Page): Promise<readonly string[]> =>
  page.locator('.act.open input').evaluateAll((fields) => fields.map((field) => (field as HTMLInputElement).value))

/** Fields of the open form by their order; every one is left again, as a hand on the keyboard leaves it. */
async function write(page: Page, values: readonly string[]): Promise<void> {
  for (const [i, value] of values.entries()) await page.locator('.act.open input').nth(i).fill(value)
}

export async function middleOf(page: Page, grip: string): Promise<Spot> {
  await settled(page)
  const box = await page.locator(`[data-grip="${grip}"]`).boundingBox()
  if (!box) throw new Error(`there is no grip ${grip}`)
  // Of a moved element the browser tells the size a rounding smaller.
  if (Math.min(box.width, box.height) < 43.99) throw new Error(`${grip} is smaller than a gloved finger`)
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 }
}

/** Down at the first point, along the others; up only when told. */
export async function carry(page: Page, points: readonly Spot[], isLetGo = true): Promise<void> {
  const [first, ...rest] = points
  await page.mouse.move(first!.x, first!.y)
  await page.mouse.down()
  for (const { x, y } of rest) await page.mouse.move(x, y, { steps: 4 })
  if (isLetGo) await page.mouse.up()
}

/** A grip carried up or down until its field reads so; it moves a tenth of a metre at a time. */
export async function carryUpright(page: Page, grip: string, field: number, wanted: string): Promise<void> {
  const { x, y } = await middleOf(page, grip)
  await page.mouse.move(x, y)
  await page.mouse.down()
  const isBelow = async () => Number((await written(page))[field]) < Number(wanted)
  const step = (await isBelow()) === (grip !== 'depth') ? -2 : 2
  for (let k = 1; k < 200 && (await written(page))[field] !== wanted; k++) await page.mouse.move(x, y + k * step)
  await page.mouse.up()
}

/** A pixel whose ground point is near this one, from above. */
export async function groundPixel(page: Page, east: number, north: number): Promise<Spot> {
  const at = await page.evaluate(
    ([x, y]) => {
      for (const off of [0, 0.015, -0.015, 0.03, -0.03]) {
        const found = window.sceneProbe!.ground(x! + off, y! + off)
        if (found) return found
      }
      return null
    },
    [east, north],
  )
  if (!at) throw new Error(`${east}, ${north} is not in the picture`)
  return at
}

export const give = (page: Page): Promise<void> => page.locator('.act.open .btn.go').click()

/** The newest order taken back, the same act by figures alone, and the run that it gives. */
export async function runByFigures(
  hands: Hands,
  values: readonly string[],
  before?: (page: Page) => Promise<void>,
): Promise<string> {
  const { page, thing } = hands
  await backToThing(page, thing)
  await openFormOf(hands)
  await before?.(page)
  await write(page, values)
  await give(page)
  return savedRun(page)
}

/** The newest order taken back, and the same thing chosen again. */
export async function backToThing(page: Page, thing: string): Promise<void> {
  await page.keyboard.press('Alt+4')
  await page.keyboard.press('u')
  await page.locator('[data-thing="pole-foot"]').click()
  await page.locator(`[data-thing="${thing}"]`).first().click()
  await page.waitForFunction(() => (window.sceneProbe?.info().frames ?? 0) > 0)
}

/** The run file as it is saved, byte for byte. */
export async function savedRun(page: Page): Promise<string> {
  await page.keyboard.press('Alt+1')
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save the run' }).click()
  return readFileSync(await (await download).path(), 'utf8')
}
