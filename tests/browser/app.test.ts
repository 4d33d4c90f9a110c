import { readFileSync } from 'node:fs'
import { afterAll, expect, test } from 'vitest'
import { closeBrowser, openApp } from '../support/openApp'

afterAll(closeBrowser)

test('the first page shows the name and the caution, asks nobody else for anything and complains about nothing', async () => {
  const app = await openApp()
  await app.page.getByRole('heading', { level: 1 }).waitFor()
  expect(await app.page.title()).toContain('Earths On')
  const words = await app.page.locator('body').innerText()
  expect(words).toContain('Earths On')
  expect(words).toContain('not a field authorisation')
  expect(app.foreignRequests).toEqual([])
  expect(app.complaints).toEqual([])
  await app.close()
})

test('an own font is used, not one of the machine', async () => {
  const app = await openApp()
  await app.page.getByRole('heading', { level: 1 }).waitFor()
  const isLoaded = await app.page.evaluate(async () => {
    const fonts = await document.fonts.load('16px "Atkinson Hyperlegible Next Variable"')
    return fonts.length > 0 && fonts.every((font) => font.status === 'loaded')
  })
  expect(isLoaded).toBe(true)
  await app.close()
})

test('the page refuses a script that was written into it', async () => {
  const app = await openApp()
  const hasRun = await app.page.evaluate(() => {
    const script = document.createElement('script')
    script.textContent = 'document.documentElement.dataset.intruder = "yes"'
    document.body.append(script)
    return document.documentElement.dataset.intruder === 'yes'
  })
  expect(hasRun).toBe(false)
  expect(app.complaints.join()).toContain('Content Security Policy')
  await app.close()
})

test('the first page does not load the 3D part', () => {
  expect(readFileSync('dist/index.html', 'utf8')).not.toContain('scene3d')
})
