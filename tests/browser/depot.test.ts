// The Depot: a place is found by its pole, by what stands there, by its rules or by a word, and is still chosen afterwards.

import type { Page } from 'playwright'
import { afterAll, expect, test } from 'vitest'
import { closeBrowser, openApp } from '../support/openApp'

afterAll(closeBrowser)

const placesOf = (page: Page): Promise<readonly string[]> =>
  page
    .getByRole('radiogroup', { name: 'Scenarios' })
    .getByRole('radio')
    .evaluateAll((rows) => rows.map((row) => (row.textContent ?? '').replace(/(\p{Ll})(A|Three) .*$/u, '$1')))

test('the list is cut down to what is asked for; a place brings its own rules; arrow keys go along it', async () => {
  const app = await openApp()
  const { page } = app
  await page.getByRole('button', { name: 'Read and understood' }).click()
  expect(await placesOf(page)).toHaveLength(12)
  await page.getByLabel('With anything').selectOption('coil')
  expect(await placesOf(page)).toEqual(['Coldmere Col', 'Sedgeland Drove'])
  await page.getByLabel('Any rules').selectOption('two-earths')
  expect(await placesOf(page)).toEqual(['Sedgeland Drove'])
  await page.getByLabel('Any pole').selectOption('double')
  expect(await placesOf(page)).toEqual([])
  await page.getByRole('button', { name: 'Show all' }).click()
  await page.getByLabel('Find a word').fill('night PEAT')
  expect(await placesOf(page)).toEqual(['Sedgeland Drove'])
  await page.getByLabel('Find a word').fill('')

  await page.getByRole('radio', { name: /^Rustmesa Junction/ }).click()
  expect(await page.getByLabel('Rule pack').inputValue()).toBe('multi-ground')
  await page.keyboard.press('ArrowDown')
  expect(await page.getByRole('radio', { name: /^Saltbridge Road/ }).getAttribute('aria-checked')).toBe('true')
  expect(await page.getByLabel('Rule pack').inputValue()).toBe('concrete-rod')
  expect(app.complaints).toEqual([])
  await app.close()
})

test('an address that ends at the Depot has its place chosen there', async () => {
  const app = await openApp('/#scenario=gannetry-spit&seed=3&purpose=practise&place=depot')
  await app.page.getByRole('button', { name: 'Read and understood' }).click()
  await app.page.getByRole('heading', { level: 1, name: 'Gannetry Spit' }).waitFor()
  expect(await app.page.getByLabel('Seed').inputValue()).toBe('3')
  await app.close()
})
