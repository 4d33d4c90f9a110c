// See it done, in a browser: by keyboard from the Depot, act by act with the pack's reason, to a part, taken over.

import { readFileSync } from 'node:fs'
import { afterAll, expect, test } from 'vitest'
import { closeBrowser, openApp } from '../support/openApp'
import { keptOrders } from '../support/sheets'

afterAll(closeBrowser)

const words = (
  JSON.parse(readFileSync('scenarios/packs/two-earths/text.en.json', 'utf8')) as { words: Record<string, string> }
).words

test('shown act by act in the words of the chosen pack, held, gone on with by oneself, never scored', {
  timeout: 120_000,
}, async () => {
  const app = await openApp()
  const { page } = app
  await page.getByRole('button', { name: 'Read and understood' }).click()
  await page.getByRole('radio', { name: /^Kestrel Flat/ }).click()
  await page.getByLabel('Rule pack').selectOption('two-earths')
  await page.getByLabel('Begin at').selectOption('isolated')
  await page.getByRole('button', { name: 'See it done' }).focus()
  await page.keyboard.press('Enter')

  // The part that was chosen is where it begins; then it plays.
  const act = page.locator('.shownslip h3')
  await page.waitForFunction(() => /^Act \d+ of \d+$/.test(document.querySelector('.shownslip h3')?.textContent ?? ''))
  const first = await act.innerText()
  await page.waitForFunction((before) => document.querySelector('.shownslip h3')?.textContent !== before, first)
  await page.keyboard.press('d')
  await page.keyboard.press('c')
  await page.getByRole('button', { name: 'Play' }).waitFor()

  // The sentence is the pack's own, for an act that a rule asks for.
  await page.getByLabel('Go to a part').selectOption('earths-on')
  const why = page.locator('.shownwhy')
  await why.waitFor()
  const rule = (await why.getAttribute('data-rule')) ?? ''
  expect(await why.locator('p').first().innerText()).toBe(words[`${rule}.asks`])
  const shown = (await keptOrders(page)).length
  await page.keyboard.press('g')
  await page.keyboard.press('u')
  expect(await keptOrders(page)).toHaveLength(shown)

  // Other sheets say why no order is taken; a page that is loaded anew goes on showing.
  await page.keyboard.press('Alt+2')
  await page.getByText('the crew takes no orders from you').waitFor()
  await page.reload()
  await page.getByText('the crew takes no orders from you').waitFor()
  await page.getByRole('button', { name: 'To the site' }).click()
  await page.waitForFunction(() => /^Act \d+ of \d+$/.test(document.querySelector('.shownslip h3')?.textContent ?? ''))

  await page.getByRole('button', { name: 'Go on from here yourself' }).click()
  await page.locator('.tblock').getByText(`Practise, ${shown} shown`).waitFor()
  await page.getByRole('button', { name: /^Go on/ }).click()
  await page.keyboard.press('Alt+5')
  await page
    .locator('.outcome')
    .getByText(`Not scored: the first ${shown} orders were shown.`)
    .waitFor({ timeout: 60_000 })
  expect(await page.getByRole('heading', { name: /^Marks/ }).count()).toBe(0)
  expect(app.complaints).toEqual([])
  expect(app.foreignRequests).toEqual([])
  await app.close()
})
