// The drawing office in a browser: a rule made lighter, a field broken and mended, another soil; saved, opened, tried.

import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Page } from 'playwright'
import { afterAll, expect, test } from 'vitest'
import { closeBrowser, openApp } from '../support/openApp'

afterAll(closeBrowser)

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

async function openOffice(page: Page, name: RegExp): Promise<void> {
  await page.getByRole('button', { name: 'Read and understood' }).click()
  await page.getByRole('button', { name: 'Drawing office' }).click()
  await page.getByRole('button', { name }).click()
  await page.locator('.officecols').waitFor()
}

const heading = (page: Page, name: string) => page.getByLabel('Contents').getByRole('button', { name }).click()
const row = (page: Page, run: string) => page.locator(`[data-run="${run}"]`)

const issueCount = (page: Page, told: string) =>
  page.locator('.officeissues').getByRole('status').filter({ hasText: told }).waitFor()

async function saved(page: Page, button: string): Promise<string> {
  const [file] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: button }).click()])
  return readFileSync(await file.path(), 'utf8')
}

test('a rule made lighter changes the outcome of a run; saved and opened again, it is the same', {
  timeout: 240_000,
}, async () => {
  const app = await openApp()
  const { page } = app
  await openOffice(page, /Rule pack concrete-rod/)
  await page.getByLabel('Runs of').selectOption('marrow-bend')
  await heading(page, 'Protection on the ground')
  await page.locator('.officefold > button').filter({ hasText: 'nobody-on-lead' }).click()
  await page.getByLabel('Severity').selectOption('major')
  // Told at once, before anything is swept: a critical finding failed it, and now nothing does.
  await row(page, 'overlap-hand-on-lead').getByText('now: ').first().waitFor({ timeout: 60_000 })
  expect(await row(page, 'overlap-hand-on-lead').innerText()).toContain('before: fail')
  await row(page, 'overlap-hand-on-lead').getByText('now: pass').waitFor({ timeout: 200_000 })
  // The same run under other rules has the same exposures.
  expect(await row(page, 'overlap-hand-on-lead').locator('td').nth(1).innerText()).not.toContain('before')

  await page.getByLabel('Issues, runs and changes').getByText('critical → major').waitFor()
  const [file, words] = [await saved(page, 'Save the file'), await saved(page, 'Save the words')]
  expect(file).toContain('"severity":"major"')
  await page.getByRole('button', { name: 'Clear the board' }).click()
  await page.getByRole('button', { name: 'Clear it' }).click()
  await page.getByText('Nothing is on the board').waitFor()
  await page.getByLabel('Files of a scenario or a rule pack').setInputFiles([
    { name: 'pack.json', mimeType: 'application/json', buffer: Buffer.from(file) },
    { name: 'text.en.json', mimeType: 'application/json', buffer: Buffer.from(words) },
  ])
  await page.getByLabel('Issues, runs and changes').getByText('critical → major').waitFor()
  expect(await saved(page, 'Save the file')).toBe(file)
  expect(await saved(page, 'Save the words')).toBe(words)
  expect(app.complaints).toEqual([])
  expect(app.foreignRequests).toEqual([])
  await app.close()
})

test('by keyboard alone: a broken field is an issue that leads back to it; undone, it is none; reloaded, it is there', {
  timeout: 180_000,
}, async () => {
  const app = await openApp()
  const { page } = app
  await openOffice(page, /Scenario marrow-bend/)
  const wind = page.getByLabel('Wind, m/s')
  await wind.focus()
  await page.keyboard.press('Control+A')
  await page.keyboard.type('90')
  await issueCount(page, '1 issue')
  expect(await wind.getAttribute('aria-invalid')).toBe('true')
  await heading(page, 'Words')
  const issue = page.getByRole('button', { name: '$.weather.windMPerS' })
  await issue.focus()
  await page.keyboard.press('Enter')
  await page.waitForFunction(() => document.activeElement?.id === 'file.weather.windMPerS')
  expect(await wind.inputValue()).toBe('90')

  await page.reload()
  await page.locator('.officecols').waitFor()
  await issueCount(page, '1 issue')
  await wind.fill('9')
  await issueCount(page, 'None. It can be used.')
  await page.keyboard.press('Control+z')
  expect(await wind.inputValue()).toBe('90')
  await page.keyboard.press('Control+y')
  expect(await wind.inputValue()).toBe('9')
  expect(app.complaints).toEqual([])
  await app.close()
})

