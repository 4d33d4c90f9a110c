// Assessment on one device: sealed, without help, opened again only with the pass phrase.

import { readFileSync } from 'node:fs'
import { afterAll, expect, test } from 'vitest'
import { closeBrowser, openApp } from '../support/openApp'
import { printed } from '../support/printedPages'
import { giveAct, keptOrders } from '../support/sheets'

afterAll(closeBrowser)

test('set up, try, run, reload, finish, hand back, mark, save the record', async () => {
  const app = await openApp()
  const { page } = app
  await page.locator('dialog[open]').waitFor()
  await page.keyboard.press('Enter')
  await page.getByRole('radio', { name: /Scored run/ }).click()
  const handOver = page.getByRole('button', { name: 'Hand the device to the candidate' })
  expect(await handOver.isDisabled()).toBe(true)
  await page.getByLabel('Assessor').fill('Alder')
  await page.getByLabel('Candidate').fill('Wren')
  await page.getByLabel('Pass phrase', { exact: true }).fill('three old crows')
  await page.getByLabel('Pass phrase once more').fill('three old crows')
  await handOver.click()

  // The controls are tried on a job that is not the scored one.
  await page.getByRole('button', { name: 'Begin the scored run' }).click()
  await page.keyboard.press('Alt+4')
  await page.locator('[role=tree]').waitFor()
  await page.keyboard.press('d')

  // The seed is shown nowhere; no undo, no checkpoint, no way out.
  const seed = await page.evaluate(
    () => (JSON.parse(localStorage.getItem('earths-on/assessment')!) as { setUp: { seed: number } }).setUp.seed,
  )
  expect(await page.locator('body').innerText()).not.toContain(String(seed))
  expect(page.url()).not.toContain(String(seed))
  expect(page.url()).toContain('purpose=assess')
  expect(await page.getByRole('button', { name: /Undo|Mark here/ }).count()).toBe(0)
  await giveAct(page, 'crew', 'check-crew:')
  await page.keyboard.press('u')
  expect((await keptOrders(page)).map((order) => order.do)).toEqual(['check-crew'])
  await page.keyboard.press('w')
  expect((await keptOrders(page)).map((order) => order.do)).toEqual(['check-crew', 'withdraw'])
  await page.keyboard.press('Alt+1')
  expect(await page.getByRole('button', { name: 'Save the run' }).isDisabled()).toBe(true)

  await page.reload()
  // a key pressed before the sheets stand is lost
  await page.locator('.tabs button:not([disabled])').nth(3).waitFor()
  await page.keyboard.press('Alt+5')
  expect(await page.locator('body').innerText()).not.toContain('Findings')
  await page.getByRole('button', { name: 'Finish', exact: true }).click()
  await page.getByText('Hand the device to the assessor').waitFor()
  expect(await page.locator('body').innerText()).not.toMatch(/Findings|critical/)

  await page.getByLabel('Pass phrase').fill('three young crows')
  await page.keyboard.press('Enter')
  await page.getByRole('alert').filter({ hasText: 'not the pass phrase' }).waitFor()
  await page.getByLabel('Pass phrase').fill('three old crows')
  await page.keyboard.press('Enter')
  await page.locator('.elements').waitFor({ timeout: 60_000 })

  await page.locator('.elements tbody tr').first().getByRole('radio', { name: '4' }).click()
  await page.getByLabel('Notes').fill('Stopped early.')
  // The assessor's word against the machine's is saved with its reason only.
  await page.getByRole('radiogroup', { name: 'Your outcome' }).getByRole('radio', { name: 'pass' }).click()
  expect(await page.getByRole('button', { name: 'Save the record' }).isDisabled()).toBe(true)
  await page.getByLabel('Reason for another outcome').fill('Asked aloud on site.')
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save the record' }).click()
  const record = JSON.parse(readFileSync(await (await download).path(), 'utf8')) as Record<string, unknown>
  expect(record).toMatchObject({
    format: 'earths-on/record',
    status: 'provisional until a person signs',
    candidate: 'Wren',
    assessor: 'Alder',
    attempt: 1,
    reloads: 1,
    withdrawn: 1,
    notes: 'Stopped early.',
    overrule: { outcome: 'pass', reason: 'Asked aloud on site.' },
    run: { seed, purpose: 'assess' },
    result: { outcome: 'fail' },
  })
  expect(record.caution).toContain('not a field authorisation')
  expect(Object.values(record.digests as object)).toHaveLength(3)
  expect(record.notJudged).toContain('climbing')
  expect(Object.values(record.marks as object)).toEqual([4])
  // On paper stand one's own mark beside the machine's, and a line each to sign on.
  const paper = (await printed(app.page)).pages.join(' ')
  expect(paper).toMatch(/Plan and hazards not (met|done) 4 /)
  expect(paper).toMatch(/Provisional until a person signs\. Assessor Candidate/)
  expect(app.complaints).toEqual([])
  await app.close()
})
