// From the checkpoint below the LV to the declaration, by picking in the three-dimensional picture: the run that comes out
// is the recorded one, byte for byte. Once with a pointer, once with a finger.

import { readdirSync, readFileSync } from 'node:fs'
import { gzipSync } from 'node:zlib'
import { afterAll, expect, test } from 'vitest'
import type { RecordedOrder } from '../support/keyboardTrainee'
import { closeBrowser, openApp } from '../support/openApp'
import { PointerTrainee } from '../support/pointerTrainee'

afterAll(closeBrowser)

interface RecordedRun {
  readonly actions: readonly RecordedOrder[]
  readonly seed: number
  readonly [name: string]: unknown
}

const recordingText = readFileSync('scenarios/marrow-bend/runs/clean.json', 'utf8')
const recording = JSON.parse(recordingText) as RecordedRun
const climbed = recording.actions.findIndex((order) => order.do === 'climb')
const declared = recording.actions.findIndex((order) => order.do === 'declare-safe')
const orders = recording.actions.slice(climbed + 1, declared + 1)

/** Each order stands on a line of its own; the last one of a run has no comma behind it. */
const orderLines = (text: string) =>
  text
    .split('\n')
    .filter((line) => /^\s*\{.*"do":/.test(line))
    .map((line) => line.replace(/,$/, ''))

test('what is loaded for 3D is at most 260 kB, packed', () => {
  const chunks = readdirSync('dist/assets').filter((name) => /^(scene3d|SiteStage)-.*\.js$/.test(name))
  expect(chunks.length).toBe(2)
  const packed = chunks.reduce(
    (sum, name) => sum + gzipSync(readFileSync(`dist/assets/${name}`), { level: 9 }).length,
    0,
  )
  expect(packed).toBeLessThanOrEqual(260_000)
})

for (const pointer of ['mouse', 'touch'] as const)
  test(`below the LV to declared safe, picked in 3D by ${pointer}, gives the recorded run`, {
    timeout: 600_000,
  }, async () => {
    const app = await openApp('/?probe&aa=0&dpr=1#scenario=marrow-bend&purpose=practise&place=depot', {
      hasTouch: pointer === 'touch',
      reducedMotion: 'reduce',
    })
    const { page } = app
    await page.getByRole('button', { name: 'Read and understood' }).click()
    await page.getByRole('radio', { name: /^Marrow Bend/ }).click()
    await page.locator('.seed input').fill(String(recording.seed))
    await page.locator('select.entry:has(option[value="below-lv"])').selectOption('below-lv')
    await page.getByRole('button', { name: 'Open the job sheet' }).click()
    await page.getByRole('button', { name: 'Site', exact: true }).click()
    await page.waitForFunction(() => (window.sceneProbe?.info().frames ?? 0) > 0)

    const trainee = new PointerTrainee(page, pointer)
    await trainee.follow(orders)
    expect(trainee.secondPicks).toBeGreaterThan(4)

    await page.getByRole('button', { name: 'Depot' }).click()
    const download = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Save the run' }).click()
    const exportedText = readFileSync(await (await download).path(), 'utf8')
    const exported = JSON.parse(exportedText) as RecordedRun
    expect(exported.startsAt).toBe('below-lv')
    expect(exported.actions).toEqual(orders)
    expect(orderLines(exportedText)).toEqual(orderLines(recordingText).slice(climbed + 1, declared + 1))
    expect(app.foreignRequests).toEqual([])
    expect(app.complaints).toEqual([])
    await app.close()
  })