test('another soil changes what could reach people; the draft is tried as a job of its own edition', {
  timeout: 240_000,
}, async () => {
  const app = await openApp()
  const { page } = app
  await openOffice(page, /Scenario marrow-bend/)
  await heading(page, 'Soil and what is in it')
  await page.locator('.officefold > button').first().click()
  await page.getByLabel('Resistivity, Ωm').fill('1000')
  const worst = row(page, 'barrier-too-small').locator('td').nth(1)
  await worst.getByText('now: ').waitFor({ timeout: 200_000 })
  expect(await worst.innerText()).toContain('before: ')
  await page.getByRole('button', { name: 'Stop' }).click()
  await page.getByRole('button', { name: 'Grade again' }).waitFor()

  await page.getByRole('button', { name: 'Try it' }).click()
  await page.getByText('Soil to 1 m').waitFor()
  expect(await page.locator('main').innerText()).toMatch(/1\s000\sΩ/)
  expect(await page.locator('.tblock').innerText()).toContain('own edition')
  expect(await page.locator('.tblock').innerText()).toContain('Practise')
  // Kept with the job.
  await page.reload()
  await page.keyboard.press('Alt+2')
  await page.getByText('Soil to 1 m').waitFor()
  expect(await page.locator('main').innerText()).toMatch(/1\s000\sΩ/)
  expect(app.complaints).toEqual([])
  await app.close()
})

test('a scored run shuts the office, by its button and by its address', { timeout: 120_000 }, async () => {
  const app = await openApp('/#place=office')
  const { page } = app
  await page.getByRole('button', { name: 'Read and understood' }).click()
  await page.locator('.office').waitFor()
  await page.evaluate(() =>
    localStorage.setItem(
      'earths-on/assessment',
      JSON.stringify({ phase: 'running', setUp: { scenario: 'marrow-bend' } }),
    ),
  )
  await page.reload()
  await page.locator('.depot').waitFor()
  expect(await page.getByRole('button', { name: 'Drawing office' }).isDisabled()).toBe(true)
  await app.close()
})

for (const theme of ['light', 'dark', 'contrast'])
  for (const [width, height] of [
    [1280, 720],
    [820, 1180],
  ] as const)
    test(`usable by everybody: ${theme}, ${width} × ${height}`, { timeout: 120_000 }, async () => {
      const app = await openApp('/', { viewport: { width, height } })
      const { page } = app
      await page.evaluate((it) => localStorage.setItem('earths-on/settings', JSON.stringify({ theme: it })), theme)
      await page.reload()
      await openOffice(page, /Rule pack two-earths/)
      await heading(page, 'Isolation')
      await page.locator('.officefold > button').first().click()
      await page.getByLabel('Source').first().fill('')
      await issueCount(page, '1 issue')
      await page.evaluate(axe)
      const found = await page.evaluate(async () => {
        const { axe: run } = window as unknown as {
          axe: { run: (options: object) => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> }
        }
        const all = await run.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] })
        return all.violations.map(
          (it) =>
            `${it.id}: ${it.nodes
              .map((node) => node.html.slice(0, 90))
              .slice(0, 3)
              .join(' | ')}`,
        )
      })
      expect(found).toEqual([])
      const small = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>('main button, main select, main input:not(.vh), main textarea')]
          .map((it) => ({ name: `${it.tagName} ${it.className} ${it.id}`, box: it.getBoundingClientRect() }))
          .filter(({ box }) => box.width > 0 && (box.height < 43.5 || box.width < 43.5))
          .map((it) => it.name),
      )
      expect(small).toEqual([])
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0)
      await app.close()
    })
