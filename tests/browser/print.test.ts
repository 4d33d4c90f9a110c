// What comes out of the printer: the caution first, nothing cut off, each page with its number of how many.

import type { Page } from 'playwright'
import { afterAll, expect, test } from 'vitest'
import { closeBrowser, openApp } from '../support/openApp'
import { bringIn, runUpTo } from '../support/openedRun'
import { cutOff, printed } from '../support/printedPages'

afterAll(closeBrowser)

/** First words and last words of each sheet: of what a person would miss if it were not there. */
const sheets = [
  { key: 'Alt+2', begins: 'Work order', ends: 'Briefing', holds: ['Single-line diagram', 'Plan, mark what can hurt'] },
  { key: 'Alt+4', begins: 'Site list', ends: 'Weather: wind 4 m/s', holds: ['lengths in metres', 'On the truck'] },
  { key: 'Alt+5', begins: 'Record of a run', ends: 'Judgement in the situation', holds: ['Findings', 'Marks'] },
] as const

async function show(page: Page, key: string): Promise<void> {
  await page.keyboard.press(key)
  if (key === 'Alt+5') await page.locator('.debriefcols').waitFor({ timeout: 120_000 })
  await page.locator('main:not(.depot)').waitFor()
}

test.each(['light', 'dark'] as const)(
  'printed from a %s screen: job sheet, drawings, record',
  {
    timeout: 180_000,
  },
  async (theme) => {
    const app = await openApp('/', { reducedMotion: 'reduce' })
    const { page } = app
    const settings = { theme, people: [], person: null, hasReadCaution: true }
    await page.evaluate((kept) => localStorage.setItem('earths-on/settings', JSON.stringify(kept)), settings)
    await page.reload()
    await bringIn(page, runUpTo('marrow-bend', 'clean', 'declare-safe'))
    await page.keyboard.press('Alt+4')
    await page.getByRole('button', { name: 'Drawings' }).click()
    await page.locator('.sheetdrawings').waitFor()
    for (const { key, begins, ends, holds } of sheets) {
      await show(page, key)
      const { pages } = await printed(page)
      expect(pages[0], key).toContain('A pass here is not a field authorisation')
      pages.forEach((words, i) => expect(words, key).toContain(`${i + 1} / ${pages.length}`))
      const all = pages.join(' ')
      for (const words of [begins, ends, ...holds]) expect(all, key).toContain(words)
      expect(all.lastIndexOf(ends), key).toBeGreaterThan(all.indexOf(begins))
      expect(await cutOff(page), key).toEqual([])
    }
    await app.close()
  },
)

test('paper is white and its ink dark, from a dark screen too', async () => {
  const app = await openApp()
  const inkNow = () => app.page.evaluate(() => getComputedStyle(document.body).color)
  await app.page.evaluate(() => localStorage.setItem('earths-on/settings', '{"theme":"dark","hasReadCaution":true}'))
  await app.page.reload()
  await app.page.locator('main.depot').waitFor()
  const onScreen = await inkNow()
  await app.page.evaluate(() => {
    addEventListener('beforeprint', () => {
      const { color, backgroundColor } = getComputedStyle(document.body)
      document.documentElement.dataset.printed = `${color} on ${backgroundColor}`
    })
  })
  await printed(app.page)
  expect(await app.page.evaluate(() => document.documentElement.dataset.printed)).toBe(
    'rgb(33, 29, 24) on rgb(255, 255, 255)',
  )
  expect(await inkNow()).toBe(onScreen)
  await app.close()
})
