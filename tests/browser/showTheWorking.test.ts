// The sheets that show how the figures come about: published figures tried in the browser, the circuit of an instant.

import { readFileSync } from 'node:fs'
import type { Page } from 'playwright'
import { afterAll, expect, test } from 'vitest'
import { readQualification } from '../../src/files/qualification/readQualification'
import { answerOfVerb } from '../support/answerOfVerb'
import { closeBrowser, openApp } from '../support/openApp'

afterAll(closeBrowser)

test('a third of the published figures is tried here, expected beside got, and every one is met', async () => {
  const { page, complaints, close } = await openApp()
  await page.locator('dialog[open]').waitFor()
  await page.keyboard.press('Enter')
  await page.getByRole('button', { name: 'Check the figures in this browser' }).click()
  const heading = page.getByRole('heading', { level: 1 })
  // whole sites take their time, a third of a second each and more on a busy machine
  await page.getByText('All tried').waitFor({ timeout: 100_000 })
  const [met, tried, all] = (await heading.innerText()).match(/\d+/g)!.map(Number)
  expect(met).toBe(tried)
  expect(tried).toBe(Math.ceil(all! / 3))
  expect(all).toBeGreaterThan(180)
  const text = readFileSync('tests/qualification/published/body-impedance.json', 'utf8')
  const read = readQualification(text)
  const first = read.ok && [...read.value.cases].sort((a, b) => (a.id < b.id ? -1 : 1))[0]!
  expect(first && (await page.locator('main').innerText())).toContain(first && first.source)
  expect(complaints).toEqual([])
  await close()
}, 120_000)

const folder = 'scenarios/marrow-bend'
const run = `${folder}/runs/clean-livened.json`

test('the circuit of the instant: the rod stands at the site rise that the command line tells', async () => {
  const { page, complaints, close } = await openApp()
  await page.locator('dialog[open]').waitFor()
  await page.keyboard.press('Enter')
  await page.locator('input[type=file]').setInputFiles(run)
  await page.locator('.tabs button[aria-keyshortcuts="Alt+5"]:enabled').waitFor()
  await page.keyboard.press('Alt+5')
  await page.getByRole('button', { name: 'Open the drawing' }).click({ timeout: 60_000 })
  await page.getByRole('button', { name: 'The circuit' }).click()
  const second = await page.getByLabel('Moment of the job').inputValue()
  const livening = await page.getByLabel('What comes alive').inputValue()
  const asked = ['expose', folder, run, '--at', `${second}s`, '--livening', livening, '--json']
  const { answers } = JSON.parse((await answerOfVerb(...asked)).out) as {
    answers: readonly { livening: string; siteRiseV: number }[]
  }
  const told = answers.find((it) => it.livening === livening)!.siteRiseV
  expect(told).toBeGreaterThan(1000)
  await expect.poll(() => rodVoltage(page)).toBe(Number(told.toPrecision(4)))
  await page.getByLabel('What comes alive').selectOption('none')
  await expect.poll(() => rodVoltage(page)).toBeLessThan(1)
  expect(complaints).toEqual([])
  await close()
})

async function rodVoltage(page: Page): Promise<number> {
  const row = page.getByRole('row', { name: /^Rod R-1/ }).first()
  return Number(/([\d.e-]+)\sV/.exec(await row.innerText())?.[1])
}
