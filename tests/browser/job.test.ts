// The open job: what is kept, taken back, refused, and what happens when something comes alive.

import { readFileSync } from 'node:fs'
import { afterAll, expect, test } from 'vitest'
import { closeBrowser, openApp } from '../support/openApp'
import { choosePerson, clockOf, giveAct, keptOrders, openJob } from '../support/sheets'

afterAll(closeBrowser)

test('a reload in the middle goes on exactly there', async () => {
  const app = await openApp()
  await openJob(app.page)
  await giveAct(app.page, 'crew', 'check-crew:')
  await app.page.keyboard.press('g')
  await giveAct(app.page, 'crew', 'read-weather:')
  const [before, clock, log] = [
    await keptOrders(app.page),
    await clockOf(app.page),
    await app.page.locator('.log table').innerText(),
  ]
  expect(before.map((order) => order.do)).toEqual(['check-crew', 'read-weather'])
  await app.page.reload()
  await app.page.locator('[role=tree]').waitFor()
  expect(await keptOrders(app.page)).toEqual(before)
  expect(await clockOf(app.page)).toBe(clock)
  expect(await app.page.locator('.log table').innerText()).toBe(log)
  expect(await app.page.locator('.crew .busy').innerText()).toContain('Read the weather')
  expect(app.complaints).toEqual([])
  await app.close()
})

test('practise: undo takes the last order back; an act can be withdrawn in its second, which stays in the run', async () => {
  const app = await openApp()
  await openJob(app.page)
  await giveAct(app.page, 'crew', 'check-crew:')
  await app.page.keyboard.press('u')
  expect(await keptOrders(app.page)).toEqual([])
  await giveAct(app.page, 'crew', 'read-weather:')
  await app.page.keyboard.press('w')
  expect((await keptOrders(app.page)).map((order) => order.do)).toEqual(['read-weather', 'withdraw'])
  expect(await app.page.locator('.crew .busy').count()).toBe(0)
  await app.close()
})

test('the impossible is struck through with the reason of the world, and cannot be pressed', async () => {
  const app = await openApp()
  await openJob(app.page)
  await app.page.locator('[role=treeitem][data-key="conductor-a"]').click()
  const clamp = app.page.locator('.slip [data-act^="clamp:"]')
  expect(await clamp.getAttribute('aria-disabled')).toBe('true')
  expect(await clamp.innerText()).toContain('Only from up the pole')
  await clamp.dispatchEvent('click')
  expect(await keptOrders(app.page)).toEqual([])
  await app.close()
})

test('something comes alive: each person gets one order and the control room one message, then the drawing opens', async () => {
  const app = await openApp()
  const { page } = app
  await openJob(page, 'earths-on')
  await choosePerson(page, 'Pole worker')
  await giveAct(page, 'pole', 'climb:', 'above-lv')
  await page.keyboard.press('g')
  // Bare hands on B, thigh on the uncovered pole: the trigger of seed 1.
  await giveAct(page, 'conductor-b', 'untie:')
  await page.keyboard.press('g')
  await page.getByText('Something came alive').waitFor()
  // Nothing is explained: neither what came alive nor what reached whom.
  const words = await page.locator('.event').innerText()
  expect(words).toContain('flash')
  expect(words).not.toMatch(/\d\s?(V|A|mA)\b/)
  for (let i = 0; i < 4; i++) await page.locator('.replies').first().getByRole('button', { name: 'Keep still' }).click()
  await page.locator('.replies').getByRole('button', { name: 'The line came alive' }).click()
  await page.getByRole('button', { name: 'Open the drawing' }).click()
  await page.locator('.livecols').waitFor()
  expect(await page.locator('.livehead').innerText()).toContain('conductor B')
  // The figures in the drawing say what they are of; the table says the same in words.
  expect(await page.locator('.livecols').innerText()).toContain('What reached each person')
  await page.getByRole('button', { name: 'Back to the job' }).click()
  const orders = await keptOrders(page)
  expect(orders.filter((order) => order.do === 'keep-still')).toHaveLength(4)
  expect(orders.filter((order) => order.do === 'call-control')).toHaveLength(1)
  expect(app.complaints).toEqual([])
  await app.close()
})

test('a browser that keeps nothing: a banner says so, the job goes on, the run can be saved', async () => {
  const app = await openApp('/', {})
  await app.page.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError')
    }
  })
  await app.page.reload()
  await openJob(app.page)
  await app.page.getByRole('alert').filter({ hasText: 'keeps nothing' }).waitFor()
  await giveAct(app.page, 'crew', 'check-crew:')
  const download = app.page.waitForEvent('download')
  await app.page.getByRole('button', { name: 'Save the run' }).click()
  expect((await download).suggestedFilename()).toMatch(/\.json$/)
  expect(await app.page.locator('.crew .busy').innerText()).toContain('Check the crew')
  await app.close()
})

test('a job kept by another version: the Depot says so and gives its text', async () => {
  const app = await openApp()
  await openJob(app.page)
  await giveAct(app.page, 'crew', 'check-crew:')
  const kept = await app.page.evaluate(() => {
    const saved = JSON.parse(localStorage.getItem('earths-on/open-job')!) as { orders: { do: string }[] }
    saved.orders[0]!.do = 'an-act-of-before'
    const text = JSON.stringify(saved)
    localStorage.setItem('earths-on/open-job', text)
    return text
  })
  await app.page.reload()
  const alert = app.page.getByRole('alert').filter({ hasText: 'another version' })
  await alert.waitFor()
  expect(await app.page.locator('.tabs button:disabled').count()).toBe(4)
  const download = app.page.waitForEvent('download')
  await alert.getByRole('button', { name: 'Save it' }).click()
  expect(readFileSync(await (await download).path(), 'utf8')).toBe(kept)
  await app.page.reload()
  await alert.waitFor()
  await alert.getByRole('button', { name: 'Throw it away' }).click()
  await app.page.reload()
  await app.page.locator('main').waitFor()
  expect(await alert.count()).toBe(0)
  await app.close()
})

test('a run that cannot be read is refused with all of its faults, and nothing is opened', async () => {
  const app = await openApp()
  await app.page.locator('dialog[open]').waitFor()
  await app.page.keyboard.press('Enter')
  const file = {
    name: 'run.json',
    mimeType: 'application/json',
    buffer: Buffer.from('{"format":"earths-on/run","version":1,"colour":"red","seed":-1}'),
  }
  await app.page.locator('input[type=file]').setInputFiles(file)
  const alert = app.page.getByRole('alert')
  await alert.waitFor()
  expect(await alert.innerText()).toContain('$.colour')
  expect(await alert.innerText()).toContain('$.seed')
  expect(await app.page.locator('.tabs button:disabled').count()).toBe(4)
  await app.close()
})
