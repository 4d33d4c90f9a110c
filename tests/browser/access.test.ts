// Everybody can use the sheets: WCAG 2.2 AA by axe on each of them, and no target smaller than a gloved finger.

import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Page } from 'playwright'
import { afterAll, expect, test } from 'vitest'
import { closeBrowser, openApp } from '../support/openApp'
import { openJob } from '../support/sheets'

afterAll(closeBrowser)

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

/** Least side of what can be pressed, pixels: WCAG 2.2 AAA 2.5.5, and the width of a gloved fingertip. */
const least = 44

async function violations(page: Page): Promise<readonly string[]> {
  // Evaluated by the debugger, which the page's policy does not stop.
  await page.evaluate(axe)
  return page.evaluate(async () => {
    const { axe: run } = window as unknown as {
      axe: { run: (options: object) => Promise<{ violations: { id: string; nodes: { target: string[] }[] }[] }> }
    }
    const found = await run.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] })
    return found.violations.map(
      (it) =>
        `${it.id}: ${it.nodes
          .map((node) => node.target.join(' '))
          .slice(0, 4)
          .join(' | ')}`,
    )
  })
}

const small = (page: Page): Promise<readonly string[]> =>
  page.evaluate((side) => {
    const pressables = [
      ...document.querySelectorAll<HTMLElement>(
        'button, select, input:not(.vh), [role=treeitem], [role=option], summary',
      ),
    ]
    return pressables
      .filter((it) => it.offsetParent !== null)
      .map((it) => ({ it, box: it.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0 && (box.height < side - 0.5 || box.width < side - 0.5))
      .map(
        ({ it, box }) =>
          `${it.tagName} ${it.className} ${(it.textContent ?? '').slice(0, 30)} ${Math.round(box.width)}×${Math.round(box.height)}`,
      )
  }, least)

for (const [name, theme] of [
  ['light', 'light'],
  ['dark', 'dark'],
  ['high contrast', 'contrast'],
] as const) {
  test(`each sheet in ${name}`, { timeout: 120_000 }, async () => {
    const app = await openApp()
    const { page } = app
    await page.evaluate(
      (it) =>
        localStorage.setItem(
          'earths-on/settings',
          JSON.stringify({ theme: it, people: [], person: null, hasReadCaution: false }),
        ),
      theme,
    )
    await page.reload()
    await openJob(page, 'earths-on')
    for (const place of [1, 2, 3, 4]) {
      await page.keyboard.press(`Alt+${place}`)
      await page.locator('main').waitFor()
      await page.waitForTimeout(200)
      expect(await violations(page), `sheet ${place}`).toEqual([])
      expect(await small(page), `sheet ${place}`).toEqual([])
    }
    await page.keyboard.press('Alt+5')
    await page.locator('.debriefcols').waitFor({ timeout: 60_000 })
    expect(await violations(page), 'debrief').toEqual([])
    expect(await small(page), 'debrief').toEqual([])
    await app.close()
  })
}

test('on a tablet nothing runs out of the sheet sideways', async () => {
  const app = await openApp('/', { viewport: { width: 820, height: 1180 } })
  await openJob(app.page, 'earths-on')
  for (const place of [1, 2, 3, 4]) {
    await app.page.keyboard.press(`Alt+${place}`)
    await app.page.waitForTimeout(200)
    const over = await app.page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
    expect(over, `sheet ${place}`).toBeLessThanOrEqual(0)
  }
  await app.close()
})
