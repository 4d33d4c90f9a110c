// One run graded in the browser and by the command line: the same result file, byte for byte.

import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright'
import { afterAll, expect, test } from 'vitest'
import { answerOfVerb } from '../support/answerOfVerb'
import { closeBrowser, openApp } from '../support/openApp'

afterAll(closeBrowser)

const saved = async (page: Page, name: RegExp): Promise<string> => {
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name }).click()
  return readFileSync(await (await download).path(), 'utf8')
}

for (const name of ['clean-livened', 'no-cover-holed-boots']) {
  test(`${name}: the browser and the command line grade to the same bytes`, { timeout: 300_000 }, async () => {
    const app = await openApp()
    await app.page.locator('dialog[open]').waitFor()
    await app.page.keyboard.press('Enter')
    await app.page.locator('input[type=file]').setInputFiles(`scenarios/marrow-bend/runs/${name}.json`)
    await app.page.getByText('permit given back').waitFor()
    await app.page.keyboard.press('Alt+5')
    await app.page.locator('.outcome').waitFor({ timeout: 120_000 })
    const [result, run] = [await saved(app.page, /result/), await saved(app.page, /run/)]
    const place = join(mkdtempSync(join(tmpdir(), 'earths-on-')), `${name}.json`)
    writeFileSync(place, run)
    const { out } = await answerOfVerb('grade', 'scenarios/marrow-bend', place, '--json')
    expect(out.trim()).toBe(result.trim())
    expect(result.length).toBeGreaterThan(5000)
    expect(app.complaints).toEqual([])
    await app.close()
  })
}
